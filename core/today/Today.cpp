// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/today/Today.h"

#include "core/today/Reminders.h"
#include "core/today/WorkOrder.h"

#include <algorithm>
#include <unordered_map>

namespace lastrivet::today {

using namespace readiness;

namespace {

bool isRegion(const Records &records, Id<Closing> id)
{
    const Closing *closing = records.find(id);
    return closing && closing->scope == ClosingScope::Region;
}

void count(Tally &tally, const ClosingAnswer &closing)
{
    if (closing.state == State::Closed) {
        ++tally.closed;
    } else if (closing.state == State::ClosedEarly) {
        ++tally.closed_early;
    } else if (!closing.begun) {
        ++tally.not_begun;
    } else if (closing.state == State::Clear) {
        ++tally.clear;
    } else {
        ++tally.must_stay_open;
        tally.wait_for_signature += closing.state != State::Hold;
        tally.wait_for_own += closing.state == State::ReadyToSign;
    }
}

std::int64_t mustBlockers(const ClosingAnswer &closing)
{
    return std::ranges::count(closing.blockers, Weight::Must, &Blocker::weight);
}

std::vector<StaysOpen> staysOpen(const Records &records, const Answer &answer)
{
    std::vector<const ClosingAnswer *> open;
    for (const auto &closing : answer.closings) {
        if (closing.begun && mustStayOpen(closing.state) && isRegion(records, closing.id))
            open.push_back(&closing);
    }
    std::ranges::stable_sort(open, [](const ClosingAnswer *a, const ClosingAnswer *b) {
        const bool aWorks = a->state == State::Hold;
        const bool bWorks = b->state == State::Hold;
        return aWorks != bWorks ? bWorks : mustBlockers(*a) < mustBlockers(*b);
    });
    const WorkOrder order(answer);
    std::vector<StaysOpen> rows;
    for (const auto *closing : open) {
        if (const auto *nearest = order.nearest(*closing))
            rows.push_back({closing->id, *nearest, mustBlockers(*closing) - 1});
    }
    return rows;
}

std::vector<WorkableStep> workable(const Answer &answer)
{
    std::unordered_map<Id<Step>, IdSet<Closing>> unlocks;
    for (const auto &item : answer.unlock) {
        if (item.record.type == RecordType::Step)
            unlocks[Id<Step>{item.record.id}] = item.closings;
    }
    std::vector<WorkableStep> rows;
    for (const auto step : answer.workable)
        rows.push_back({step, unlocks[step]});
    return rows;
}

std::vector<LastChance> lastChance(const Answer &answer)
{
    std::vector<LastChance> rows;
    for (const auto &row : answer.last_chance) {
        const auto *closing = answer.closing(row.closing);
        if (closing && closing->begun)
            rows.push_back(row);
    }
    return rows;
}

/// The running week is the last.
std::vector<WeekHours> emptyWeeks(std::chrono::sys_days monday)
{
    std::vector<WeekHours> weeks(weeksShown);
    for (std::size_t i = 0; i < weeksShown; ++i)
        weeks[i].monday = monday - std::chrono::weeks(std::int64_t(weeksShown - 1 - i));
    return weeks;
}

Hours hours(const Records &records, Moment asOf)
{
    using namespace std::chrono;
    const sys_days today = asOf.day();
    const sys_days monday = today - (weekday{today} - Monday);
    const year_month_day date{today};
    const sys_days first = date.year() / date.month() / 1;
    Hours sums;
    sums.weeks = emptyWeeks(monday);
    const sys_days begin = sums.weeks.front().monday;
    for (const WorkSession &session : records.work_sessions) {
        if (session.withdrawn_on || !session.minutes || !happened(session.began, asOf))
            continue;
        const sys_days day = session.began->day();
        sums.in_all += *session.minutes;
        if (day >= first)
            sums.this_month += *session.minutes;
        if (day >= monday)
            sums.this_week += *session.minutes;
        if (day < begin)
            continue;
        WeekHours &week = sums.weeks[std::size_t((day - begin) / std::chrono::weeks(1))];
        week.minutes += *session.minutes;
        if (session.kind == WorkKind::Rework)
            week.rework += *session.minutes;
    }
    return sums;
}

} // namespace

Tally tally(const Records &records, const Answer &answer)
{
    Tally tally;
    for (const auto &closing : answer.closings) {
        if (isRegion(records, closing.id))
            count(tally, closing);
    }
    return tally;
}

Today today(const Records &records, const Answer &answer)
{
    Today page;
    page.tally = tally(records, answer);
    page.stays_open = staysOpen(records, answer);
    page.workable = workable(answer);
    page.last_chance = lastChance(answer);
    page.attention = reminders(records, answer);
    page.hours = hours(records, answer.as_of);
    return page;
}

std::vector<Message> headline(const Tally &tally)
{
    const auto number = [](std::int64_t count) { return std::to_string(count); };
    std::vector<Message> sentences;
    if (tally.must_stay_open == 0)
        sentences.push_back({"No closing that was begun must stay open.", {}});
    else if (tally.must_stay_open == 1 && tally.wait_for_signature == 1)
        sentences.push_back({"1 closing must stay open; it waits only for a signature.", {}});
    else if (tally.must_stay_open == 1)
        sentences.push_back({"1 closing must stay open.", {}});
    else if (tally.wait_for_signature == 0)
        sentences.push_back({"{0} closings must stay open.", {number(tally.must_stay_open)}});
    else if (tally.wait_for_signature == 1)
        sentences.push_back({"{0} closings must stay open, 1 of them waits only for a signature.",
                             {number(tally.must_stay_open)}});
    else
        sentences.push_back({"{0} closings must stay open, {1} of them wait only for a signature.",
                             {number(tally.must_stay_open), number(tally.wait_for_signature)}});
    if (tally.clear > 0)
        sentences.push_back({"Against {0}, nothing on record stands.", {number(tally.clear)}});
    if (tally.closed_early == 1)
        sentences.push_back({"1 was closed with gaps.", {}});
    else if (tally.closed_early > 1)
        sentences.push_back({"{0} were closed with gaps.", {number(tally.closed_early)}});
    return sentences;
}

} // namespace lastrivet::today
