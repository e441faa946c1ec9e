// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/HoursCharts.h"

#include "core/packet/InWords.h"
#include "ui/print/HoursTables.h"

#include <algorithm>

namespace lastrivet::print {

namespace {

using std::chrono::days;
using std::chrono::sys_days;

constexpr std::size_t mostBars = 12;
constexpr std::size_t mostWeeks = 52;

/// A named height, to be sorted.
struct Bar {
    QString name;
    double hours = 0;
    double second = 0;
};

/// The highest ones; the table has the others.
void setBars(ChartPlan &plan, std::vector<Bar> bars)
{
    std::stable_sort(bars.begin(), bars.end(),
                     [](const Bar &a, const Bar &b) { return a.hours > b.hours; });
    if (bars.size() > mostBars)
        bars.resize(mostBars);
    for (const Bar &bar : bars) {
        plan.names.append(bar.name);
        for (std::size_t i = 0; i < plan.bars.size(); ++i)
            plan.bars[i].hours.push_back(i == 0 ? bar.hours : bar.second);
    }
    if (bars.empty())
        plan.bars.clear();
}

QString summaryOf(const Wording &words, const ChartPlan &plan)
{
    if (plan.bars.empty())
        return {};
    QStringList said;
    for (qsizetype i = 0; i < plan.names.size(); ++i)
        said << plan.names[i] + QLatin1Char(' ') +
                    wholeHours(words, std::int64_t(plan.bars[0].hours[std::size_t(i)] * 60)) +
                    QStringLiteral(" h");
    return said.join(QStringLiteral(", "));
}

/// The parts that a chart shows: those that lie in no other, or those directly in the only one.
class TopParts {
public:
    explicit TopParts(const Records &records)
        : m_records(records)
    {
        int count = 0;
        for (const Component &part : records.components) {
            if (part.withdrawn_on || records.findLive(part.parent_id))
                continue;
            m_around = part.id;
            ++count;
        }
        if (count > 1)
            m_around = {};
    }

    bool holds(Id<Component> id) const
    {
        const Component *part = m_records.findLive(id);
        return part &&
               (m_around ? part->parent_id == m_around : !m_records.findLive(part->parent_id));
    }

private:
    const Records &m_records;
    /// The only top part.
    Id<Component> m_around;
};

/// Rises and falls at right angles, so that a stretch of days has the height of its hours.
void addStair(std::vector<QPointF> &points, sys_days from, sys_days until, double hours)
{
    points.emplace_back(onAxis(from), hours);
    points.emplace_back(onAxis(until), hours);
}

/// Weeks or months as two areas, one upon the other: done again, and all else.
struct Stairs {
    std::vector<QPointF> ground;
    std::vector<QPointF> rework;
    std::vector<QPointF> all;

    void add(sys_days from, sys_days until, double total, double again)
    {
        addStair(ground, from, until, 0);
        addStair(rework, from, until, again);
        addStair(all, from, until, total);
    }
    void fill(const Wording &words, ChartPlan &plan) &&
    {
        if (all.empty())
            return;
        plan.bands.push_back(
            {words.text("Done again"), ChartLook::Hatched, std::move(ground), rework});
        plan.bands.push_back(
            {words.text("All other work"), ChartLook::Filled, std::move(rework), std::move(all)});
    }
};

} // namespace

ChartPlan hoursPlan(const Wording &words, const QString &title)
{
    ChartPlan plan;
    plan.title = title;
    plan.unit = words.text("hours of all who worked");
    return plan;
}

ChartPlan partChart(const Wording &words, const Records &records, const hours::Totals &totals)
{
    ChartPlan plan = hoursPlan(words, words.text("Hours by part"));
    plan.bars.push_back({words.text("Worked"), ChartLook::Filled, {}});
    std::vector<Bar> bars;
    const TopParts top(records);
    for (const auto &part : totals.components) {
        if (top.holds(part.id))
            bars.push_back(
                {asIs(records.find(part.id)->name), inHours(part.with_below.worker_minutes)});
    }
    if (totals.unassigned.sessions > 0)
        bars.push_back({words.text("On no part"), inHours(totals.unassigned.worker_minutes)});
    setBars(plan, std::move(bars));
    plan.summary = summaryOf(words, plan);
    return plan;
}

ChartPlan kindChart(const Wording &words, const hours::Totals &totals)
{
    ChartPlan plan = hoursPlan(words, words.text("Hours by kind of work"));
    plan.bars.push_back({words.text("Worked"), ChartLook::Filled, {}});
    std::vector<Bar> bars;
    for (const auto &kind : totals.kinds)
        bars.push_back(
            {words.text(packet::inWords(kind.kind)), inHours(kind.total.worker_minutes)});
    setBars(plan, std::move(bars));
    plan.summary = summaryOf(words, plan);
    return plan;
}

ChartPlan personChart(const Wording &words, const Records &records, const hours::Totals &totals)
{
    ChartPlan plan = hoursPlan(words, words.text("Hours by person"));
    plan.bars.push_back({words.text("Worked"), ChartLook::Filled, {}});
    std::vector<Bar> bars;
    for (const auto &person : totals.people) {
        const Person *known = records.find(person.id);
        bars.push_back({known ? asIs(known->name) : words.text("not on record"),
                        inHours(person.worker_minutes)});
    }
    setBars(plan, std::move(bars));
    plan.summary = summaryOf(words, plan);
    return plan;
}

ChartPlan weekChart(const Wording &words, const std::vector<hours::CoursePoint> &course)
{
    ChartPlan plan = hoursPlan(words, words.text("Hours per week, the last year"));
    Stairs stairs;
    const std::size_t first = course.size() > mostWeeks ? course.size() - mostWeeks : 1;
    for (std::size_t i = first; i < course.size(); ++i) {
        const sys_days monday = course[i - 1].day + days{1};
        stairs.add(monday, monday + days{7},
                   inHours(Minutes{course[i].done.count() - course[i - 1].done.count()}),
                   inHours(Minutes{course[i].rework.count() - course[i - 1].rework.count()}));
    }
    std::move(stairs).fill(words, plan);
    return plan;
}

ChartPlan monthChart(const Wording &words, const hours::Totals &totals)
{
    using namespace std::chrono;
    ChartPlan plan = hoursPlan(words, words.text("Hours per month"));
    Stairs stairs;
    std::optional<year_month> next;
    for (const auto &row : totals.months) {
        const year_month month = year{row.year} / std::chrono::month{unsigned(row.month)};
        // Months without work are not in the list.
        for (; next && *next < month; *next += months{1})
            stairs.add(sys_days{*next / 1}, sys_days{(*next + months{1}) / 1}, 0, 0);
        next = month + months{1};
        stairs.add(sys_days{month / 1}, sys_days{*next / 1}, inHours(row.total.worker_minutes),
                   inHours(row.rework));
    }
    std::move(stairs).fill(words, plan);
    return plan;
}

ChartPlan stepChart(const Wording &words, const Records &records, const hours::Estimates &estimates)
{
    ChartPlan plan = hoursPlan(words, words.text("Estimate beside what it took"));
    plan.bars.push_back({words.text("Took"), ChartLook::Filled, {}});
    plan.bars.push_back({words.text("Estimate"), ChartLook::Outlined, {}});
    std::vector<Bar> bars;
    const TopParts top(records);
    for (const auto &part : estimates.parts) {
        if (top.holds(part.part))
            bars.push_back({asIs(records.find(part.part)->name), inHours(part.actual),
                            inHours(part.estimate)});
    }
    setBars(plan, std::move(bars));
    plan.summary = summaryOf(words, plan);
    return plan;
}

} // namespace lastrivet::print
