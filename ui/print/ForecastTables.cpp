// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/HoursTables.h"

#include <algorithm>

namespace lastrivet::print {

namespace {

using forecast::Range;

QStringList hourCells(const Wording &words, const Range<std::int64_t> &minutes)
{
    return {wholeHours(words, minutes.p10), wholeHours(words, minutes.p50),
            wholeHours(words, minutes.p80), wholeHours(words, minutes.p90)};
}

QString between(const Wording &words, const Range<std::int64_t> &minutes)
{
    return words.text("{0} to {1}", {wholeHours(words, minutes.p10).toStdString(),
                                     wholeHours(words, minutes.p90).toStdString()});
}

QString partOf(const Wording &words, const Records &records, Id<Component> id)
{
    const Component *part = records.find(id);
    return part ? asIs(part->name) : words.text("On no part");
}

QStringList dayCells(const Wording &words, const Range<Moment> &days)
{
    return {words.date(days.p10), words.date(days.p50), words.date(days.p80), words.date(days.p90)};
}

Range<std::int64_t> above(const Range<std::int64_t> &minutes, Minutes done)
{
    return {minutes.p10 + done.count(), minutes.p50 + done.count(), minutes.p80 + done.count(),
            minutes.p90 + done.count()};
}

/// Those that carry most of the spread first.
std::vector<const forecast::AssemblyForecast *> bySpread(const forecast::Forecast &told)
{
    std::vector<const forecast::AssemblyForecast *> sorted;
    for (const auto &assembly : told.assemblies)
        sorted.push_back(&assembly);
    std::stable_sort(sorted.begin(), sorted.end(), [](const auto *a, const auto *b) {
        return a->share_of_spread > b->share_of_spread;
    });
    return sorted;
}

FigureTable::Row assemblyRow(const Wording &words, const Records &records,
                             const forecast::AssemblyForecast &assembly)
{
    const QString share =
        words.locale().toString(100 * assembly.share_of_spread, 'f', 0) + QStringLiteral(" %");
    FigureTable::Row row{QStringList{partOf(words, records, assembly.assembly)} +
                             hourCells(words, assembly.minutes_to_go) + QStringList{share},
                         0,
                         false,
                         {}};
    if (assembly.assembly)
        row.record = RecordRef{RecordType::Component, assembly.assembly.value()};
    return row;
}

/// What came, measured at the four points.
QString fared(const Wording &words, const forecast::Look &look)
{
    if (look.steps_since == 0)
        return {};
    if (look.came > look.said.p90)
        return words.text("more than P90");
    if (look.came > look.said.p80)
        return words.text("P80 to P90");
    if (look.came > look.said.p50)
        return words.text("P50 to P80");
    return look.came >= look.said.p10 ? words.text("P10 to P50") : words.text("less than P10");
}

} // namespace

FigureTable forecastTable(const Wording &words, const Records &records,
                          const forecast::Outlook &outlook, Minutes done)
{
    const auto &told = outlook.told;
    FigureTable table{{words.text("Hours to go"), QStringLiteral("P10"), QStringLiteral("P50"),
                       QStringLiteral("P80"), QStringLiteral("P90"), words.text("Of the spread")},
                      {},
                      words.text("Nothing that is left has an estimate.")};
    if (told.assemblies.empty())
        return table;
    const auto add = [&](const QString &name, const QStringList &cells, int depth, bool isBold) {
        table.rows.push_back(
            {QStringList{name} + cells + QStringList{QString()}, depth, isBold, {}});
    };
    add(words.text("All work left"), hourCells(words, told.minutes_to_go), 0, true);
    if (told.finish)
        add(words.text("Done by"), dayCells(words, *told.finish), 0, true);
    for (const auto *assembly : bySpread(told))
        table.rows.push_back(assemblyRow(words, records, *assembly));
    if (!outlook.cone.empty())
        add(words.text("Done in all, by day"), {}, 0, false);
    for (const auto &point : outlook.cone)
        add(words.date(point.day), hourCells(words, above(point.minutes, done)), 1, false);
    return table;
}

FigureTable lookBackTable(const Wording &words, const forecast::LookBack &told)
{
    FigureTable table{
        {words.text("On"), words.text("Hours to go"), words.text("Done by (P50)"),
         words.text("Steps done since"), words.text("Said of them"), words.text("Came"),
         words.text("Lies in")},
        {},
        words.text("Here stands what the forecast said on the first day of each month beside what "
                   "came, from the third month of the log on.")};
    for (auto look = told.looks.rbegin(); look != told.looks.rend(); ++look) {
        const bool hasOutcome = look->steps_since > 0;
        table.rows.push_back(
            {{words.date(look->day), between(words, look->minutes_to_go),
              look->finish ? words.date(look->finish->p50) : QStringLiteral("–"),
              words.number(look->steps_since), hasOutcome ? between(words, look->said) : QString(),
              hasOutcome ? wholeHours(words, look->came) : QString(), fared(words, *look)},
             0,
             false,
             {}});
    }
    return table;
}

} // namespace lastrivet::print
