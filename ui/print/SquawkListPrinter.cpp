// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/SquawkListPrinter.h"

#include "ui/print/AircraftFacts.h"
#include "ui/print/Cautions.h"
#include "ui/print/SquawkRows.h"
#include "ui/print/Title.h"

#include <algorithm>

namespace lastrivet::print {

namespace {

using packet::SquawkList;
using readiness::Reachable;

QString headOf(const Wording &words, Reachable reachable)
{
    switch (reachable) {
    case Reachable::NotForLong:
        return words.text("Soon out of reach");
    case Reachable::NoLonger:
        return words.text("Out of reach");
    case Reachable::Yes:
        return words.text("In reach");
    case Reachable::Done:
        break;
    }
    return words.text("Done");
}

QString closingsIn(const SquawkList::Entry &entry)
{
    QStringList titles;
    for (const std::string &title : entry.closings)
        titles << asIs(title);
    return titles.join(QStringLiteral(", "));
}

/// What is special about its reach, below the title.
QString reachIn(const Wording &words, const SquawkList::Entry &entry)
{
    const std::string closings = closingsIn(entry).toStdString();
    if (entry.reachable == Reachable::NotForLong && !closings.empty())
        return words.text("Last chance before: {0}", {closings});
    if (entry.reachable == Reachable::NoLonger && !closings.empty())
        return words.text("To reach it, open: {0}", {closings});
    return {};
}

Table::Row rowOf(const Wording &words, const SquawkList::Entry &entry)
{
    Table::Row row = squawkRow(words, entry.squawk);
    const QString reach = reachIn(words, entry);
    if (!reach.isEmpty())
        row.cells[1].text += QLatin1Char('\n') + reach;
    if (entry.estimate && entry.reachable != Reachable::Done)
        row.cells[3].text +=
            (row.cells[3].text.isEmpty() ? QString() : QStringLiteral("\n")) +
            words.text("Estimate {0}", {words.hours(*entry.estimate).toStdString()});
    return row;
}

Table tableOf(const Wording &words, const SquawkList &list)
{
    Table table;
    table.columns = squawkColumns(words);
    std::optional<Reachable> group;
    for (const SquawkList::Entry &entry : list.entries) {
        if (group != entry.reachable) {
            group = entry.reachable;
            const auto count =
                std::ranges::count(list.entries, entry.reachable, &SquawkList::Entry::reachable);
            Table::Row head{{{QStringLiteral("%1 (%2)").arg(headOf(words, *group),
                                                            words.number(std::int64_t(count)))}}};
            head.is_group = true;
            table.rows.push_back(std::move(head));
        }
        table.rows.push_back(rowOf(words, entry));
    }
    return table;
}

QString filterIn(const Wording &words, const SquawkList &list)
{
    QStringList said;
    for (const Message &wish : list.filter)
        said << words.text(wish);
    return words.listed(said);
}

void drawList(Pages &pages, const SquawkList &list)
{
    const Wording &words = pages.wording();
    Table table = tableOf(words, list);
    table.kept_behind = heightOfCautions(pages, list.cautions, About::Structure);
    drawTitle(pages, words.text("List of squawks"), aircraftName(list.aircraft), {});
    pages.text(words.text("As of {0}. What will be out of reach first comes first, then by "
                          "severity and age.",
                          {list.as_of.text()}));
    pages.text(list.filter.empty()
                   ? words.text("Nothing is left out.")
                   : words.text("Shown: {0}.", {filterIn(words, list).toStdString()}));
    pages.heading(0, words.text("Squawks"), leastHeightOf(table, pages.body().width()));
    pages.text(words.text("Triangle filled: airworthiness. Half filled: workmanship. Outline: "
                          "cosmetic."),
               Size::Small);
    pages.advance(points(6));
    if (list.entries.empty())
        pages.text(words.text("No squawk on record matches."));
    drawTable(pages, table);
    drawCautions(pages, list.cautions);
}

} // namespace

std::optional<Printed> printSquawkList(const packet::SquawkList &list, const Imprint &imprint,
                                       const Choices &choices, const std::filesystem::path &place,
                                       const OnPercent &onPercent)
{
    Document document = documentAbout(list.aircraft, choices.wording.text("List of squawks"));
    document.sections = {[&](Pages &pages, PictureShelf &) { drawList(pages, list); }};
    return printDocument(document, imprint, {}, choices, place, onPercent);
}

} // namespace lastrivet::print
