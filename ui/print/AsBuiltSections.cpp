// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/AsBuiltSections.h"

#include "ui/print/AircraftFacts.h"
#include "ui/print/Contents.h"
#include "ui/print/Facts.h"
#include "ui/print/PacketSections.h"
#include "ui/print/Pages.h"
#include "ui/print/PartTable.h"
#include "ui/print/SignedTable.h"
#include "ui/print/Title.h"

namespace lastrivet::print {

namespace {

using packet::HandOver;
using packet::Standing;

/// The latest closing or opening; none while nothing happened.
const Standing::Event *latestEvent(const Standing &standing)
{
    return standing.events.empty() ? nullptr : &standing.events.back();
}

void drawLeftOut(Pages &pages, const HandOver &book)
{
    const Wording &words = pages.wording();
    const packet::Packet &whole = book.whole;
    drawNothingOf(pages, {{book.parts.empty(), words.text("parts")},
                          {whole.deviations.empty(), words.text("deviations from the drawings")},
                          {whole.bulletins.empty(), words.text("bulletins")},
                          {whole.squawks.empty(), words.text("squawks")},
                          {whole.fasteners.empty(), words.text("fasteners and torque")},
                          {whole.measurements.empty(), words.text("measurements")},
                          {whole.materials.empty(), words.text("uses of material")},
                          {book.equipment.empty(), words.text("equipment")},
                          {!book.weight.weighing, words.text("weighings")},
                          {whole.photos.empty(), words.text("photographs of the structure")}});
}

QString hoursOnRecord(const Wording &words, const HandOver &book)
{
    if (book.total.count() <= 0)
        return {};
    return words.text(
        "{0} by the clock, {1} of all who worked",
        {words.hours(book.total).toStdString(), words.hours(book.worker_total).toStdString()});
}

void drawHowLong(Pages &pages, const HandOver &book)
{
    const Wording &words = pages.wording();
    drawFacts(pages, {{words.text("First work on record"), words.day(book.first_work)},
                      {words.text("Latest work on record"), words.day(book.last_work)},
                      {words.text("Hours on record"), hoursOnRecord(words, book)},
                      {words.text("Parts"), words.number(std::int64_t(book.parts.size()))}});
}

QString nameInTree(const HandOver::Part &part)
{
    return inTree(part.code.empty() ? asIs(part.name) : asIs(part.code + "  " + part.name),
                  part.depth);
}

QString liesWithin(const Wording &words, const HandOver::Part &part)
{
    QStringList lines;
    for (const HandOver::Hidden &hidden : part.lies_within)
        lines << words.text("{0}: {1}",
                            {hidden.closing, nested(packet::inWords(hidden.state, hidden.begun))});
    return lines.join(QLatin1Char('\n'));
}

} // namespace

void drawNothingOf(Pages &pages, const std::vector<SectionKind> &kinds)
{
    QStringList missing;
    for (const SectionKind &kind : kinds) {
        if (kind.is_empty)
            missing << kind.name;
    }
    if (missing.isEmpty())
        return;
    pages.smallHeading(pages.wording().text("Nothing on record of"), lineHeight(Size::Body));
    pages.text(missing.join(QStringLiteral(", ")));
}

void drawWhatIsClosed(Pages &pages, const HandOver &book)
{
    const Wording &words = pages.wording();
    Table table;
    table.columns = {{words.text("Closing"), 4},
                     {words.text("Part"), 4},
                     {words.text("State"), 4.4},
                     {words.text("Closed"), 2.2},
                     {words.text("By"), 2.4}};
    for (const Standing &standing : book.whole.standings) {
        const Standing::Event *event = latestEvent(standing);
        const bool isClosed = event && event->closed_on;
        table.rows.push_back(
            {{{asIs(standing.title), Mark::None, true},
              {asIs(standing.part)},
              {words.text(packet::inWords(standing.state, standing.begun)),
               markOf(standing.state, standing.begun)},
              {isClosed ? words.day(event->closed_on, event->approximate) : QString()},
              {isClosed ? asIs(event->by) : QString()}}});
    }
    pages.smallHeading(words.text("Every closing and how it stands"),
                       leastHeightOf(table, pages.body().width()));
    if (table.rows.empty())
        pages.text(words.text("No closing is on record."));
    drawTable(pages, table);
}

void drawWhoSigned(Pages &pages, const HandOver &book)
{
    const Table table = signedTable(pages.wording(), book.whole.standings);
    if (table.rows.empty())
        return;
    pages.smallHeading(pages.wording().text("Who signed each closing"),
                       leastHeightOf(table, pages.body().width()));
    drawTable(pages, table);
}

void drawBookFront(Pages &pages, const HandOver &book)
{
    const Wording &words = pages.wording();
    drawTitle(pages, words.text("Hand-over book"), aircraftName(book.whole.front.aircraft),
              words.text("As built, as the records say on {0}", {book.whole.as_of.text()}));
    drawAircraft(pages, book.whole.front.aircraft);
    drawHowLong(pages, book);
    drawWhatIsClosed(pages, book);
    drawLeftOut(pages, book);
    drawContents(pages);
}

void drawParts(Pages &pages, const HandOver &book)
{
    if (book.parts.empty())
        return;
    const Wording &words = pages.wording();
    Table table;
    table.columns = {{words.text("Part"), 5.4},
                     {words.text("Part number"), 2.6},
                     {words.text("Serial number"), 2.4},
                     {words.text("Drawing"), 2.4},
                     {words.text("Lies within"), 5}};
    for (const HandOver::Part &part : book.parts)
        table.rows.push_back({{{nameInTree(part), Mark::None, part.depth == 0},
                               {asIs(part.part_number)},
                               {asIs(part.serial_number)},
                               {asIs(part.plan_ref)},
                               {liesWithin(words, part)}}});
    drawSection(pages, words.text("Parts"), table, {});
}

void drawClosings(Pages &pages, const HandOver &book)
{
    if (book.whole.standings.empty())
        return;
    pages.heading(0, pages.wording().text("Closings and signatures"), points(230));
    for (const Standing &standing : book.whole.standings)
        drawClosingRecord(pages, standing);
}

void drawEquipment(Pages &pages, const HandOver &book)
{
    if (book.equipment.empty())
        return;
    const Wording &words = pages.wording();
    Table table;
    table.columns = {{words.text("Equipment"), 4},     {words.text("Maker"), 2.6},
                     {words.text("Part number"), 2.6}, {words.text("Serial number"), 2.6},
                     {words.text("Where"), 3},         {words.text("Fitted"), 2.2},
                     {words.text("Removed"), 2.2}};
    for (const HandOver::Fitted &item : book.equipment)
        table.rows.push_back({{{asIs(item.name)},
                               {asIs(item.maker)},
                               {asIs(item.part_number)},
                               {asIs(item.serial_number)},
                               {asIs(item.part)},
                               {words.day(item.fitted_on)},
                               {words.day(item.removed_on)}}});
    drawSection(pages, words.text("Equipment"), table, {});
}

void drawLogSummary(Pages &pages, const HandOver &book)
{
    const Wording &words = pages.wording();
    Table parts;
    parts.columns = {{words.text("Part, with everything below it"), 6},
                     {words.text("Log entries"), 2, true},
                     {words.text("By the clock"), 2, true}};
    for (const HandOver::PartHours &row : book.hours)
        parts.rows.push_back({{{row.part.empty() ? words.text("of no part") : asIs(row.part)},
                               {words.number(row.sessions)},
                               {words.hours(row.minutes)}}});
    Table people;
    people.columns = {{words.text("Who"), 6},
                      {words.text("Log entries"), 2, true},
                      {words.text("Time"), 2, true}};
    for (const packet::WorkLog::Total &person : book.whole.work.people)
        people.rows.push_back({{{asIs(person.name)},
                                {words.number(person.sessions)},
                                {words.hours(person.minutes)}}});
    drawSection(pages, words.text("The log in short"), parts, words.text("No work is on record."));
    if (people.rows.empty())
        return;
    pages.smallHeading(words.text("Who built it"), leastHeightOf(people, pages.body().width()));
    drawTable(pages, people);
}

} // namespace lastrivet::print
