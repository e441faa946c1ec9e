// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/ChangesPrinter.h"

#include "core/base/Tongue.h"
#include "core/packet/InWords.h"
#include "ui/print/AircraftFacts.h"
#include "ui/print/CorrectionsSections.h"
#include "ui/print/Facts.h"
#include "ui/print/Mark.h"
#include "ui/print/Pages.h"
#include "ui/print/PhotoGrid.h"
#include "ui/print/Table.h"

#include <algorithm>

namespace lastrivet::print {

namespace {

using packet::ChangesSince;

/// So that answer and cautions stay on the page.
constexpr std::size_t mostChanges = 8;
constexpr std::size_t mostFindings = 3;
constexpr std::size_t mostPhotos = 2;
constexpr qsizetype longestText = 72;

/// The whole text is in the packet.
QString shortened(const std::string &text)
{
    const QString whole = asIs(text).simplified();
    return whole.size() <= longestText ? whole
                                       : whole.left(longestText - 1) + QStringLiteral("…");
}

void drawTitle(Pages &pages, const ChangesSince &changes)
{
    const Wording &words = pages.wording();
    const QRectF &body = pages.body();
    pages.painter().fillRect(QRectF(body.left(), body.top(), body.width(), points(3)), Qt::black);
    pages.advance(points(12));
    pages.text(words.text("What changed since you signed").toUpper(), Size::Small, true);
    pages.advance(points(2));
    pages.text(aircraftName(changes.aircraft), Size::Heading, true);
    pages.text(words.text("{0}: {1}",
                          {changes.closing, nested(packet::inWords(changes.kind))}),
               Size::Body, true);
    const auto &signature = changes.signature;
    std::string by = signature.by;
    if (!signature.credential.empty())
        by += " (" + signature.credential + ")";
    pages.advance(points(4));
    pages.text(words.text("Signed by {0} on {1}, {2}, {3}.",
                          {by, signature.signed_on ? signature.signed_on->text() : std::string{},
                           nested(packet::inWords(signature.result)),
                           nested(packet::inWords(signature.seen))}));
}

Table::Row rowOf(const Wording &words, const ChangesSince::Change &change)
{
    QString what = shortened(words.text(change.what).toStdString());
    if (!change.is_certain)
        what += QLatin1Char('\n') + words.text("nobody said whether it changed what was inspected");
    return {{{words.date(change.on)}, {what}, {asIs(change.part)}, {asIs(change.by)},
             {shortened(change.note)}},
            change.is_certain ? Table::Bar::Must : Table::Bar::Should};
}

/// Of the day of the signature nobody knows which came first.
auto isCorrectedSince(const ChangesSince &changes)
{
    return [&signedOn = changes.signature.signed_on](const packet::SquawkEntry &finding) {
        return finding.fixed_on && signedOn && !after(*signedOn, *finding.fixed_on);
    };
}

void drawTouched(Pages &pages, const ChangesSince &changes)
{
    const Wording &words = pages.wording();
    pages.smallHeading(words.text("Touched since then"), points(60));
    if (changes.changes.empty()) {
        const bool isCorrected = std::ranges::any_of(changes.findings, isCorrectedSince(changes));
        pages.text(words.text(isCorrected ? "Nothing besides the corrections below."
                                          : "Nothing on record was touched since."));
        return;
    }
    Table table;
    table.columns = {{words.text("When"), 2.2}, {words.text("What"), 4.4}, {words.text("Part"), 2.6},
                     {words.text("By"), 2}, {words.text("Note"), 4}};
    // The newest are those that the signature knows least of.
    const std::size_t more =
        changes.changes.size() > mostChanges ? changes.changes.size() - mostChanges : 0;
    for (std::size_t i = more; i < changes.changes.size(); ++i)
        table.rows.push_back(rowOf(words, changes.changes[i]));
    drawTable(pages, table);
    if (more > 0)
        pages.text(words.text("{0} earlier changes are in the inspection packet.",
                              {std::to_string(more)}),
                   Size::Small, true);
}

Table::Row rowOf(const Wording &words, const packet::SquawkEntry &squawk)
{
    const bool isFixed = squawk.fixed_on.has_value();
    return {
        {{asIs(squawk.finding_number.empty() ? squawk.number : squawk.finding_number),
          markOf(squawk.severity)},
         {shortened(squawk.title)},
         {isFixed ? words.day(squawk.fixed_on) + QLatin1Char('\n') + shortened(squawk.correction)
                  : words.text("open"),
          Mark::None, !isFixed},
         {verifiedIn(words, squawk)}}};
}

void drawFindings(Pages &pages, const ChangesSince &changes)
{
    if (changes.findings.empty())
        return;
    const Wording &words = pages.wording();
    Table table;
    table.columns = {{words.text("No."), 1.2},
                     {words.text("Finding"), 4},
                     {words.text("Correction"), 4.4},
                     {words.text("Verified"), 3}};
    const std::size_t shown = std::min(mostFindings, changes.findings.size());
    for (std::size_t i = 0; i < shown; ++i)
        table.rows.push_back(rowOf(words, changes.findings[i]));
    pages.smallHeading(words.text("Findings inside, and what became of them"),
                       leastHeightOf(table, pages.body().width()));
    drawTable(pages, table);
    if (shown < changes.findings.size())
        pages.text(words.text("{0} more findings are in the inspection packet.",
                              {std::to_string(changes.findings.size() - shown)}),
                   Size::Small, true);
}

void drawPictures(Pages &pages, const ChangesSince &changes, PictureShelf &shelf)
{
    // Only where both the pictures and the answer find room on the page.
    constexpr double room = points(430);
    if (changes.photos.empty() || pages.spaceLeft() < room)
        return;
    const std::size_t shown = std::min(mostPhotos, changes.photos.size());
    std::vector<packet::Photo> left{changes.photos.front()};
    std::vector<packet::Photo> right;
    if (shown > 1)
        right.push_back(changes.photos[1]);
    pages.smallHeading(
        pages.wording().text("Photographed since: {0} of {1}",
                             {std::to_string(shown), std::to_string(changes.photos.size())}),
        points(100));
    drawSideBySide(pages, left, right, shelf);
}

/// What to tick, and where to sign.
void drawAnswer(Pages &pages, const ChangesSince &changes)
{
    const Wording &words = pages.wording();
    constexpr double height = points(150);
    pages.gap(points(8));
    pages.need(height);
    const QRectF &body = pages.body();
    const QRectF frame(body.left(), pages.y(), body.width(), height);
    QPainter &painter = pages.painter();
    painter.setPen(QPen(Qt::black, points(0.9)));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(frame);
    const double left = frame.left() + points(10);
    double y = frame.top() + points(8);
    painter.setPen(Qt::black);
    TextBlock(words.text("Does your signature still hold?"), Size::Body, body.width(), true)
        .draw(painter, {left, y});
    y += points(18);
    for (const char *choice : {"Yes, it holds.", "Yes, with the remarks below.",
                               "No, I have to look at it again."}) {
        drawMark(painter, Mark::EmptyBox, QRectF(left, y, points(11), points(11)));
        painter.setPen(Qt::black);
        TextBlock(words.text(choice), Size::Body, body.width()).draw(painter, {left + points(17), y});
        y += points(16);
    }
    const double line = frame.bottom() - points(20);
    painter.setPen(QPen(Qt::black, points(0.6)));
    painter.drawLine(QLineF(left, line - points(34), frame.right() - points(10), line - points(34)));
    painter.drawLine(QLineF(left, line, frame.right() - points(10), line));
    painter.setPen(Qt::black);
    TextBlock(words.text("{0}: name, number, signature, date", {changes.signature.by}), Size::Small,
              body.width())
        .draw(painter, {left, line + points(2)});
    pages.advance(height + points(6));
    pages.text(words.text("An answer by message is kept with the signature. This is the builder's "
                          "record, not an approval; whether another look is needed you decide."),
               Size::Small);
}

void drawAll(Pages &pages, const ChangesSince &changes, PictureShelf &shelf)
{
    drawTitle(pages, changes);
    drawTouched(pages, changes);
    drawFindings(pages, changes);
    drawPictures(pages, changes, shelf);
    drawAnswer(pages, changes);
}

} // namespace

std::optional<Printed> printChanges(const packet::ChangesSince &changes, const Imprint &imprint,
                                    const Pictures &pictures, const Choices &choices,
                                    const std::filesystem::path &place, const OnPercent &onPercent)
{
    Document document =
        documentAbout(changes.aircraft, choices.wording.text("What changed since you signed"));
    document.picture_count = int(std::min(mostPhotos, changes.photos.size()));
    document.sections = {
        [&](Pages &pages, PictureShelf &shelf) { drawAll(pages, changes, shelf); }};
    return printDocument(document, imprint, pictures, choices, place, onPercent);
}

} // namespace lastrivet::print
