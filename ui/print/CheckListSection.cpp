// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/PacketSections.h"

#include "ui/print/Pages.h"
#include "ui/print/Table.h"

namespace lastrivet::print {

namespace {

constexpr double roomToWrite = points(24);

Table::Row rowOf(const Wording &words, const packet::CheckList::Line &line)
{
    Table::Cell builder;
    if (line.not_applicable) {
        builder = {words.text("does not apply"), Mark::CrossedBox};
    } else if (line.done_on) {
        builder = {words.date(line.done_on) + QLatin1Char('\n') + asIs(line.done_by),
                   Mark::TickedBox};
    } else {
        builder = {QString(), Mark::EmptyBox};
    }
    return {{{asIs(line.item)}, builder, {QString(), Mark::EmptyBox}, {}, {asIs(line.source)}},
            Table::Bar::None, false, roomToWrite};
}

void drawList(Pages &pages, const packet::CheckList &list)
{
    const Wording &words = pages.wording();
    Table table;
    table.columns = {{words.text("Look at"), 5.6},
                     {words.text("Builder"), 2.6},
                     {words.text("Inspector"), 1.5},
                     {words.text("Remarks"), 3.4, false, true},
                     {words.text("Source"), 1.6}};
    for (const packet::CheckList::Line &line : list.lines)
        table.rows.push_back(rowOf(words, line));
    pages.heading(1, asIs(list.closing), points(20) + leastHeightOf(table, pages.body().width()));
    if (list.is_from_profile && !list.lines.empty()) {
        pages.text(words.text("No list was kept for this closing; these are the usual points for "
                              "a structure of its kind."),
                   Size::Small);
        pages.advance(points(4));
    }
    if (list.lines.empty())
        pages.text(words.text("There is no list for this closing."));
    drawTable(pages, table);
}

} // namespace

void drawCheckLists(Pages &pages, const packet::Packet &packet)
{
    if (packet.check_lists.empty())
        return;
    pages.breakPage();
    pages.heading(0, pages.wording().text("The inspector's list"), points(80));
    for (const packet::CheckList &list : packet.check_lists)
        drawList(pages, list);
}

} // namespace lastrivet::print
