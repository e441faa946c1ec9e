// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/PacketSections.h"

#include "core/packet/InWords.h"
#include "ui/print/AircraftFacts.h"
#include "ui/print/Contents.h"
#include "ui/print/Mark.h"
#include "ui/print/Pages.h"
#include "ui/print/Table.h"
#include "ui/print/Title.h"

#include <algorithm>
#include <cstdint>
#include <map>
#include <string>
#include <string_view>
#include <utility>

namespace lastrivet::print {

namespace {

using packet::FrontPages;
using packet::Packet;

/// Rows on the front pages before the reader is sent to the pages on readiness.
constexpr std::size_t mostOpenRows = 14;

QString titlesOf(const Wording &words, const Packet &packet)
{
    QStringList titles;
    for (const FrontPages::ToClose &closing : packet.front.to_close)
        titles << asIs(closing.title);
    constexpr qsizetype mostTitles = 4;
    const qsizetype more = titles.size() - mostTitles;
    const QString line = titles.mid(0, mostTitles).join(QStringLiteral(" · "));
    return more > 0 ? words.text("{0} and {1} more",
                                 {line.toStdString(), words.count(std::size_t(more))})
                    : line;
}

/// The worst state in a frame: what this packet is about, seen from across a table.
void drawStateOfAll(Pages &pages, const Packet &packet)
{
    const QRectF &body = pages.body();
    const double left = body.left() + points(54);
    const double width = body.right() - left - points(8);
    const std::string_view said =
        packet.front.to_close.size() == 1
            ? "State of the records on {0}. This is the builder's record, not an approval."
            : "Worst of {1} closings on {0}. This is the builder's record, not an approval.";
    const TextBlock sentence(
        pages.wording().text(
            said, {packet.as_of.text(), pages.wording().count(packet.front.to_close.size())}),
        Size::Small, width);
    const double height = std::max(points(46), points(27) + sentence.height() + points(7));
    const QRectF frame(body.left(), pages.y(), body.width(), height);
    QPainter &painter = pages.painter();
    painter.setPen(QPen(Qt::black, points(1)));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(frame);
    drawMark(painter, markOf(packet.state, packet.begun),
             QRectF(frame.left() + points(10), frame.top() + points(8), points(30), points(30)));
    painter.setPen(Qt::black);
    fitted(pages.wording().sentence(packet::inWords(packet.state, packet.begun)), Size::Subheading,
           width, 1, true)
        .draw(painter, {left, frame.top() + points(6)});
    sentence.draw(painter, {left, frame.top() + points(27)});
    pages.advance(height + points(12));
}

/// Below several closings, since nobody adds up pages of them.
void addSumOfAll(Table &table, const Wording &words, const Packet &packet)
{
    const auto &all = packet.front.to_close;
    if (all.size() < 2)
        return;
    std::int64_t musts = 0;
    std::int64_t shoulds = 0;
    for (const FrontPages::ToClose &closing : all) {
        musts += closing.musts;
        shoulds += closing.shoulds;
    }
    table.rows.push_back({{{words.text("In all"), Mark::None, true},
                           {words.text("{0} closings", {words.count(all.size())})},
                           {words.text("each point once for each closing")},
                           {words.number(musts), Mark::None, true},
                           {words.number(shoulds), Mark::None, true}}});
}

void drawToClose(Pages &pages, const Packet &packet)
{
    const Wording &words = pages.wording();
    Table table;
    table.columns = {{words.text("Closing"), 4},
                     {words.text("Part"), 4.4},
                     {words.text("State"), 5},
                     {words.text("Must"), 1, true},
                     {words.text("Advice"), 1.2, true}};
    for (const FrontPages::ToClose &closing : packet.front.to_close)
        table.rows.push_back({{{asIs(closing.title), Mark::None, true},
                               {asIs(closing.part)},
                               {words.text(packet::inWords(closing.state, closing.begun)),
                                markOf(closing.state, closing.begun)},
                               {words.number(closing.musts)},
                               {words.number(closing.shoulds)}}});
    addSumOfAll(table, words, packet);
    const bool isAnyClosed = std::ranges::any_of(
        packet.front.to_close, [](const auto &closing) { return isClosed(closing.state); });
    pages.smallHeading(words.text(isAnyClosed ? "Closings" : "To be closed"),
                       leastHeightOf(table, pages.body().width()));
    drawTable(pages, table);
}

void drawVisits(Pages &pages, const Packet &packet)
{
    if (packet.front.visits.empty())
        return;
    const Wording &words = pages.wording();
    Table table;
    table.columns = {{words.text("Visit"), 3},   {words.text("Inspector"), 2.8},
                     {words.text("Asked"), 2.2}, {words.text("Planned"), 2.2},
                     {words.text("Held"), 2.2},  {words.text("Complete"), 2.2},
                     {words.text("Report"), 1.7}};
    for (const FrontPages::Visit &visit : packet.front.visits) {
        QString kind = words.sentence(packet::inWords(visit.kind));
        if (!visit.reference.empty())
            kind += QLatin1Char(' ') + asIs(visit.reference);
        if (!visit.is_for_these)
            kind += QLatin1Char('\n') + words.text("for other closings, still open");
        QString who = asIs(visit.inspector);
        if (visit.visitor_role != SignerRole::Inspector)
            who += QLatin1Char('\n') + words.text(packet::inWords(visit.visitor_role));
        table.rows.push_back({{{kind},
                               {who},
                               {words.day(visit.asked_on)},
                               {words.date(visit.planned_for)},
                               {words.day(visit.held_on)},
                               {words.day(visit.completed_on)},
                               {asIs(visit.report_number)}}});
    }
    pages.smallHeading(words.text("Visits"), leastHeightOf(table, pages.body().width()));
    drawTable(pages, table);
}

/// What of a table of open points found no room, by kind.
using LeftOut = std::map<RecordType, std::int64_t>;

std::string_view patternOf(RecordType kind)
{
    switch (kind) {
    case RecordType::Step:
        return "steps {0}";
    case RecordType::Squawk:
        return "squawks {0}";
    case RecordType::Deviation:
        return "deviations {0}";
    case RecordType::Bulletin:
        return "bulletins {0}";
    case RecordType::Fastener:
        return "lines of fasteners {0}";
    case RecordType::Measurement:
        return "measurements {0}";
    case RecordType::MaterialUse:
        return "uses of material {0}";
    case RecordType::PartLine:
        return "packing lines {0}";
    case RecordType::Closing:
        return "boxes within {0}";
    case RecordType::HoldPoint:
        return "hold points {0}";
    default:
        return "others {0}";
    }
}

/// "And 12 more: steps 8, squawks 4".
void addLeftOut(Table &table, const Wording &words, const LeftOut &leftOut)
{
    if (leftOut.empty())
        return;
    std::int64_t count = 0;
    QStringList kinds;
    for (const auto &[kind, ofKind] : leftOut) {
        count += ofKind;
        kinds << words.text(patternOf(kind), {words.number(ofKind).toStdString()});
    }
    const QString text =
        words.text("And {0} more: {1}", {words.number(count).toStdString(),
                                         kinds.join(QStringLiteral(", ")).toStdString()});
    table.rows.push_back({{{text}}, Table::Bar::Must});
}

/// The grave points of each closing and the first of the others, below a row that names it.
Table openTable(const Wording &words, const Packet &packet)
{
    const std::size_t share =
        std::max<std::size_t>(2, mostOpenRows / std::max<std::size_t>(1, packet.standings.size()));
    Table table;
    table.columns = {{words.text("What is open"), 8}, {words.text("Waits for"), 1.6}};
    // By id, since two closings may bear one title.
    Id<Closing> closing;
    std::size_t shown = 0;
    LeftOut leftOut;
    for (const FrontPages::Open &open : packet.front.open) {
        if (open.of != closing) {
            addLeftOut(table, words, std::exchange(leftOut, {}));
            shown = 0;
            table.rows.push_back({{{asIs(open.closing)}}, Table::Bar::None, true});
        }
        closing = open.of;
        if (!open.is_grave && shown >= share) {
            ++leftOut[open.kind];
            continue;
        }
        ++shown;
        table.rows.push_back(
            {{{words.sentence(open.what), Mark::None, open.is_grave},
              {open.waits_for ? words.text(packet::inWords(*open.waits_for)) : QString()}},
             Table::Bar::Must});
    }
    addLeftOut(table, words, leftOut);
    return table;
}

/// How many there are where not all are named; nothing where they are.
QString countOfOpen(const Wording &words, const Packet &packet, const Table &table)
{
    const std::size_t named = std::size_t(std::ranges::count_if(
        table.rows, [](const Table::Row &row) { return row.cells.size() > 1; }));
    const std::size_t count = packet.front.open.size();
    if (named == count)
        return {};
    const std::string_view said =
        packet.front.asked.empty()
            ? "{0} points are open; {1} of them are named here."
            : "{0} points are open beside what is asked above; {1} of them are named here.";
    return words.text(said, {words.count(count), words.count(named)});
}

void drawOpen(Pages &pages, const Packet &packet)
{
    const Wording &words = pages.wording();
    const Table table = openTable(words, packet);
    const QString count = countOfOpen(words, packet, table);
    pages.smallHeading(words.text("Open"), lineHeight(Size::Small) * (count.isEmpty() ? 1 : 2) +
                                               points(4) +
                                               leastHeightOf(table, pages.body().width()));
    const bool isClosedIn =
        !packet.front.out_of_reach.empty() ||
        std::ranges::any_of(packet.front.closed_with_gaps, &FrontPages::ClosedWithGaps::in_region);
    if (table.rows.empty()) {
        pages.text(isClosedIn
                       ? words.text("What is closed already is told below: what is open now and "
                                    "out of reach, and what was missing when it was closed.")
                       : words.text("No work on record is open in the way of these closings."));
        return;
    }
    if (!count.isEmpty())
        pages.text(count, Size::Small);
    pages.text(words.text("What has a bar before it keeps its closing open."), Size::Small);
    pages.advance(points(4));
    drawTable(pages, table);
    pages.advance(points(4));
    pages.text(words.text("All of it is named under Readiness."), Size::Small);
}

} // namespace

void drawFrontPages(Pages &pages, const Packet &packet, PictureShelf &shelf)
{
    const Wording &words = pages.wording();
    drawTitle(pages, words.text("Inspection packet"), aircraftName(packet.front.aircraft),
              titlesOf(words, packet));
    drawStateOfAll(pages, packet);
    drawReduction(pages, packet, shelf);
    drawToClose(pages, packet);
    drawAsked(pages, packet);
    drawAircraft(pages, packet.front.aircraft);
    drawVisits(pages, packet);
    drawOpen(pages, packet);
    drawGaps(pages, packet);
    drawContents(pages);
}

} // namespace lastrivet::print
