// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/ChangesPrinter.h"

#include "core/base/Tongue.h"
#include "core/packet/InWords.h"
#include "ui/print/AircraftFacts.h"
#include "ui/print/Cautions.h"
#include "ui/print/CorrectionsSections.h"
#include "ui/print/Facts.h"
#include "ui/print/Mark.h"
#include "ui/print/Pages.h"
#include "ui/print/PhotoGrid.h"
#include "ui/print/Phrases.h"
#include "ui/print/Table.h"

#include <algorithm>
#include <array>

namespace lastrivet::print {

namespace {

using packet::ChangesSince;

constexpr std::size_t mostFindings = 3;
constexpr std::size_t mostPhotos = 2;

/// How much of what there is finds room, so that the answer stays on the page.
struct Room {
    qsizetype longest_text;
    std::size_t most_changes;
    bool has_pictures = false;
};

constexpr std::array<Room, 8> roomsByPreference{
    {{600, 8}, {300, 8}, {150, 8}, {72, 8}, {72, 6}, {72, 4}, {72, 3}, {72, 2}}};

/// The whole text is in the packet.
QString shortened(const std::string &text, qsizetype longest)
{
    const QString whole = asIs(text).simplified();
    return whole.size() <= longest ? whole : whole.left(longest - 1) + QStringLiteral("…");
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
    pages.text(words.text("{0}: {1}", {changes.closing, nested(packet::inWords(changes.kind))}),
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
    if (!changes.report.empty())
        pages.text(words.text("Report of the visit: {0}", {changes.report}));
}

/// "6; limits 5 – 6.5 N·m; Torque wrench".
QString torqueNote(const Wording &words, const packet::FastenerEntry &fastener)
{
    QStringList pieces{torqueIn(words, fastener).replace(QLatin1Char('\n'), QStringLiteral(", "))};
    const QString limits = rangeOf(words, fastener.torque_min, fastener.torque_max);
    if (!limits.isEmpty())
        pieces << words.text("limits {0}",
                             {limits.toStdString() + " " + std::string(word(fastener.unit))});
    if (!fastener.tool.empty())
        pieces << asIs(fastener.tool);
    if (fastener.was_tool_uncalibrated)
        pieces << words.text("not in calibration");
    return words.listed(pieces);
}

Table::Row rowOf(const Wording &words, const ChangesSince::Change &change, const Room &room)
{
    QString what = shortened(words.text(change.what).toStdString(), room.longest_text);
    if (!change.is_certain)
        what += QLatin1Char('\n') + words.text("nobody said whether it changed what was inspected");
    QStringList notes;
    if (change.torque)
        notes << torqueNote(words, *change.torque);
    if (!change.note.empty())
        notes << shortened(change.note, room.longest_text);
    return {{{words.date(change.on)},
             {what},
             {asIs(change.part)},
             {asIs(change.by)},
             {notes.join(QLatin1Char('\n'))}},
            change.is_certain ? Table::Bar::Must : Table::Bar::Should};
}

/// The newest are those that the signature knows least of.
std::size_t earlierThanShown(const ChangesSince &changes, const Room &room)
{
    return changes.changes.size() - std::min(changes.changes.size(), room.most_changes);
}

Table touchedTable(const Wording &words, const ChangesSince &changes, const Room &room)
{
    Table table;
    table.columns = {{words.text("When"), 2.2},
                     {words.text("What"), 4.4},
                     {words.text("Part"), 2.6},
                     {words.text("By"), 2},
                     {words.text("Note"), 4}};
    for (std::size_t i = earlierThanShown(changes, room); i < changes.changes.size(); ++i)
        table.rows.push_back(rowOf(words, changes.changes[i], room));
    return table;
}

/// Of the day of the signature nobody knows which came first.
auto isCorrectedSince(const ChangesSince &changes)
{
    return [&signedOn = changes.signature.signed_on](const packet::SquawkEntry &finding) {
        return finding.fixed_on && signedOn && !after(*signedOn, *finding.fixed_on);
    };
}

void drawTouched(Pages &pages, const ChangesSince &changes, const Room &room)
{
    const Wording &words = pages.wording();
    pages.smallHeading(words.text("Touched since then"), points(60));
    if (changes.changes.empty()) {
        const bool isCorrected = std::ranges::any_of(changes.findings, isCorrectedSince(changes));
        pages.text(words.text(isCorrected ? "Nothing besides the corrections below."
                                          : "Nothing on record was touched since."));
        return;
    }
    drawTable(pages, touchedTable(words, changes, room));
    const std::size_t more = earlierThanShown(changes, room);
    if (more > 0)
        pages.text(
            words.text("Earlier changes, in the inspection packet: {0}.", {words.count(more)}),
            Size::Small, true);
}

Table::Row rowOf(const Wording &words, const packet::SquawkEntry &squawk, const Room &room)
{
    const bool isFixed = squawk.fixed_on.has_value();
    const std::string &number =
        squawk.finding_number.empty() ? squawk.number : squawk.finding_number;
    const QString correction = isFixed ? words.day(squawk.fixed_on) + QLatin1Char('\n') +
                                             shortened(squawk.correction, room.longest_text)
                                       : words.text("open");
    return {{{asIs(number), markOf(squawk.severity)},
             {shortened(squawk.title, room.longest_text)},
             {correction, Mark::None, !isFixed},
             {verifiedIn(words, squawk)}}};
}

Table findingsTable(const Wording &words, const ChangesSince &changes, const Room &room)
{
    Table table;
    table.columns = {{words.text("No."), 1.2},
                     {words.text("Finding"), 4},
                     {words.text("Correction"), 4.4},
                     {words.text("Verified"), 3}};
    for (std::size_t i = 0; i < std::min(mostFindings, changes.findings.size()); ++i)
        table.rows.push_back(rowOf(words, changes.findings[i], room));
    return table;
}

void drawFindings(Pages &pages, const ChangesSince &changes, const Room &room)
{
    if (changes.findings.empty())
        return;
    const Wording &words = pages.wording();
    const Table table = findingsTable(words, changes, room);
    pages.smallHeading(words.text("Findings inside, and what became of them"),
                       leastHeightOf(table, pages.body().width()));
    drawTable(pages, table);
    if (changes.findings.size() > mostFindings)
        pages.text(words.text("More findings, in the inspection packet: {0}.",
                              {words.count(changes.findings.size() - mostFindings)}),
                   Size::Small, true);
}

void drawPictures(Pages &pages, const ChangesSince &changes, const Room &room, PictureShelf &shelf)
{
    if (changes.photos.empty())
        return;
    const Wording &words = pages.wording();
    const std::string count = words.count(changes.photos.size());
    if (!room.has_pictures) {
        pages.gap(points(6));
        pages.text(words.text(changes.photos.size() == 1
                                  ? "1 photograph taken since, not printed here."
                                  : "{0} photographs taken since, not printed here.",
                              {count}),
                   Size::Small);
        return;
    }
    const std::size_t shown = std::min(mostPhotos, changes.photos.size());
    std::vector<packet::Photo> left{changes.photos.front()};
    std::vector<packet::Photo> right;
    if (shown > 1)
        right.push_back(changes.photos[1]);
    pages.smallHeading(words.text("Photographed since: {0} of {1}", {words.count(shown), count}),
                       points(100));
    drawSideBySide(pages, left, right, shelf, false);
}

constexpr double answerFrame = points(150);
constexpr double aboveAnswer = points(8);
constexpr double belowAnswer = points(6);

/// Limits stand in the notes of what was torqued.
About aboutOf(const ChangesSince &changes)
{
    const bool hasLimits = std::ranges::any_of(changes.changes, [](const auto &change) {
        return change.torque && (change.torque->torque_min || change.torque->torque_max);
    });
    return hasLimits ? About::FindingsAndLimits : About::Findings;
}

QString answerNote(const Wording &words)
{
    return words.text("An answer by message is kept with the signature. Whether another look is "
                      "needed you decide.");
}

/// The frame to answer in, with all that is said below it.
double heightOfAnswer(const Pages &pages, const ChangesSince &changes)
{
    const TextBlock note(answerNote(pages.wording()), Size::Small, pages.body().width());
    return aboveAnswer + answerFrame + belowAnswer + note.height() +
           heightOfCautionLines(pages, changes.cautions, aboutOf(changes));
}

double headingHeight()
{
    return points(15) + lineHeight(Size::Body);
}

/// What stands between the title and the pictures.
double heightOfTables(Pages &pages, const ChangesSince &changes, const Room &room)
{
    const Wording &words = pages.wording();
    const double width = pages.body().width();
    double height = headingHeight();
    height += changes.changes.empty() ? lineHeight(Size::Body)
                                      : wholeHeightOf(touchedTable(words, changes, room), width);
    if (earlierThanShown(changes, room) > 0)
        height += lineHeight(Size::Small);
    if (!changes.findings.empty())
        height += headingHeight() + wholeHeightOf(findingsTable(words, changes, room), width);
    if (changes.findings.size() > mostFindings)
        height += lineHeight(Size::Small);
    return height;
}

/// The first photographs side by side, below their heading.
double heightOfPictures(const Pages &pages, const ChangesSince &changes)
{
    double words = 0;
    for (std::size_t i = 0; i < std::min(mostPhotos, changes.photos.size()); ++i)
        words = std::max(words, heightOfWordsBelow(pages, changes.photos[i]));
    // A lying picture of four to three fills half the width.
    return headingHeight() + pages.body().width() / 2 * 0.75 + words + points(6);
}

/// The most that fits between the title and the answer.
Room roomOn(Pages &pages, const ChangesSince &changes)
{
    const double space = pages.spaceLeft() - heightOfAnswer(pages, changes);
    const double pictures = heightOfPictures(pages, changes);
    const double note = points(6) + lineHeight(Size::Small);
    Room chosen = roomsByPreference.back();
    const bool hasPictures =
        !changes.photos.empty() &&
        heightOfTables(pages, changes, roomsByPreference[3]) + pictures <= space;
    for (const Room &room : roomsByPreference) {
        if (heightOfTables(pages, changes, room) + (hasPictures ? pictures : note) <= space) {
            chosen = room;
            break;
        }
    }
    chosen.has_pictures = hasPictures;
    return chosen;
}

/// What to tick, and where to sign.
void drawAnswer(Pages &pages, const ChangesSince &changes)
{
    const Wording &words = pages.wording();
    constexpr double height = answerFrame;
    pages.gap(aboveAnswer);
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
    for (const char *choice :
         {"Yes, it holds.", "Yes, with the remarks below.", "No, I have to look at it again."}) {
        drawMark(painter, Mark::EmptyBox, QRectF(left, y, points(11), points(11)));
        painter.setPen(Qt::black);
        TextBlock(words.text(choice), Size::Body, body.width())
            .draw(painter, {left + points(17), y});
        y += points(16);
    }
    const double line = frame.bottom() - points(20);
    painter.setPen(QPen(Qt::black, points(0.6)));
    painter.drawLine(
        QLineF(left, line - points(34), frame.right() - points(10), line - points(34)));
    painter.drawLine(QLineF(left, line, frame.right() - points(10), line));
    painter.setPen(Qt::black);
    TextBlock(words.text("{0}: name, number, signature, date", {changes.signature.by}), Size::Small,
              body.width())
        .draw(painter, {left, line + points(2)});
    pages.advance(height + belowAnswer);
    pages.text(answerNote(words), Size::Small);
    drawCautionLines(pages, changes.cautions, aboutOf(changes));
}

void drawAll(Pages &pages, const ChangesSince &changes, PictureShelf &shelf)
{
    drawTitle(pages, changes);
    const Room room = roomOn(pages, changes);
    drawTouched(pages, changes, room);
    drawFindings(pages, changes, room);
    drawPictures(pages, changes, room, shelf);
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
