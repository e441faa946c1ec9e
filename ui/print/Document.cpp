// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/Document.h"

#include "ui/print/AircraftFacts.h"
#include "ui/print/Type.h"
#include "ui/print/Unshown.h"

#include <QBuffer>

#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace lastrivet::print {

namespace {

// Fetching the pictures takes longest when their copies must still be made; then the writing.
constexpr int percentAtLayout = 55;
constexpr int percentAtWriting = 65;
constexpr std::size_t shownHashDigits = 16;

QString withoutTail(const std::string &hash)
{
    if (hash.size() <= shownHashDigits)
        return asIs(hash);
    return asIs(hash.substr(0, shownHashDigits)) + QStringLiteral("…");
}

Margins marginsOf(const Document &document, const Imprint &imprint, const Wording &wording)
{
    Margins margins;
    margins.are_bare = document.is_bare;
    margins.head_left = document.head_left;
    margins.head_right = document.head_right;
    const QString date = wording.date(imprint.made_on);
    if (imprint.journal_hash.empty()) {
        margins.foot = date;
        return margins;
    }
    margins.foot = date + QStringLiteral("  ·  ") +
                   wording.text("journal {0}", {withoutTail(imprint.journal_hash).toStdString()});
    margins.first_foot = wording.text("Journal at printing: {0}", {imprint.journal_hash});
    return margins;
}

/// Whoever holds the paper was not there when it was printed, and may take a box for one to tick.
QString unshownIn(const Wording &wording, const UnshownCharacters &unshown)
{
    const QString numbers = unshown.numbers();
    return numbers.isEmpty()
               ? QString()
               : wording.text("Boxes stand for characters that no typeface here has: {0}",
                              {numbers.toStdString()});
}

/// One way through all pages.
struct Layout {
    QByteArray pages;
    Outline outline;
    std::vector<Link> links;
};

class Printing {
public:
    Printing(const Document &document, const Imprint &imprint, const Pictures &pictures,
             const Choices &choices, const OnPercent &onPercent)
        : m_document(document)
        , m_choices(choices)
        , m_margins(marginsOf(document, imprint, choices.wording))
        , m_onPercent(onPercent)
        , m_shelf([this, &pictures](const packet::Photo &photo) {
            tell(percentAtLayout * m_fetched++ / std::max(1, m_document.picture_count));
            return pictures(photo);
        })
    {
    }

    Layout layOut(const UnshownCharacters &unshown);
    const PictureShelf &shelf() const { return m_shelf; }

private:
    Layout layOutOnce(const Outline &known);
    void tell(int percent)
    {
        if (m_onPercent && !m_onPercent(std::min(percent, percentAtLayout)))
            throw Cancelled{};
    }

    const Document &m_document;
    const Choices &m_choices;
    Margins m_margins;
    const OnPercent &m_onPercent;
    int m_fetched = 0;
    PictureShelf m_shelf;
};

Layout Printing::layOutOnce(const Outline &known)
{
    Layout layout;
    QBuffer buffer(&layout.pages);
    buffer.open(QIODevice::WriteOnly);
    const auto onPage = [this](int) {
        return !m_onPercent ||
               m_onPercent(percentAtLayout * std::min(m_fetched, m_document.picture_count) /
                           std::max(1, m_document.picture_count));
    };
    {
        // The bytes are whole only when the pages are gone.
        Pages pages(buffer, m_choices.paper, m_margins, m_choices.wording, known, onPage);
        for (const Section &section : m_document.sections)
            section(pages, m_shelf);
        layout.outline = pages.outline();
        layout.links = pages.links();
    }
    return layout;
}

/// Contents and "page 3 of 21" need to know how the document ends, so it is laid out until it says
/// the same as the time before. What cannot be shown is known after the first time.
Layout Printing::layOut(const UnshownCharacters &unshown)
{
    constexpr int mostTimes = 5;
    Layout layout = layOutOnce({});
    m_margins.first_head = unshownIn(m_choices.wording, unshown);
    for (int time = 1; time < mostTimes; ++time) {
        const Outline known = layout.outline;
        layout = layOutOnce(known);
        if (layout.outline == known)
            break;
    }
    return layout;
}

std::string pdfDate(Moment moment)
{
    const std::string text = moment.text();
    std::string digits;
    std::copy_if(text.begin(), text.end(), std::back_inserter(digits),
                 [](char character) { return character >= '0' && character <= '9'; });
    return "D:" + digits + (moment.hasTime() ? "00" : "");
}

} // namespace

Document documentAbout(const packet::Aircraft &aircraft, const QString &title)
{
    const QString name = aircraftName(aircraft);
    return {.title = title + QStringLiteral(", ") + name,
            .author = asIs(aircraft.builder),
            .head_left = name,
            .head_right = title,
            .picture_count = 0,
            .sections = {}};
}

std::optional<Printed> printDocument(const Document &document, const Imprint &imprint,
                                     const Pictures &pictures, const Choices &choices,
                                     const std::filesystem::path &place, const OnPercent &onPercent)
{
    requireFonts();
    try {
        UnshownCharacters unshown;
        Printing printing(document, imprint, pictures, choices, onPercent);
        Layout layout = printing.layOut(unshown);
        const PdfFinish finish{.pictures = printing.shelf().pictures(),
                               .headings = layout.outline.headings,
                               .links = layout.links,
                               .title = document.title.toStdString(),
                               .author = document.author.toStdString(),
                               .subject = "Journal " + imprint.journal_hash,
                               .made_on = pdfDate(imprint.made_on),
                               .language = choices.wording.locale().bcp47Name().toStdString(),
                               .page_height = sizeOf(choices.paper).height()};
        finishPdf(layout.pages, finish, place, [&](int percent) {
            return !onPercent ||
                   onPercent(percentAtWriting + percent * (100 - percentAtWriting) / 100);
        });
        return Printed{layout.outline.page_count, int(finish.pictures.size()),
                       printing.shelf().missingCount(), unshown.some()};
    } catch (const Cancelled &) {
        return std::nullopt;
    }
}

} // namespace lastrivet::print
