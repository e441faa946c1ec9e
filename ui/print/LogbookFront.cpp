// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/InWords.h"
#include "ui/print/AircraftFacts.h"
#include "ui/print/Contents.h"
#include "ui/print/Facts.h"
#include "ui/print/LogbookSections.h"
#include "ui/print/Pages.h"
#include "ui/print/Table.h"
#include "ui/print/Title.h"

namespace lastrivet::print {

namespace {

using packet::Logbook;

/// What stands at the head of columns of sums; the first one names what is summed.
Table sumTable(const Wording &words, const QString &head)
{
    Table table;
    table.columns = {{head, 5},
                     {words.text("By the clock"), 1.8, true},
                     {words.text("All who worked"), 1.8, true},
                     {words.text("Entries"), 1.2, true}};
    return table;
}

Table::Row sumRow(const Wording &words, const QString &name, const hours::Total &total,
                  bool isBold = false)
{
    return {{{name, Mark::None, isBold},
             {words.hours(total.minutes), Mark::None, isBold},
             {words.hours(total.worker_minutes), Mark::None, isBold},
             {words.number(total.sessions), Mark::None, isBold}}};
}

void drawSums(Pages &pages, const QString &title, const Table &table)
{
    pages.heading(1, title, leastHeightOf(table, pages.body().width()));
    drawTable(pages, table);
}

void drawMonths(Pages &pages, const Logbook &log)
{
    const Wording &words = pages.wording();
    Table table = sumTable(words, words.text("Month"));
    for (const hours::MonthHours &month : log.totals.months) {
        Logbook::Chapter chapter;
        chapter.year = month.year;
        chapter.month = month.month;
        table.rows.push_back(sumRow(words, chapterTitle(words, chapter), month.total));
    }
    table.rows.push_back(sumRow(words, words.text("In all"), log.totals.total, true));
    drawSums(pages, words.text("By month"), table);
}

void drawParts(Pages &pages, const Logbook &log)
{
    const Wording &words = pages.wording();
    Table table;
    table.columns = {{words.text("Part"), 6},
                     {words.text("Own"), 1.5, true},
                     {words.text("With all below"), 1.8, true},
                     {words.text("Entries"), 1.2, true}};
    for (const Logbook::PartHours &part : log.parts)
        table.rows.push_back({{{inTree(asIs(part.name), part.depth)},
                               {words.hours(part.own.minutes)},
                               {words.hours(part.with_below.minutes)},
                               {words.number(part.with_below.sessions)}}});
    const hours::Total &none = log.totals.unassigned;
    if (none.sessions > 0)
        table.rows.push_back({{{words.text("On no part")},
                               {words.hours(none.minutes)},
                               {words.hours(none.minutes)},
                               {words.number(none.sessions)}}});
    const hours::Total &all = log.totals.total;
    table.rows.push_back({{{words.text("In all"), Mark::None, true},
                           {words.hours(all.minutes), Mark::None, true},
                           {words.hours(all.minutes), Mark::None, true},
                           {words.number(all.sessions), Mark::None, true}}});
    drawSums(pages, words.text("By part"), table);
}

void drawKinds(Pages &pages, const Logbook &log)
{
    const Wording &words = pages.wording();
    Table table = sumTable(words, words.text("Kind of work"));
    for (const hours::KindHours &kind : log.totals.kinds)
        table.rows.push_back(sumRow(words, words.text(packet::inWords(kind.kind)), kind.total));
    drawSums(pages, words.text("By kind of work"), table);
}

void drawPeople(Pages &pages, const Logbook &log)
{
    const Wording &words = pages.wording();
    Table table;
    table.columns = {{words.text("Who"), 5},
                     {words.text("Worked"), 1.8, true},
                     {words.text("Entries"), 1.2, true}};
    for (std::size_t i = 0; i < log.people.size(); ++i) {
        const hours::PersonHours &person = log.totals.people[i];
        table.rows.push_back(
            {{{log.people[i].empty() ? words.text("not on record") : asIs(log.people[i])},
              {words.hours(person.worker_minutes)},
              {words.number(person.sessions)}}});
    }
    drawSums(pages, words.text("By person"), table);
}

QString periodOf(const Wording &words, const packet::LogbookChoice &choice)
{
    if (choice.from && choice.until)
        return words.text("{0} to {1}", {choice.from->text(), choice.until->text()});
    if (choice.from)
        return words.text("from {0}", {choice.from->text()});
    if (choice.until)
        return words.text("until {0}", {choice.until->text()});
    return words.text("from the first entry to the last");
}

void drawLogTitle(Pages &pages, const Logbook &log)
{
    const Wording &words = pages.wording();
    const bool isByDate = log.choice.order == packet::LogOrder::ByDate;
    drawTitle(pages, words.text("Builder's log"), aircraftName(log.aircraft),
              words.text(isByDate ? "By date, {0}" : "By part, {0}",
                         {periodOf(words, log.choice).toStdString()}));
}

void drawInAll(Pages &pages, const Logbook &log)
{
    const Wording &words = pages.wording();
    const hours::Totals &totals = log.totals;
    pages.smallHeading(words.text("In all"), points(60));
    drawFacts(pages, {{words.text("By the clock"), words.hours(totals.total.minutes)},
                      {words.text("All who worked"), words.hours(totals.total.worker_minutes)},
                      {words.text("Entries"), words.number(totals.total.sessions)},
                      {words.text("Of it rework"), words.hours(totals.rework.minutes)},
                      {words.text("Entries written down late"), words.number(log.late_entries)},
                      {words.text("Entries without a time"), words.number(log.without_time)},
                      {words.text("Place, unless an entry names another"), asIs(log.usual_place)}});
    pages.advance(points(6));
    pages.text(
        words.text("An entry is marked late when it was written down more than {0} days after "
                   "the day it speaks of; the journal of the records tells when. Of entries that "
                   "were imported nobody knows when they were first written, and they are not "
                   "marked. Withdrawn entries are not printed. This is the builder's own record: "
                   "it approves nothing.",
                   {std::to_string(log.late_after_days)}),
        Size::Small);
}

} // namespace

void drawLogbookFront(Pages &pages, const Logbook &log)
{
    drawLogTitle(pages, log);
    drawInAll(pages, log);
    drawAircraft(pages, log.aircraft);
    drawContents(pages);
}

void drawLogbookSums(Pages &pages, const Logbook &log)
{
    if (log.totals.total.sessions == 0)
        return;
    pages.heading(0, pages.wording().text("Sums"), points(90));
    drawMonths(pages, log);
    drawParts(pages, log);
    drawKinds(pages, log);
    drawPeople(pages, log);
}

} // namespace lastrivet::print
