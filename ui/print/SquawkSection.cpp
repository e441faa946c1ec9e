// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/PacketSections.h"

#include "core/packet/InWords.h"
#include "ui/print/Pages.h"
#include "ui/print/SquawkRows.h"
#include "ui/print/Table.h"

namespace lastrivet::print {

namespace {

using packet::BulletinEntry;
using packet::DeviationEntry;
using packet::SquawkEntry;

QString decisionIn(const Wording &words, const DeviationEntry &deviation)
{
    if (!deviation.decision) {
        if (deviation.asked_on)
            return words.text("Not decided, asked on {0} of {1}",
                              {deviation.asked_on->text(), deviation.asked_of});
        return words.text("Not decided");
    }
    QStringList lines{words.sentence(packet::inWords(*deviation.decision))};
    addLine(lines, dateAndName(words, deviation.decided_on, deviation.decided_by));
    addLine(lines, asIs(deviation.basis));
    return lines.join(QLatin1Char('\n'));
}

Table::Cell builtIn(const Wording &words, const DeviationEntry &deviation)
{
    if (deviation.undone_on)
        return {words.text("undone on {0}", {deviation.undone_on->text()})};
    if (!deviation.built_on)
        return {words.text("not recorded as built")};
    const QString day = words.day(deviation.built_on);
    if (deviation.decision == Decision::Rejected)
        return {day + QLatin1Char('\n') + words.text("still built"), Mark::NotMet};
    return {day};
}

Table::Row rowOf(const Wording &words, const DeviationEntry &deviation)
{
    QStringList what{asIs(deviation.title)};
    for (const std::string &part : deviation.parts)
        addLine(what, asIs(part));
    if (deviation.raised_on)
        what << words.text("raised {0}", {deviation.raised_on->dayOnly().text()});
    addLine(what, photosIn(words, deviation.photo_numbers));
    QStringList built;
    addLine(built, asIs(deviation.built_as));
    if (!deviation.reason.empty())
        built << words.text("Reason: {0}", {deviation.reason});
    if (!deviation.alternatives.empty())
        built << words.text("Alternatives: {0}", {deviation.alternatives});
    return {{{asIs(deviation.number)},
             {what.join(QLatin1Char('\n'))},
             {asIs(deviation.drawing_ref)},
             {built.join(QLatin1Char('\n'))},
             builtIn(words, deviation),
             {decisionIn(words, deviation), Mark::None, !deviation.decision}}};
}

QString appliesIn(const Wording &words, const BulletinEntry &bulletin)
{
    if (!bulletin.applies)
        return words.text("not looked into");
    return words.text(*bulletin.applies ? "applies" : "does not apply");
}

Table::Row rowOf(const Wording &words, const BulletinEntry &bulletin)
{
    const bool isOpen = !bulletin.complied_on && bulletin.applies != false;
    const bool isGrave = bulletin.mandatory || !bulletin.applies;
    QString complied = words.text("open");
    if (bulletin.complied_on)
        complied = words.day(bulletin.complied_on) + QLatin1Char('\n') + asIs(bulletin.basis);
    else if (bulletin.applies == false)
        complied = asIs(bulletin.basis);
    return {{{asIs(bulletin.number)},
             {words.sentence(packet::inWords(bulletin.kind)) +
              (bulletin.mandatory ? QLatin1Char('\n') + words.text("mandatory") : QString())},
             {asIs(bulletin.title)},
             {asIs(bulletin.issuer)},
             {words.day(bulletin.received_on)},
             {appliesIn(words, bulletin)},
             {complied, isOpen && isGrave ? Mark::NotMet : Mark::None, isOpen}}};
}

} // namespace

void drawSquawks(Pages &pages, const packet::Packet &packet)
{
    const Wording &words = pages.wording();
    Table table;
    table.columns = squawkColumns(words);
    for (const SquawkEntry &squawk : packet.squawks)
        table.rows.push_back(squawkRow(words, squawk));
    pages.heading(0, words.text("Squawks"),
                  points(20) + leastHeightOf(table, pages.body().width()));
    if (table.rows.empty()) {
        pages.text(words.text("No squawk is on record for this region."));
        return;
    }
    pages.text(words.text("Triangle filled: airworthiness. Half filled: workmanship. Outline: "
                          "cosmetic. Open ones come first."),
               Size::Small);
    pages.advance(points(4));
    drawTable(pages, table);
}

void drawDeviations(Pages &pages, const packet::Packet &packet)
{
    const Wording &words = pages.wording();
    Table table;
    table.columns = {{words.text("No."), 0.9},     {words.text("Deviation"), 3.6},
                     {words.text("Drawing"), 1.9}, {words.text("Built as"), 3.6},
                     {words.text("Built"), 2.4},   {words.text("Acceptance"), 3.4}};
    for (const DeviationEntry &deviation : packet.deviations)
        table.rows.push_back(rowOf(words, deviation));
    pages.heading(0, words.text("Deviations"), leastHeightOf(table, pages.body().width()));
    if (table.rows.empty())
        pages.text(words.text("No deviation from the drawings is on record for this region."));
    drawTable(pages, table);
}

void drawBulletins(Pages &pages, const packet::Packet &packet)
{
    if (packet.bulletins.empty())
        return;
    const Wording &words = pages.wording();
    Table table;
    table.columns = {{words.text("No."), 1.8},        {words.text("Kind"), 2},
                     {words.text("Title"), 4},        {words.text("Issuer"), 2.4},
                     {words.text("Received"), 2},     {words.text("Applies"), 1.7},
                     {words.text("Complied with"), 3}};
    for (const BulletinEntry &bulletin : packet.bulletins)
        table.rows.push_back(rowOf(words, bulletin));
    pages.heading(0, words.text("Bulletins"), leastHeightOf(table, pages.body().width()));
    drawTable(pages, table);
}

} // namespace lastrivet::print
