// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/PacketSections.h"

#include "core/packet/InWords.h"
#include "ui/print/AircraftFacts.h"
#include "ui/print/ByHand.h"
#include "ui/print/Cautions.h"
#include "ui/print/Mark.h"
#include "ui/print/Pages.h"
#include "ui/print/Phrases.h"
#include "ui/print/Table.h"

#include <algorithm>
#include <cstddef>
#include <optional>

namespace lastrivet::print {

namespace {

using packet::SheetToSign;
using packet::Standing;

constexpr double roomToWrite = points(42);
constexpr std::size_t mostLinesToWrite = 5;
constexpr std::size_t fewestLinesToWrite = 2;
constexpr double smallHeadingHeight = points(12) + points(3);
constexpr double besideMark = points(24);
constexpr double frameSide = points(10);
constexpr double frameEdge = points(7);

/// One hold point as it is printed: signed before, or a frame to sign in.
struct Block {
    enum class Form { Settled, Visitor, Builder };

    Form form;
    TextBlock title;
    /// With the closing and the aircraft in it, because a page may be filed without the others.
    TextBlock said;
    QStringList results;
    QString visitor;
    /// Of one that is settled; a waived one was not looked at, and has no tick.
    Mark mark = Mark::None;
};

double gapAbove(const Block &block)
{
    return block.form == Block::Form::Settled ? points(8) : points(6);
}

double heightOf(const Block &block)
{
    const double head = block.title.height() + block.said.height();
    switch (block.form) {
    case Block::Form::Settled:
        return head;
    case Block::Form::Visitor:
        return head + points(151);
    case Block::Form::Builder:
        return head + points(78);
    }
    return head;
}

/// Of the first block, where not all of them have room on one page.
double heightOfFirst(const std::vector<Block> &blocks)
{
    return blocks.empty() ? 0 : gapAbove(blocks.front()) + heightOf(blocks.front());
}

/// Of all blocks and the heading above them.
double heightOf(const std::vector<Block> &blocks)
{
    double height = smallHeadingHeight + lineHeight(Size::Body);
    for (const Block &block : blocks)
        height += gapAbove(block) + heightOf(block);
    return height;
}

/// Empty boxes with words behind them, side by side.
void drawChoices(Pages &pages, double left, double y, const QStringList &choices)
{
    QPainter &painter = pages.painter();
    for (const QString &choice : choices) {
        drawMark(painter, Mark::EmptyBox, QRectF(left, y, points(11), points(11)));
        const TextBlock block(choice, Size::Small, points(200));
        painter.setPen(Qt::black);
        block.draw(painter, {left + points(15), y});
        left += points(15) + block.naturalWidth() + points(16);
    }
}

void drawReportForm(Pages &pages)
{
    const Wording &words = pages.wording();
    const double height = points(34);
    pages.need(height);
    const QRectF &body = pages.body();
    const TextBlock said(words.text("The authority's own report form governs, number:"), Size::Body,
                         body.width(), true);
    pages.painter().setPen(Qt::black);
    const double baseline = pages.y() + points(10);
    said.draw(pages.painter(), {body.left(), baseline});
    const double from = body.left() + said.naturalWidth() + points(8);
    pages.painter().setPen(QPen(Qt::black, points(0.6)));
    pages.painter().drawLine(
        QLineF(from, baseline + points(12), body.right(), baseline + points(12)));
    pages.advance(height);
}

Table::Row rowOf(const Wording &words, const SheetToSign::Deficiency &line)
{
    QString text = asIs(line.text);
    if (!line.inspection.empty())
        text += QLatin1Char('\n') + words.text("from visit {0}", {line.inspection});
    QString correction = asIs(line.correction);
    if (line.corrected_on)
        correction += QLatin1Char('\n') + words.date(line.corrected_on) + QStringLiteral(", ") +
                      asIs(line.corrected_by);
    return {
        {{asIs(line.number)}, {text}, {correction}, {}, {}}, Table::Bar::None, false, roomToWrite};
}

/// Deficiencies known from earlier visits, then numbered lines to write on.
Table deficiencyTable(const Wording &words, const SheetToSign &sheet, std::size_t linesToWrite)
{
    Table table;
    table.has_grid = true;
    table.columns = {{words.text("No."), 0.8, false, true},
                     {words.text("Deficiency"), 4, false, true},
                     {words.text("Correction"), 4, false, true},
                     {words.text("Builder, signature and date"), 2.2, false, true},
                     {words.text("Inspector, signature and date"), 2.2, false, true}};
    for (const SheetToSign::Deficiency &line : sheet.deficiencies)
        table.rows.push_back(rowOf(words, line));
    for (std::size_t line = 1; line <= linesToWrite; ++line) {
        const QString number = sheet.deficiencies.empty()
                                   ? words.number(std::int64_t(line))
                                   : words.text("new {0}", {std::to_string(line)});
        table.rows.push_back({{{number}, {}, {}, {}, {}}, Table::Bar::None, false, roomToWrite});
    }
    return table;
}

/// So many lines to write on that what is below still comes to the same page, if it can.
std::optional<std::size_t> linesAbove(double below, const Pages &pages, const SheetToSign &sheet)
{
    const Table fewest = deficiencyTable(pages.wording(), sheet, fewestLinesToWrite);
    const double heading = smallHeadingHeight + lineHeight(Size::Body);
    const double room = pages.spaceLeft() - heading - wholeHeightOf(fewest, pages.body().width()) -
                        below - points(1);
    if (room < 0)
        return std::nullopt;
    const double line = roomToWrite + points(0.25);
    return std::min(mostLinesToWrite, fewestLinesToWrite + std::size_t(room / line));
}

/// Fewer lines to write on where that keeps what is below on the same page.
void drawDeficiencies(Pages &pages, const SheetToSign &sheet, double below)
{
    const Wording &words = pages.wording();
    const std::size_t lines = linesAbove(below, pages, sheet).value_or(mostLinesToWrite);
    const Table table = deficiencyTable(words, sheet, lines);
    pages.smallHeading(words.text("Deficiencies"), leastHeightOf(table, pages.body().width()));
    drawTable(pages, table);
}

bool isSettled(const Standing::HoldPointLine &point)
{
    return point.waived_on || (point.signature && !point.is_outdated &&
                               point.signature->result != SignOffResult::Rejected);
}

QString settledIn(const Wording &words, const Standing::HoldPointLine &point)
{
    if (point.waived_on)
        return words.text("Waived on {0} by {1}: {2}",
                          {point.waived_on->text(), point.waived_by, point.waived_why});
    const Standing::Signature &signature = *point.signature;
    return words.text("Signed before: {0}, {1}, {2}",
                      {words.text(packet::inWords(signature.result)).toStdString(), signature.by,
                       signature.signed_on ? signature.signed_on->text() : std::string()});
}

QString titleOf(const Wording &words, const Standing::HoldPointLine &point)
{
    return words.sentence(packet::inWords(point.kind)) + QStringLiteral("  ·  ") +
           words.text(packet::inWords(point.signer_role)) + QStringLiteral("  ·  ") +
           words.text(point.required ? "required" : "not required");
}

QStringList resultsToTick(const Wording &words)
{
    QStringList list;
    for (const SignOffResult result :
         {SignOffResult::Accepted, SignOffResult::AcceptedWithFindings, SignOffResult::Rejected})
        list << words.text(packet::inWords(result));
    return list;
}

QStringList waysToSee(const Wording &words)
{
    QStringList list;
    for (const Seen seen : {Seen::OnSite, Seen::ByPhoto, Seen::ByVideo, Seen::ByMessage})
        list << words.text(packet::inWords(seen));
    return list;
}

QString visitorOf(const Wording &words, SignerRole role)
{
    return words.text(role == SignerRole::Inspector ? "Inspector, name and number"
                                                    : "Adviser, name and number");
}

/// Name, signature and date side by side, each on a line to write on.
void drawSigner(Pages &pages, const QRectF &place, double y, const QString &who)
{
    constexpr double gap = points(14);
    const Wording &words = pages.wording();
    const double name = place.width() * 0.34;
    const double signature = place.width() * 0.42;
    const double date = place.width() - name - signature - 2 * gap;
    drawWritingLine(pages, place.left(), name, y, who);
    drawWritingLine(pages, place.left() + name + gap, signature, y, words.text("Signature"));
    drawWritingLine(pages, place.right() - date, date, y, words.text("Date"));
}

QString subjectOf(const Wording &words, const SheetToSign &sheet, const packet::Aircraft &aircraft)
{
    QStringList names{asIs(sheet.title), asIs(sheet.part), aircraftName(aircraft)};
    if (!aircraft.serial_number.empty())
        names << words.text("Serial number") + QLatin1Char(' ') + asIs(aircraft.serial_number);
    names.removeAll(QString());
    return names.join(QStringLiteral("  ·  "));
}

Block settledBlock(const Pages &pages, const Standing::HoldPointLine &point)
{
    const Wording &words = pages.wording();
    const double width = pages.body().width() - besideMark;
    return {Block::Form::Settled,
            TextBlock(titleOf(words, point), Size::Body, width, true),
            TextBlock(settledIn(words, point), Size::Small, width),
            {},
            {},
            point.waived_on ? Mark::NothingOnRecord : Mark::Met};
}

Block blockToSign(const Pages &pages, const Standing::HoldPointLine &point, const QString &subject)
{
    const Wording &words = pages.wording();
    const double width = pages.body().width() - 2 * frameSide;
    const QString source = sourceIn(words, point.source);
    return {point.signer_role == SignerRole::Builder ? Block::Form::Builder : Block::Form::Visitor,
            TextBlock(titleOf(words, point), Size::Body, width, true),
            TextBlock(source.isEmpty() ? subject : subject + QLatin1Char('\n') + source,
                      Size::Small, width),
            resultsToTick(words), visitorOf(words, point.signer_role)};
}

Block lateAcceptance(const Pages &pages, const QString &subject)
{
    const Wording &words = pages.wording();
    const double width = pages.body().width() - 2 * frameSide;
    const QString missing =
        words.text("What was missing is named on the front pages and under Readiness.");
    return {Block::Form::Visitor,
            TextBlock(words.text("Closed with gaps: late acceptance"), Size::Body, width, true),
            TextBlock(subject + QLatin1Char('\n') + missing, Size::Small, width),
            {words.text("may stay closed"), words.text("is to be opened")},
            visitorOf(words, SignerRole::Inspector)};
}

/// What is settled comes before what is to be signed, but for the late acceptance.
std::vector<Block> blocksOf(const Pages &pages, const SheetToSign &sheet, const QString &subject)
{
    std::vector<Block> blocks;
    if (sheet.asks_late_acceptance)
        blocks.push_back(lateAcceptance(pages, subject));
    for (const Standing::HoldPointLine &point : sheet.hold_points) {
        if (isSettled(point))
            blocks.push_back(settledBlock(pages, point));
    }
    for (const Standing::HoldPointLine &point : sheet.hold_points) {
        if (!isSettled(point))
            blocks.push_back(blockToSign(pages, point, subject));
    }
    return blocks;
}

/// What was found, how it was seen, and room for the visitor and the builder to sign.
void drawFrame(Pages &pages, const Block &block)
{
    const Wording &words = pages.wording();
    QPainter &painter = pages.painter();
    const QRectF frame(pages.body().left(), pages.y(), pages.body().width(), heightOf(block));
    const QRectF inside = frame.adjusted(frameSide, frameEdge, -frameSide, -frameEdge);
    painter.setPen(QPen(Qt::black, points(0.9)));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(frame);
    painter.setPen(Qt::black);
    block.title.draw(painter, inside.topLeft());
    block.said.draw(painter, inside.topLeft() + QPointF(0, block.title.height()));
    const double choices = inside.top() + block.title.height() + block.said.height() + frameEdge;
    drawChoices(pages, inside.left(), choices, block.results);
    if (block.form == Block::Form::Visitor) {
        drawChoices(pages, inside.left(), choices + points(17), waysToSee(words));
        drawSigner(pages, inside, inside.bottom() - points(60), block.visitor);
    }
    drawSigner(pages, inside, inside.bottom() - points(14), words.text("Builder, name"));
}

void drawSettled(Pages &pages, const Block &block)
{
    QPainter &painter = pages.painter();
    const QPointF corner(pages.body().left(), pages.y());
    drawMark(painter, block.mark, QRectF(corner, QSizeF(points(12), points(12))));
    painter.setPen(Qt::black);
    block.title.draw(painter, corner + QPointF(besideMark, 0));
    block.said.draw(painter, corner + QPointF(besideMark, block.title.height()));
}

void drawBlock(Pages &pages, const Block &block)
{
    pages.gap(gapAbove(block));
    pages.need(heightOf(block));
    if (block.form == Block::Form::Settled)
        drawSettled(pages, block);
    else
        drawFrame(pages, block);
    pages.advance(heightOf(block));
}

/// Of the builder's own block, which may stand on another page than the visitor's; else none.
double heightOfOwnLast(const std::vector<Block> &blocks)
{
    if (blocks.size() < 2 || blocks.back().form != Block::Form::Builder)
        return 0;
    return gapAbove(blocks.back()) + heightOf(blocks.back());
}

/// Where the cautions behind the last sheet would come to a page alone, the builder's own block
/// goes there with them.
void drawSheet(Pages &pages, const SheetToSign &sheet, const packet::Aircraft &aircraft,
               double cautionsBehind)
{
    const Wording &words = pages.wording();
    pages.heading(1, asIs(sheet.title), points(200));
    pages.text(asIs(sheet.part), Size::Small);
    drawReportForm(pages);
    const std::vector<Block> blocks = blocksOf(pages, sheet, subjectOf(words, sheet, aircraft));
    const double all = heightOf(blocks);
    const bool haveRoom = linesAbove(all + cautionsBehind, pages, sheet).has_value();
    const double goesOver = haveRoom || cautionsBehind <= 0 ? 0 : heightOfOwnLast(blocks);
    const double toBeSigned = all - goesOver;
    drawDeficiencies(pages, sheet, haveRoom ? all + cautionsBehind : toBeSigned);
    const double heading = smallHeadingHeight + lineHeight(Size::Body);
    pages.smallHeading(words.text("To be signed"), toBeSigned <= pages.body().height()
                                                       ? toBeSigned - heading
                                                       : heightOfFirst(blocks));
    for (std::size_t i = 0; i < blocks.size(); ++i) {
        if (goesOver > 0 && i + 1 == blocks.size())
            pages.need(goesOver + cautionsBehind);
        drawBlock(pages, blocks[i]);
    }
}

} // namespace

void drawSheetsToSign(Pages &pages, const packet::Packet &packet)
{
    const double cautions = packet.signed_sheets.empty()
                                ? heightOfCautions(pages, packet.cautions, About::Structure)
                                : 0;
    for (std::size_t i = 0; i < packet.sheets.size(); ++i) {
        pages.breakPage();
        if (i == 0)
            pages.heading(0, pages.wording().text("The sheet to sign"), points(200));
        const bool isLast = i + 1 == packet.sheets.size();
        drawSheet(pages, packet.sheets[i], packet.front.aircraft, isLast ? cautions : 0);
    }
}

} // namespace lastrivet::print
