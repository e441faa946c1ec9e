// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/HoursTables.h"

#include "core/packet/InWords.h"
#include "core/readiness/PartTree.h"

#include <algorithm>
#include <unordered_map>

namespace lastrivet::print {

namespace {

using hours::Total;
using readiness::Place;
using Row = FigureTable::Row;

QStringList totalHeads(const Wording &words, const QString &first)
{
    return {first, words.text("By the clock"), words.text("All who worked"), words.text("Entries")};
}

QStringList totalCells(const Wording &words, const QString &first, const Total &total)
{
    return {first, words.hours(total.minutes), words.hours(total.worker_minutes),
            words.number(total.sessions)};
}

/// How deep a part lies in its tree.
int depthOf(const readiness::PartTree &tree, Place place)
{
    int depth = 0;
    for (auto parent = tree.parentOf(place); parent; parent = tree.parentOf(*parent))
        ++depth;
    return depth;
}

RecordRef refTo(Id<Component> part)
{
    return {RecordType::Component, part.value()};
}

QStringList periodCells(const Wording &words, const QString &first, const Total &total,
                        Minutes rework)
{
    QStringList cells = totalCells(words, first, total);
    cells.insert(3, rework.count() == 0 ? QString() : words.hours(rework));
    return cells;
}

FigureTable periods(const Wording &words, const QString &first)
{
    FigureTable table{totalHeads(words, first), {}, words.text("The log is empty.")};
    table.heads.insert(3, words.text("Done again"));
    return table;
}

} // namespace

QString shareOf(const Wording &words, Minutes part, Minutes whole)
{
    if (whole.count() == 0)
        return QStringLiteral("–");
    const double share = double(part.count()) * 100 / double(whole.count());
    return words.locale().toString(share, 'f', share < 9.95 ? 1 : 0) + QStringLiteral(" %");
}

QString wholeHours(const Wording &words, std::int64_t minutes)
{
    return words.number((minutes + 30) / 60);
}

QString reworkWords(const Wording &words, const hours::Totals &totals)
{
    return words.text(
        "{0} of all work was done again",
        {shareOf(words, totals.rework.worker_minutes, totals.total.worker_minutes).toStdString()});
}

FigureTable partHours(const Wording &words, const Records &records, const hours::Totals &totals)
{
    FigureTable table{{words.text("Part"), words.text("Own"), words.text("With all below"),
                       words.text("All who worked"), words.text("Entries")},
                      {},
                      words.text("The log is empty.")};
    const readiness::PartTree tree(records.components);
    std::unordered_map<std::int64_t, const hours::ComponentHours *> known;
    for (const auto &part : totals.components)
        known[part.id.value()] = &part;
    for (Place place = 0; place < tree.size(); ++place) {
        const auto found = known.find(tree.part(place).id.value());
        if (found == known.end())
            continue;
        const auto &[id, own, all] = *found->second;
        table.rows.push_back({{asIs(packet::partName(records, id)), words.hours(own.minutes),
                               words.hours(all.minutes), words.hours(all.worker_minutes),
                               words.number(all.sessions)},
                              depthOf(tree, place),
                              false,
                              refTo(id)});
    }
    const auto sum = [&](const QString &name, const Total &total, bool isBold) {
        table.rows.push_back({{name, words.hours(total.minutes), words.hours(total.minutes),
                               words.hours(total.worker_minutes), words.number(total.sessions)},
                              0,
                              isBold,
                              {}});
    };
    if (totals.unassigned.sessions > 0)
        sum(words.text("On no part"), totals.unassigned, false);
    if (!table.rows.empty())
        sum(words.text("In all"), totals.total, true);
    return table;
}

FigureTable kindHours(const Wording &words, const hours::Totals &totals)
{
    FigureTable table{
        totalHeads(words, words.text("Kind of work")), {}, words.text("The log is empty.")};
    table.heads.append(words.text("Share"));
    const auto row = [&](const QString &name, const Total &total, bool isBold) {
        QStringList cells = totalCells(words, name, total);
        cells.append(shareOf(words, total.worker_minutes, totals.total.worker_minutes));
        table.rows.push_back({cells, 0, isBold, {}});
    };
    for (const auto &kind : totals.kinds)
        row(words.text(packet::inWords(kind.kind)), kind.total, false);
    if (!table.rows.empty())
        row(words.text("In all"), totals.total, true);
    return table;
}

FigureTable personHours(const Wording &words, const Records &records, const hours::Totals &totals)
{
    FigureTable table{{words.text("Who"), words.text("Worked"), words.text("Entries")},
                      {},
                      words.text("Nobody is on record.")};
    const auto row = [&](Id<Person> id, Minutes worked, std::int64_t entries) {
        const Person *person = records.find(id);
        table.rows.push_back(
            {{person ? asIs(person->name) : words.text("not on record"), words.hours(worked),
              words.number(entries)},
             0,
             false,
             person ? std::optional(RecordRef{RecordType::Person, id.value()}) : std::nullopt});
    };
    auto people = totals.people;
    std::stable_sort(people.begin(), people.end(), [](const auto &a, const auto &b) {
        return a.worker_minutes > b.worker_minutes;
    });
    for (const auto &person : people)
        row(person.id, person.worker_minutes, person.sessions);
    for (const Person &person : records.people) {
        const bool hasWorked = std::any_of(
            people.begin(), people.end(), [&](const auto &known) { return known.id == person.id; });
        if (!person.withdrawn_on && !hasWorked)
            row(person.id, Minutes{0}, 0);
    }
    return table;
}

FigureTable weekHours(const Wording &words, const hours::Totals &totals)
{
    FigureTable table = periods(words, words.text("Week"));
    table.heads.append(words.text("Sum so far"));
    Minutes sum = totals.total.worker_minutes;
    for (auto week = totals.weeks.rbegin(); week != totals.weeks.rend(); ++week) {
        const QString name = QStringLiteral("%1-W%2")
                                 .arg(week->year, 4, 10, QLatin1Char('0'))
                                 .arg(week->week, 2, 10, QLatin1Char('0'));
        QStringList cells = periodCells(words, name, week->total, week->rework);
        cells.append(words.hours(sum));
        sum = Minutes{sum.count() - week->total.worker_minutes.count()};
        table.rows.push_back({cells, 0, false, {}});
    }
    return table;
}

FigureTable monthHours(const Wording &words, const hours::Totals &totals)
{
    FigureTable table = periods(words, words.text("Month"));
    table.heads.append(words.text("Share done again"));
    for (auto month = totals.months.rbegin(); month != totals.months.rend(); ++month) {
        const QString name = QStringLiteral("%1-%2")
                                 .arg(month->year, 4, 10, QLatin1Char('0'))
                                 .arg(month->month, 2, 10, QLatin1Char('0'));
        QStringList cells = periodCells(words, name, month->total, month->rework);
        cells.append(month->rework.count() == 0
                         ? QString()
                         : shareOf(words, month->rework, month->total.worker_minutes));
        table.rows.push_back({cells, 0, false, {}});
    }
    return table;
}

FigureTable stepHours(const Wording &words, const Records &records,
                      const hours::Estimates &estimates)
{
    FigureTable table{
        {words.text("Part and step"), words.text("Estimate"), words.text("Took"),
         words.text("Of the estimate")},
        {},
        words.text("Here stands what finished steps took beside what was thought of them: steps "
                   "with an estimate, ticked, and with time in the log.")};
    const auto row = [&](const QString &name, Minutes estimate, Minutes actual, int depth,
                         bool isBold, std::optional<RecordRef> record) {
        table.rows.push_back(
            {{name, words.hours(estimate), words.hours(actual), shareOf(words, actual, estimate)},
             depth,
             isBold,
             record});
    };
    const readiness::PartTree tree(records.components);
    std::unordered_map<std::int64_t, std::vector<const hours::StepEstimate *>> steps;
    for (const auto &step : estimates.steps)
        steps[records.find(step.step)->component_id.value()].push_back(&step);
    std::unordered_map<std::int64_t, const hours::PartEstimate *> parts;
    for (const auto &part : estimates.parts)
        parts[part.part.value()] = &part;
    for (Place place = 0; place < tree.size(); ++place) {
        const auto part = parts.find(tree.part(place).id.value());
        if (part == parts.end())
            continue;
        const int depth = depthOf(tree, place);
        row(asIs(packet::partName(records, part->second->part)), part->second->estimate,
            part->second->actual, depth, false, refTo(part->second->part));
        for (const auto *step : steps[part->first])
            row(asIs(records.find(step->step)->title), step->estimate, step->actual, depth + 1,
                false, RecordRef{RecordType::Step, step->step.value()});
    }
    if (!table.rows.empty())
        row(words.text("In all"), estimates.estimate, estimates.actual, 0, true, {});
    return table;
}

} // namespace lastrivet::print
