// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/LookBack.h"

#include "core/base/IdTime.h"
#include "core/hours/Estimates.h"
#include "core/hours/Hours.h"

#include <algorithm>
#include <chrono>

namespace lastrivet::forecast {

namespace {

using namespace std::chrono;

/// Before that the log is too short to tell a pace.
constexpr days shortestLog{8 * 7};

/// The first days of months between two days.
std::vector<Moment> monthsBetween(sys_days first, sys_days last)
{
    std::vector<Moment> found;
    const year_month_day date{first};
    auto month = date.year() / date.month();
    if (date.day() > day{1})
        month += months{1};
    for (; sys_days{month / 1} < last; month += months{1}) {
        if (const auto moment = Moment::ofDay(sys_days{month / 1}))
            found.push_back(*moment);
    }
    return found;
}

std::optional<sys_days> firstDay(const Records &records, Moment asOf)
{
    std::optional<sys_days> first;
    for (const WorkSession &session : records.work_sessions) {
        if (hours::counts(session, asOf))
            first = std::min(first.value_or(session.began->day()), session.began->day());
    }
    return first;
}

bool wasOnRecord(const Step &step, Moment day)
{
    const auto written = dayOfId(step.id.value());
    if (!written || *written <= day.day())
        return true;
    return step.done_on && step.done_on->day() <= *written;
}

/// Looks back from one day at another.
class Looking {
public:
    Looking(const Records &records, Moment now, const Options &options)
        : m_records(records)
        , m_now(now)
        , m_options(options)
    {
        m_options.hours_per_week.reset();
    }

    Look at(Moment day) const
    {
        const auto past = pastWork(m_records, day);
        Options options = m_options;
        options.choice.takes_step = [day](const Step &step) { return wasOnRecord(step, day); };
        const auto told = forecast(m_records, past, day, options);
        options.choice.takes_step = [this, day](const Step &step) {
            return wasOnRecord(step, day) && happened(step.done_on, m_now);
        };
        options.choice.takes_squawk = [this](const Squawk &squawk) {
            return happened(squawk.fixed_on, m_now);
        };
        const auto since = forecast(m_records, past, day, options);
        Look look{day,
                  told.work_left.steps,
                  0,
                  told.minutes_to_go,
                  told.finish,
                  since.work_left.steps,
                  since.minutes_to_go,
                  0};
        addUp(look, options.choice);
        return look;
    }

private:
    void addUp(Look &look, const WorkChoice &choice) const
    {
        Minutes before;
        Minutes came;
        for (const WorkSession &session : m_records.work_sessions) {
            if (!hours::counts(session, m_now))
                continue;
            if (hours::counts(session, look.day))
                before += hours::workerMinutes(session);
            else if (isOfIt(session, look.day, choice))
                came += hours::workerMinutes(session);
        }
        look.minutes_so_far = before.count();
        look.came = came.count();
    }

    /// Work on what was left then and is done now, and all rework.
    bool isOfIt(const WorkSession &session, Moment day, const WorkChoice &choice) const
    {
        if (isLeftOut(m_records, session.component_id, choice.without))
            return false;
        if (session.kind == WorkKind::Rework)
            return true;
        const Step *step = m_records.findLive(session.step_id);
        if (step && !happened(step->done_on, day) && choice.takes_step(*step))
            return true;
        const Squawk *squawk = m_records.findLive(session.squawk_id);
        return squawk && happened(squawk->found_on, day) && !happened(squawk->fixed_on, day) &&
               choice.takes_squawk(*squawk);
    }

    const Records &m_records;
    Moment m_now;
    Options m_options;
};

std::optional<Moment> lastDone(const Records &records, Moment asOf)
{
    std::optional<Moment> last;
    for (const Step &step : records.steps) {
        if (step.withdrawn_on || happened(step.dropped_on, asOf))
            continue;
        if (!happened(step.done_on, asOf))
            return std::nullopt;
        if (!last || after(*step.done_on, *last))
            last = step.done_on;
    }
    return last;
}

} // namespace

LookBack lookBack(const Records &records, Moment asOf, const Options &options)
{
    LookBack told;
    const auto first = firstDay(records, asOf);
    if (!first)
        return told;
    const Looking looking(records, asOf, options);
    for (const Moment day : monthsBetween(*first + shortestLog, asOf.day())) {
        Look look = looking.at(day);
        if (look.steps_left == 0)
            continue;
        if (look.steps_since > 0) {
            ++told.with_outcome;
            told.within_p50 += look.came <= look.said.p50;
            told.within_p80 += look.came <= look.said.p80;
        }
        told.looks.push_back(std::move(look));
    }
    told.finished_on = lastDone(records, asOf);
    return told;
}

} // namespace lastrivet::forecast
