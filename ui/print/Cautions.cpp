// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/Cautions.h"

#include "ui/print/Pages.h"

#include <QStringList>

#include <algorithm>
#include <initializer_list>
#include <string_view>

namespace lastrivet::print {

namespace {

/// Said wherever there are cautions, also when the rule profile does not.
constexpr std::string_view ownCaution =
    "This paper is what the builder wrote down. It is no approval and no finding that the work is "
    "right: the drawings, the authority and the inspector decide.";

/// What is written on a form may be the builder's, a helper's or the inspector's.
constexpr std::string_view formCaution =
    "This form is no approval and no finding that the work is right: the drawings, the authority "
    "and the inspector decide.";

bool matters(const Profile::Caution &caution, About about)
{
    const auto isNone = [&](std::initializer_list<std::string_view> ids) {
        return std::find(ids.begin(), ids.end(), caution.id) == ids.end();
    };
    switch (about) {
    case About::Structure:
        return true;
    case About::Figures:
        return isNone({"records_not_work", "cure_temperature"});
    case About::Findings:
        return isNone(
            {"records_not_work", "cure_temperature", "current_edition", "makers_data_first"});
    case About::FindingsAndLimits:
        return isNone({"records_not_work", "cure_temperature", "current_edition"});
    }
    return true;
}

QStringList cautionsIn(const Wording &words, const std::vector<Profile::Caution> &cautions,
                       About about)
{
    QStringList said;
    const bool isSaid = std::any_of(cautions.begin(), cautions.end(), [](const auto &caution) {
        return caution.id == "builders_record";
    });
    if (!isSaid)
        said << words.text(ownCaution);
    for (const Profile::Caution &caution : cautions) {
        if (matters(caution, about))
            said << words.text(caution.text);
    }
    return said;
}

constexpr double indent = points(18);
constexpr double betweenCautions = points(5);
constexpr double headingAbove = points(60);
constexpr double aboveLines = points(3);

TextBlock blockOf(const Pages &pages, const QString &text, Size size)
{
    return {text, size, pages.body().width() - indent};
}

double heightOf(const Pages &pages, const QStringList &cautions, Size size)
{
    double height = 0;
    for (const QString &caution : cautions)
        height += blockOf(pages, caution, size).height() + betweenCautions;
    return height;
}

/// Smaller where that keeps them on a page which they would else run over by a few lines.
Size sizeFor(const Pages &pages, const QStringList &cautions)
{
    const double room = pages.spaceLeft() - headingAbove;
    const bool isSmallEnough = heightOf(pages, cautions, Size::Small) <= room;
    return isSmallEnough && heightOf(pages, cautions, Size::Body) > room ? Size::Small : Size::Body;
}

void drawCaution(Pages &pages, const QString &text, Size size)
{
    pages.need(blockOf(pages, text, size).height());
    const double side = lineHeight(size) * 0.38;
    pages.painter().fillRect(QRectF(pages.body().left() + points(4),
                                    pages.y() + (lineHeight(size) - side) / 2, side, side),
                             Qt::black);
    pages.textAt(indent, text, size);
    pages.advance(betweenCautions);
}

} // namespace

void drawFormCaution(Pages &pages)
{
    pages.text(pages.wording().text(formCaution), Size::Small);
}

void drawCautions(Pages &pages, const std::vector<Profile::Caution> &cautions, About about)
{
    const Wording &words = pages.wording();
    const QStringList said = cautionsIn(words, cautions, about);
    const Size size = sizeFor(pages, said);
    const double end = pages.y();
    const int page = pages.outline().page_count;
    // They stay together, so that no last page holds two or three lines of them.
    pages.heading(0, words.text("Cautions"),
                  std::min(pages.body().height() / 2, heightOf(pages, said, size)));
    if (pages.outline().page_count > page)
        pages.noteLoneCautions(end);
    for (const QString &caution : said)
        drawCaution(pages, caution, size);
}

double heightOfCautions(const Pages &pages, const std::vector<Profile::Caution> &cautions,
                        About about)
{
    return headingAbove +
           heightOf(pages, cautionsIn(pages.wording(), cautions, about), Size::Small);
}

void drawCautionLines(Pages &pages, const std::vector<Profile::Caution> &cautions, About about)
{
    pages.advance(aboveLines);
    for (const QString &caution : cautionsIn(pages.wording(), cautions, about))
        pages.text(caution, Size::Small);
}

double heightOfCautionLines(const Pages &pages, const std::vector<Profile::Caution> &cautions,
                            About about)
{
    double height = aboveLines;
    for (const QString &caution : cautionsIn(pages.wording(), cautions, about))
        height += TextBlock(caution, Size::Small, pages.body().width()).height();
    return height;
}

} // namespace lastrivet::print
