// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/HoursText.h"

#include "app/cli/PlainText.h"
#include "app/cli/TextTable.h"
#include "core/records/PartPlace.h"

#include <algorithm>
#include <fmt/ostream.h>
#include <map>

namespace lastrivet::cli {

using hours::ComponentHours;
using hours::Grouping;
using hours::Total;
using hours::Totals;

namespace {

constexpr auto right = TextTable::Align::Right;

/// Minutes by the clock, man-minutes, and the number of log entries.
std::vector<std::string> cellsOf(std::string name, const Total &total)
{
    return {std::move(name), hoursText(total.minutes), hoursText(total.worker_minutes),
            std::to_string(total.sessions)};
}

/// The tree of parts as an indented table, each part before those below it.
class PartTable {
public:
    PartTable(const Totals &totals, const Records &records)
        : m_table({{"part"}, {"own", right}, {"with all below", right}, {"entries", right}})
    {
        for (const ComponentHours &part : totals.components)
            m_hours[part.id] = &part;
        std::map<Id<Component>, std::vector<const Component *>> below;
        for (const Component &part : records.components) {
            if (m_hours.contains(part.id))
                below[part.parent_id].push_back(&part);
        }
        addBelow({}, below, 0);
        if (totals.unassigned.sessions > 0)
            m_table.add({"on no part", hoursText(totals.unassigned.minutes), "",
                         std::to_string(totals.unassigned.sessions)});
    }

    const TextTable &table() const { return m_table; }

private:
    void addBelow(Id<Component> parent,
                  std::map<Id<Component>, std::vector<const Component *>> &below, std::size_t depth)
    {
        auto &parts = below[parent];
        std::sort(parts.begin(), parts.end(), [](const Component *a, const Component *b) {
            return partPlace(*a) < partPlace(*b);
        });
        for (const Component *part : parts) {
            const ComponentHours &hours = *m_hours.at(part->id);
            const std::string name =
                part->code.empty() ? part->name : part->code + " " + part->name;
            m_table.add({std::string(2 * depth, ' ') + name, hoursText(hours.own.minutes),
                         hoursText(hours.with_below.minutes),
                         std::to_string(hours.with_below.sessions)});
            addBelow(part->id, below, depth + 1);
        }
    }

    TextTable m_table;
    std::map<Id<Component>, const ComponentHours *> m_hours;
};

TextTable totalTable(std::string_view head)
{
    return TextTable({{head}, {"clock", right}, {"all who worked", right}, {"entries", right}});
}

TextTable monthTable(const Totals &totals)
{
    TextTable table = totalTable("month");
    for (const auto &month : totals.months)
        table.add(cellsOf(fmt::format("{:04}-{:02}", month.year, month.month), month.total));
    return table;
}

TextTable weekTable(const Totals &totals)
{
    TextTable table = totalTable("week");
    for (const auto &week : totals.weeks)
        table.add(cellsOf(fmt::format("{:04}-W{:02}", week.year, week.week), week.total));
    return table;
}

TextTable kindTable(const Totals &totals)
{
    TextTable table = totalTable("kind");
    for (const auto &kind : totals.kinds)
        table.add(cellsOf(std::string(word(kind.kind)), kind.total));
    return table;
}

TextTable personTable(const Totals &totals, const Records &records)
{
    TextTable table({{"person"}, {"worked", right}, {"entries", right}});
    for (const auto &person : totals.people) {
        const Person *known = records.find(person.id);
        table.add({known ? known->name : "not on record", hoursText(person.worker_minutes),
                   std::to_string(person.sessions)});
    }
    return table;
}

TextTable tableBy(Grouping by, const Totals &totals, const Records &records)
{
    switch (by) {
    case Grouping::Month:
        return monthTable(totals);
    case Grouping::Week:
        return weekTable(totals);
    case Grouping::Person:
        return personTable(totals, records);
    case Grouping::Kind:
        return kindTable(totals);
    case Grouping::Component:
    case Grouping::Step:
        break;
    }
    return PartTable(totals, records).table();
}

/// In whole per cent, rounded down.
std::int64_t perCent(Minutes part, Minutes whole)
{
    return whole.count() == 0 ? 0 : part.count() * 100 / whole.count();
}

} // namespace

void printHours(const Totals &totals, Grouping by, const Records &records, std::ostream &out)
{
    tableBy(by, totals, records).print(out);
    fmt::print(out, "In all {} by the clock, {} of all who worked, in {}; {} % of it rework.\n",
               hoursText(totals.total.minutes), hoursText(totals.total.worker_minutes),
               counted(totals.total.sessions, "log entry", "log entries"),
               perCent(totals.rework.worker_minutes, totals.total.worker_minutes));
}

void printEstimates(const hours::Estimates &estimates, const Records &records, std::ostream &out)
{
    TextTable table({{"part"}, {"step"}, {"estimate", right}, {"took", right}, {"", right}});
    std::vector<const hours::StepEstimate *> rows;
    for (const auto &row : estimates.steps)
        rows.push_back(&row);
    std::stable_sort(rows.begin(), rows.end(), [&](const auto *a, const auto *b) {
        return records.find(a->step)->component_id < records.find(b->step)->component_id;
    });
    const auto ratio = [](Minutes actual, Minutes estimate) {
        return fmt::format("{} %", perCent(actual, estimate));
    };
    for (const auto *row : rows) {
        const Step &step = *records.find(row->step);
        const Component *part = records.find(step.component_id);
        table.add({part ? part->name : std::string(), step.title, hoursText(row->estimate),
                   hoursText(row->actual), ratio(row->actual, row->estimate)});
    }
    table.print(out);
    fmt::print(out, "In all {} were thought to take {} and took {}: {}.\n",
               counted(std::int64_t(estimates.steps.size()), "step"), hoursText(estimates.estimate),
               hoursText(estimates.actual), ratio(estimates.actual, estimates.estimate));
    if (estimates.without_estimate + estimates.without_hours > 0)
        fmt::print(out, "Left out: {} without an estimate, {} without time in the log.\n",
                   counted(estimates.without_estimate, "finished step"),
                   counted(estimates.without_hours, "finished step"));
}

} // namespace lastrivet::cli
