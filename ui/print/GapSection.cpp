// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/PacketSections.h"

#include "core/packet/InWords.h"
#include "ui/print/Mark.h"
#include "ui/print/Pages.h"
#include "ui/print/Table.h"

#include <algorithm>

namespace lastrivet::print {

namespace {

using packet::FrontPages;
using packet::Packet;

/// Rows on the front pages.
constexpr std::size_t mostOutOfReach = 14;
/// Closings that are named one by one with all that is not on record; of more, each kind of record
/// says how many lack it.
constexpr std::size_t mostNotOnRecord = 30;
/// Of the closings that lack a kind.
constexpr std::size_t mostTitles = 8;

void drawOutOfReach(Pages &pages, const Packet &packet)
{
    const auto &open = packet.front.out_of_reach;
    if (open.empty())
        return;
    const Wording &words = pages.wording();
    Table table;
    table.columns = {{words.text("What is open"), 7}, {words.text("Closed in by"), 3}};
    const std::size_t shown = std::min(mostOutOfReach, open.size());
    for (std::size_t i = 0; i < shown; ++i)
        table.rows.push_back({{{words.sentence(open[i].what), Mark::None, open[i].is_grave},
                               {asIs(open[i].closings)}}});
    pages.smallHeading(words.text("Open, and out of reach"),
                       leastHeightOf(table, pages.body().width()));
    drawTable(pages, table);
    if (shown < open.size()) {
        pages.advance(points(4));
        pages.text(
            words.text("{0} more, all in the sections below.", {words.count(open.size() - shown)}),
            Size::Small);
    }
}

void drawWaived(Pages &pages, const Packet &packet)
{
    if (packet.front.waived.empty())
        return;
    const Wording &words = pages.wording();
    Table table;
    table.columns = {{words.text("Hold point"), 3},
                     {words.text("Closing"), 3},
                     {words.text("Waived"), 2},
                     {words.text("By"), 2},
                     {words.text("Why"), 4}};
    for (const FrontPages::Waived &waived : packet.front.waived)
        table.rows.push_back({{{words.sentence(packet::inWords(waived.kind))},
                               {asIs(waived.closing)},
                               {words.date(waived.on)},
                               {asIs(waived.by)},
                               {asIs(waived.why)}}});
    pages.smallHeading(words.text("Waived"), leastHeightOf(table, pages.body().width()));
    drawTable(pages, table);
}

void drawClosedWithGaps(Pages &pages, const Packet &packet)
{
    if (packet.front.closed_with_gaps.empty())
        return;
    const Wording &words = pages.wording();
    Table table;
    table.columns = {{words.text("Closing"), 3},
                     {words.text("Closed"), 1.8},
                     {words.text("By"), 1.8},
                     {words.text("What was missing"), 5},
                     {words.text("Reason given"), 3}};
    for (const FrontPages::ClosedWithGaps &gaps : packet.front.closed_with_gaps) {
        QStringList missing;
        for (const Message &message : gaps.missing)
            missing << words.sentence(message);
        QString title = asIs(gaps.title);
        if (!gaps.in_region)
            title += QLatin1Char('\n') + words.text("elsewhere in the aircraft");
        table.rows.push_back({{{title, Mark::StateClosedEarly},
                               {words.day(gaps.closed_on, gaps.approximate)},
                               {asIs(gaps.by)},
                               {missing.join(QLatin1Char('\n'))},
                               {asIs(gaps.reason)}}});
    }
    pages.smallHeading(words.text("Closed with gaps, and accepted by nobody yet"),
                       leastHeightOf(table, pages.body().width()));
    drawTable(pages, table);
}

QString whichOf(const Wording &words, const FrontPages::Lacking &lacking)
{
    const std::size_t named = std::min(mostTitles, lacking.closings.size());
    QStringList titles;
    for (std::size_t i = 0; i < named; ++i)
        titles << asIs(lacking.closings[i]);
    const QString line = titles.join(QStringLiteral(", "));
    const std::size_t more = lacking.closings.size() - named;
    return more > 0 ? words.text("{0} and {1} more", {line.toStdString(), words.count(more)})
                    : line;
}

void drawLacking(Pages &pages, const Packet &packet)
{
    const Wording &words = pages.wording();
    Table table;
    table.columns = {{words.text("Nothing on record of"), 3},
                     {words.text("Closings"), 1.6},
                     {words.text("Which"), 7}};
    for (const FrontPages::Lacking &lacking : packet.front.lacking)
        table.rows.push_back(
            {{{words.text(lacking.kind), Mark::NothingOnRecord},
              {words.text("{0} of {1}", {words.count(lacking.closings.size()),
                                         words.count(packet.front.to_close.size())})},
              {whichOf(words, lacking)}}});
    const QString where =
        words.text("How much of each kind is on record for a closing stands under Readiness.");
    pages.smallHeading(words.text("Not on record"), 2 * lineHeight(Size::Small) + points(4) +
                                                        leastHeightOf(table, pages.body().width()));
    pages.text(where, Size::Small);
    pages.advance(points(4));
    drawTable(pages, table);
}

void drawNotOnRecord(Pages &pages, const Packet &packet)
{
    if (packet.front.not_on_record.empty())
        return;
    if (packet.front.not_on_record.size() > mostNotOnRecord) {
        drawLacking(pages, packet);
        return;
    }
    const Wording &words = pages.wording();
    Table table;
    table.columns = {{words.text("Closing"), 3}, {words.text("Nothing on record of"), 7}};
    for (const FrontPages::NotOnRecord &row : packet.front.not_on_record) {
        QStringList kinds;
        for (const Message &kind : row.kinds)
            kinds << words.text(kind);
        table.rows.push_back(
            {{{asIs(row.closing)}, {kinds.join(QStringLiteral(", ")), Mark::NothingOnRecord}}});
    }
    pages.smallHeading(words.text("Not on record"), leastHeightOf(table, pages.body().width()));
    drawTable(pages, table);
}

} // namespace

void drawGaps(Pages &pages, const Packet &packet)
{
    drawOutOfReach(pages, packet);
    drawClosedWithGaps(pages, packet);
    drawWaived(pages, packet);
    drawNotOnRecord(pages, packet);
}

} // namespace lastrivet::print
