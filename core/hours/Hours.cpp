// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/hours/Hours.h"

#include <chrono>
#include <map>
#include <utility>

namespace lastrivet::hours {

namespace {

using namespace std::chrono;

std::pair<int, int> isoWeek(sys_days day)
{
    const sys_days thursday = day + days{4} - days{weekday{day}.iso_encoding()};
    const auto year = year_month_day{thursday}.year();
    const sys_days newYear = year / January / 1;
    return {int(year), int((thursday - newYear).count() / 7 + 1)};
}

std::pair<int, int> monthOf(sys_days day)
{
    const year_month_day date{day};
    return {int(date.year()), int(unsigned(date.month()))};
}

struct Period {
    Total total;
    Minutes rework;

    void add(const Total &one, WorkKind kind)
    {
        total += one;
        if (kind == WorkKind::Rework)
            rework += one.worker_minutes;
    }
};

class Sum {
public:
    explicit Sum(const Records &records)
        : m_records(records)
    {
    }

    void add(const WorkSession &session)
    {
        Total one{session.minutes.value_or(Minutes{}), {}, 1};
        for (const auto &worker : session.workers)
            one.worker_minutes += addPerson(worker.person_id, worker.minutes, session);
        if (session.workers.empty())
            one.worker_minutes = addPerson(m_records.project.builder_id, {}, session);
        m_totals.total += one;
        if (session.kind == WorkKind::Rework)
            m_totals.rework += one;
        m_kinds[session.kind] += one;
        m_weeks[isoWeek(session.began->day())].add(one, session.kind);
        m_months[monthOf(session.began->day())].add(one, session.kind);
        addComponent(session.component_id, one);
    }

    Totals totals() &&
    {
        // Once for each part and not for each entry, of which there are far more.
        for (const auto &[id, own] : m_own)
            addUpwards(id, own);
        for (const auto &[id, hours] : m_components)
            m_totals.components.push_back(hours);
        for (const auto &[kind, total] : m_kinds)
            m_totals.kinds.push_back({kind, total});
        for (const auto &[known, hours] : m_people)
            m_totals.people.push_back(hours);
        for (const auto &[week, total] : m_weeks)
            m_totals.weeks.push_back({week.first, week.second, total.total, total.rework});
        for (const auto &[month, total] : m_months)
            m_totals.months.push_back({month.first, month.second, total.total, total.rework});
        return std::move(m_totals);
    }

private:
    Minutes addPerson(Id<Person> id, std::optional<Minutes> own, const WorkSession &session)
    {
        const Minutes worked = own ? *own : session.minutes.value_or(Minutes{});
        PersonHours &person = m_people[{!id, id}];
        person.id = id;
        person.worker_minutes += worked;
        ++person.sessions;
        return worked;
    }

    void addComponent(Id<Component> id, const Total &one)
    {
        if (m_records.findLive(id))
            m_own[id] += one;
        else
            m_totals.unassigned += one;
    }

    void addUpwards(Id<Component> id, const Total &own)
    {
        m_components[id].own = own;
        const Component *part = m_records.findLive(id);
        // Ends after as many parts as there are, in case damaged records contain a cycle of
        // parents.
        for (std::size_t left = m_records.components.size(); part && left > 0; --left) {
            ComponentHours &hours = m_components[part->id];
            hours.id = part->id;
            hours.with_below += own;
            part = m_records.findLive(part->parent_id);
        }
    }

    const Records &m_records;
    Totals m_totals;
    std::map<Id<Component>, Total> m_own;
    std::map<Id<Component>, ComponentHours> m_components;
    std::map<WorkKind, Total> m_kinds;
    /// Keyed so that the unknown person comes last.
    std::map<std::pair<bool, Id<Person>>, PersonHours> m_people;
    std::map<std::pair<int, int>, Period> m_weeks;
    std::map<std::pair<int, int>, Period> m_months;
};

} // namespace

Total &Total::operator+=(const Total &other)
{
    minutes += other.minutes;
    worker_minutes += other.worker_minutes;
    sessions += other.sessions;
    return *this;
}

Minutes workerMinutes(const WorkSession &session)
{
    const Minutes all = session.minutes.value_or(Minutes{});
    Minutes sum = session.workers.empty() ? all : Minutes{};
    for (const auto &worker : session.workers)
        sum += worker.minutes.value_or(all);
    return sum;
}

Totals totals(const Records &records)
{
    Sum sum{records};
    for (const WorkSession &session : records.work_sessions) {
        if (!session.withdrawn_on && session.began)
            sum.add(session);
    }
    return std::move(sum).totals();
}

Totals totals(const Records &records, std::span<const WorkSession *const> sessions)
{
    Sum sum{records};
    for (const WorkSession *session : sessions)
        sum.add(*session);
    return std::move(sum).totals();
}

} // namespace lastrivet::hours
