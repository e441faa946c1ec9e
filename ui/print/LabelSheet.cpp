// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/LabelSheet.h"

#include "core/base/Error.h"
#include "core/records/RecordPointer.h"
#include "ui/print/QrCode.h"

#include <algorithm>

namespace lastrivet::print {

namespace {

using packet::ShelfLabel;

constexpr double inset = millimetres(2.5);
constexpr double largestCode = millimetres(24);

/// The largest size in which a text stands on so many lines of the width, and takes no more than
/// half of the height.
Size fittingSize(const QString &text, const QRectF &place, int mostLines)
{
    for (const Size size :
         {Size::Poster, Size::Title, Size::Heading, Size::Subheading, Size::Body}) {
        const TextBlock block(text, size, place.width(), true);
        if (block.lineCount() <= mostLines && block.height() <= place.height() / 2)
            return size;
    }
    return Size::Small;
}

/// Texts below each other while there is room for a whole line.
class Column {
public:
    Column(QPainter &painter, const QRectF &place)
        : m_painter(painter)
        , m_place(place)
    {
    }

    /// Leaves `kept` free below.
    void write(const QString &text, Size size, bool isBold, int mostLines, double kept = 0)
    {
        const TextBlock block(text, size, m_place.width(), isBold);
        const int room = int((m_place.bottom() - m_y - kept) / block.lineHeight() + 0.05);
        const int lines = std::min({block.lineCount(), mostLines, room});
        if (text.isEmpty() || lines < 1)
            return;
        m_painter.setPen(Qt::black);
        fitted(text, size, m_place.width(), lines, isBold).draw(m_painter, {m_place.left(), m_y});
        m_y += lines * block.lineHeight();
    }

private:
    QPainter &m_painter;
    QRectF m_place;
    double m_y = m_place.top();
};

void drawLabel(Pages &pages, const ShelfLabel &label, const QRectF &place)
{
    const Wording &words = pages.wording();
    const QRectF inside = place.adjusted(inset, inset, -inset, -inset);
    const double code = std::min({inside.height(), largestCode, inside.width() * 0.38});
    drawQrCode(pages.painter(), pointerTo(label.record),
               {inside.right() - code, inside.top(), code, code});
    const QRectF text = inside.adjusted(0, 0, -code - points(3), 0);
    // A day of expiry is worth more than the end of a long name, and its year is part of it.
    double kept = 0;
    for (const Message &line : label.lines)
        kept +=
            std::min(2, TextBlock(words.sentence(line), Size::Small, text.width()).lineCount()) *
            lineHeight(Size::Small);
    Column column(pages.painter(), text);
    const QString mark = asIs(label.mark);
    const QString name = asIs(label.name);
    if (mark.isEmpty()) {
        column.write(name, fittingSize(name, text, 3), true, 3, kept);
    } else {
        column.write(mark, fittingSize(mark, text, 1), true, 1, kept);
        column.write(name, Size::Body, false, 2, kept);
    }
    for (const Message &line : label.lines)
        column.write(words.sentence(line), Size::Small, false, 2);
}

void drawLabels(Pages &pages, const LabelSheet &sheet)
{
    int cell = sheet.used % sheet.grid.count();
    for (const ShelfLabel &label : sheet.labels) {
        if (cell == sheet.grid.count()) {
            pages.breakPage();
            cell = 0;
        }
        drawLabel(pages, label, sheet.grid.place(cell++));
    }
}

} // namespace

std::optional<Printed> printLabels(const LabelSheet &sheet, const Imprint &imprint,
                                   const Choices &choices, const std::filesystem::path &place,
                                   const OnPercent &onPercent)
{
    if (sheet.labels.empty())
        throw Fault("Nothing on record needs such a label, so there is none to print.");
    Document document = documentAbout(sheet.aircraft, choices.wording.text("Shelf labels"));
    document.is_bare = true;
    document.sections = {[&](Pages &pages, PictureShelf &) { drawLabels(pages, sheet); }};
    return printDocument(document, imprint, {}, {sheet.grid.paper, choices.wording}, place,
                         onPercent);
}

} // namespace lastrivet::print
