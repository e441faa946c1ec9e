// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/TagSheet.h"

#include "core/base/Error.h"
#include "core/records/RecordPointer.h"
#include "ui/print/QrCode.h"

#include <QPainterPath>

#include <algorithm>

namespace lastrivet::print {

namespace {

using packet::Tag;

constexpr int tagsOnAPage = 4;
constexpr double holeZone = millimetres(24);
constexpr double holeRadius = millimetres(3);
constexpr double codeSide = millimetres(26);
constexpr double inset = millimetres(4);

/// A rectangle whose two corners at the hole are cut off, so that it does not tear there.
QPainterPath outlineOf(const QRectF &tag)
{
    const double corner = millimetres(12);
    QPainterPath path(QPointF(tag.left() + corner, tag.top()));
    path.lineTo(tag.topRight());
    path.lineTo(tag.bottomRight());
    path.lineTo(tag.left() + corner, tag.bottom());
    path.lineTo(tag.left(), tag.bottom() - corner);
    path.lineTo(tag.left(), tag.top() + corner);
    path.closeSubpath();
    return path;
}

void drawOutline(QPainter &painter, const QRectF &tag)
{
    QPen cut(Qt::black, points(0.7), Qt::DashLine);
    painter.setPen(cut);
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(outlineOf(tag));
    painter.setPen(QPen(Qt::black, points(0.7)));
    const QPointF hole(tag.left() + millimetres(11), tag.center().y());
    painter.drawEllipse(hole, holeRadius, holeRadius);
    painter.drawEllipse(hole, holeRadius * 2, holeRadius * 2);
}

/// Writes one text below another and answers where the next one begins.
double write(Pages &pages, QPointF at, double width, const QString &text, Size size, bool isBold,
             int mostLines)
{
    const TextBlock block = fitted(text, size, width, mostLines, isBold);
    pages.painter().setPen(Qt::black);
    block.draw(pages.painter(), at);
    return at.y() + block.height();
}

/// How many reasons have no room on a tag that shows this many.
QString restOf(const Wording &words, const Tag &tag, std::size_t shown)
{
    const std::string rest = words.count(tag.waits_for.size() - shown);
    if (tag.of_airworthiness <= shown)
        return words.text("and {0} more on record", {rest});
    return words.text("and {0} more on record, squawks of airworthiness among them: {1}",
                      {rest, words.count(tag.of_airworthiness - shown)});
}

/// As many reasons as fit above `bottom`, one that has no room for all of it is cut; the others are
/// counted.
void drawReasons(Pages &pages, const Tag &tag, QPointF at, double width, double bottom)
{
    const Wording &words = pages.wording();
    const double line = lineHeight(Size::Body);
    const double indent = points(11);
    std::size_t shown = 0;
    for (const Message &reason : tag.waits_for) {
        const bool isLast = shown + 1 == tag.waits_for.size();
        const double kept = isLast ? 0 : line;
        if (shown > 0 && at.y() + line + kept > bottom)
            break;
        pages.painter().fillRect(QRectF(at.x(), at.y() + points(4.4), points(4), points(4)),
                                 Qt::black);
        const int room = std::clamp(int((bottom - at.y() - kept) / line + 0.05), 1, 2);
        at.setY(write(pages, at + QPointF(indent, 0), width - indent, words.sentence(reason),
                      Size::Body, false, room));
        ++shown;
    }
    if (shown < tag.waits_for.size())
        write(pages, at + QPointF(indent, 0), width - indent, restOf(words, tag, shown), Size::Body,
              true, 1);
}

void drawTag(Pages &pages, const TagSheet &sheet, const Tag &tag, const QRectF &place)
{
    const Wording &words = pages.wording();
    QPainter &painter = pages.painter();
    drawOutline(painter, place);
    const double codeWidth = sheet.has_codes ? codeSide : 0;
    const double left = place.left() + holeZone;
    const double width = place.right() - inset - left;
    if (sheet.has_codes)
        drawQrCode(painter, pointerTo({RecordType::Closing, tag.closing.value()}),
                   {place.right() - inset - codeSide, place.top() + inset, codeSide, codeSide});
    double y = place.top() + millimetres(2.5);
    y = write(pages, {left, y}, width - codeWidth, words.text("DO NOT CLOSE"), Size::Poster, true,
              1);
    const TextBlock title(asIs(tag.title), Size::Subheading, width - codeWidth, true);
    y = write(pages, {left, y}, width - codeWidth, asIs(tag.title),
              title.lineCount() > 1 ? Size::Body : Size::Subheading, true, 2);
    y = write(pages, {left, y}, width - codeWidth, asIs(tag.part), Size::Small, false, 1);
    const double foot = place.bottom() - inset - 2 * lineHeight(Size::Small);
    y = write(pages, {left, y + points(3)}, width - codeWidth, words.text("waits for:"), Size::Body,
              true, 1);
    // What stands beside the code is short of room; below it is not.
    const double reasonsWidth =
        y < place.top() + inset + codeSide ? width - codeWidth - points(4) : width;
    drawReasons(pages, tag, {left, y}, reasonsWidth, foot - points(2));
    y = write(pages, {left, foot}, width,
              words.text("{0} · as the records say on {1}",
                         {sheet.aircraft.registration.empty() ? sheet.aircraft.project
                                                              : sheet.aircraft.registration,
                          tag.as_of.text()}),
              Size::Small, false, 1);
    write(pages, {left, y}, width,
          words.text("What the builder wrote down, no approval: the inspector decides."),
          Size::Small, false, 1);
}

void drawTags(Pages &pages, const TagSheet &sheet)
{
    const QRectF &body = pages.body();
    const double gap = millimetres(3);
    const double height = (body.height() - gap * (tagsOnAPage - 1)) / tagsOnAPage;
    for (std::size_t i = 0; i < sheet.tags.size(); ++i) {
        const int row = int(i) % tagsOnAPage;
        if (i > 0 && row == 0)
            pages.breakPage();
        drawTag(pages, sheet, sheet.tags[i],
                {body.left(), body.top() + row * (height + gap), body.width(), height});
    }
}

} // namespace

std::optional<Printed> printTags(const TagSheet &sheet, const Imprint &imprint,
                                 const Choices &choices, const std::filesystem::path &place,
                                 const OnPercent &onPercent)
{
    if (sheet.tags.empty())
        throw Fault("None of these closings must stay open, so there is no tag to print.");
    Document document = documentAbout(sheet.aircraft, choices.wording.text("Tie-on tags"));
    document.sections = {[&](Pages &pages, PictureShelf &) { drawTags(pages, sheet); }};
    return printDocument(document, imprint, {}, choices, place, onPercent);
}

} // namespace lastrivet::print
