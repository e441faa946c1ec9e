// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv/HoursCsv.h"

#include "core/exchange/csv/CsvExport.h"
#include "core/hours/Estimates.h"
#include "core/hours/Hours.h"

#include <fmt/ostream.h>

namespace lastrivet::exchange {

namespace {

using hours::Total;
using hours::Totals;

constexpr std::string_view totalHeads = "minutes,worker_minutes,entries\r\n";

void writeTotal(std::ostream &out, const Total &total)
{
    fmt::print(out, "{},{},{}\r\n", total.minutes.count(), total.worker_minutes.count(),
               total.sessions);
}

void writePart(std::ostream &out, const Records &records, Id<Component> id)
{
    const Component *part = records.find(id);
    fmt::print(out, "{},{},{},", id ? fmt::to_string(id.value()) : std::string(),
               csvCell(part ? part->code : std::string_view()),
               csvCell(part ? part->name : std::string_view()));
}

void writeParts(const Totals &totals, const Records &records, std::ostream &out)
{
    out << "component_id,code,part,own_minutes,own_worker_minutes,own_entries," << totalHeads;
    const auto row = [&](Id<Component> id, const Total &own, const Total &withBelow) {
        writePart(out, records, id);
        fmt::print(out, "{},{},{},", own.minutes.count(), own.worker_minutes.count(), own.sessions);
        writeTotal(out, withBelow);
    };
    for (const auto &part : totals.components)
        row(part.id, part.own, part.with_below);
    if (totals.unassigned.sessions > 0)
        row({}, totals.unassigned, totals.unassigned);
}

void writePeriods(const Totals &totals, hours::Grouping by, std::ostream &out)
{
    out << word(by) << ",rework_worker_minutes," << totalHeads;
    const auto row = [&](const std::string &period, const Total &total, Minutes rework) {
        fmt::print(out, "{},{},", period, rework.count());
        writeTotal(out, total);
    };
    if (by == hours::Grouping::Week) {
        for (const auto &week : totals.weeks)
            row(fmt::format("{:04}-W{:02}", week.year, week.week), week.total, week.rework);
    } else {
        for (const auto &month : totals.months)
            row(fmt::format("{:04}-{:02}", month.year, month.month), month.total, month.rework);
    }
}

void writeKinds(const Totals &totals, std::ostream &out)
{
    out << "kind," << totalHeads;
    for (const auto &kind : totals.kinds) {
        out << word(kind.kind) << ',';
        writeTotal(out, kind.total);
    }
}

void writePeople(const Totals &totals, const Records &records, std::ostream &out)
{
    out << "person_id,person,worker_minutes,entries\r\n";
    for (const auto &person : totals.people) {
        const Person *known = records.find(person.id);
        fmt::print(out, "{},{},{},{}\r\n",
                   person.id ? fmt::to_string(person.id.value()) : std::string(),
                   csvCell(known ? known->name : std::string_view()), person.worker_minutes.count(),
                   person.sessions);
    }
}

void writeSteps(const hours::Estimates &estimates, const Records &records, std::ostream &out)
{
    out << "component_id,code,part,step_id,step,estimate_minutes,worker_minutes\r\n";
    for (const auto &row : estimates.steps) {
        const Step &step = *records.find(row.step);
        writePart(out, records, step.component_id);
        fmt::print(out, "{},{},{},{}\r\n", row.step.value(), csvCell(step.title),
                   row.estimate.count(), row.actual.count());
    }
}

} // namespace

void writeHours(const Records &records, Moment asOf, hours::Grouping by, std::ostream &out)
{
    using hours::Grouping;
    const auto totals = hours::totals(records);
    switch (by) {
    case Grouping::Component:
        return writeParts(totals, records, out);
    case Grouping::Month:
    case Grouping::Week:
        return writePeriods(totals, by, out);
    case Grouping::Person:
        return writePeople(totals, records, out);
    case Grouping::Kind:
        return writeKinds(totals, out);
    case Grouping::Step:
        return writeSteps(hours::estimates(records, asOf), records, out);
    }
}

} // namespace lastrivet::exchange
