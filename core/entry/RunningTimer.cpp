// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/RunningTimer.h"

#include <algorithm>
#include <charconv>

#include <fmt/format.h>

namespace lastrivet {

namespace {

constexpr std::string_view key = "running_timer";

/// Never less than nothing: the clock may have been set back.
Minutes between(Moment from, Moment to)
{
    const auto days = (to.day() - from.day()).count();
    return Minutes{std::max<std::int64_t>(
        0, days * 24 * 60 + std::max(to.minuteOfDay(), 0) - std::max(from.minuteOfDay(), 0))};
}

std::int64_t number(std::string_view text)
{
    std::int64_t value = 0;
    std::from_chars(text.data(), text.data() + text.size(), value);
    return value;
}

/// One line of the text: a name, a blank, and what it is.
void read(RunningTimer &timer, std::string_view name, std::string_view value)
{
    if (name == "part")
        timer.component_id = Id<Component>{number(value)};
    else if (name == "step")
        timer.step_id = Id<Step>{number(value)};
    else if (name == "squawk")
        timer.squawk_id = Id<Squawk>{number(value)};
    else if (name == "worked")
        timer.worked = Minutes{number(value)};
    else if (name == "is_paused")
        timer.is_paused = value == "1";
    else if (name == "running_since")
        timer.running_since = Moment::parse(value);
    else if (name == "seen")
        timer.seen = Moment::parse(value);
    else if (name == "gap_began")
        timer.gap_began = Moment::parse(value);
    else if (name == "gaps")
        timer.gaps = Minutes{std::max<std::int64_t>(number(value), 0)};
    else if (name == "note")
        timer.note = std::string(value);
}

} // namespace

RunningTimer startedTimer(Moment now)
{
    RunningTimer timer{now, {}, {}, {}};
    timer.seen = now;
    return timer;
}

Minutes workedBy(const RunningTimer &timer, Moment now)
{
    const Minutes running =
        timer.is_paused ? Minutes{} : between(timer.running_since.value_or(timer.began), now);
    return std::max(timer.worked + running, Minutes{});
}

void pauseTimer(RunningTimer &timer, Moment now)
{
    timer.worked = workedBy(timer, now);
    timer.is_paused = true;
    timer.seen.reset();
}

void resumeTimer(RunningTimer &timer, Moment now)
{
    timer.is_paused = false;
    timer.running_since = now;
    timer.seen = now;
}

void look(RunningTimer &timer, Moment now)
{
    if (timer.is_paused)
        return;
    const Minutes since = timer.seen ? between(*timer.seen, now) : Minutes{};
    if (since > longestBlink) {
        if (!timer.gap_began)
            timer.gap_began = timer.seen;
        timer.gaps += since;
    }
    timer.seen = now;
}

void leaveGapsOut(RunningTimer &timer)
{
    // The running stretch may hold the gap, so what was worked may be less than nothing for a while.
    timer.worked = Minutes{timer.worked.count() - timer.gaps.count()};
    timer.gap_began.reset();
    timer.gaps = {};
}

std::string toText(const RunningTimer &timer)
{
    const auto text = [](const std::optional<Moment> &moment) {
        return moment ? moment->text() : std::string();
    };
    std::string note = timer.note;
    std::ranges::replace(note, '\n', ' ');
    return fmt::format("began {}\npart {}\nstep {}\nsquawk {}\nworked {}\nis_paused {}\n"
                       "running_since {}\nseen {}\ngap_began {}\ngaps {}\nnote {}\n",
                       timer.began.text(), timer.component_id.value(), timer.step_id.value(),
                       timer.squawk_id.value(), timer.worked.count(), timer.is_paused ? 1 : 0,
                       text(timer.running_since), text(timer.seen), text(timer.gap_began), timer.gaps.count(), note);
}

std::optional<RunningTimer> timerFromText(std::string_view text)
{
    std::optional<RunningTimer> timer;
    while (!text.empty()) {
        const std::string_view line = text.substr(0, text.find('\n'));
        text.remove_prefix(std::min(text.size(), line.size() + 1));
        const auto blank = std::min(line.find(' '), line.size());
        const std::string_view name = line.substr(0, blank);
        const std::string_view value = line.substr(std::min(line.size(), blank + 1));
        if (name == "began") {
            const auto began = Moment::parse(value);
            if (!began)
                return std::nullopt;
            timer = RunningTimer{*began, {}, {}, {}};
        } else if (timer) {
            read(*timer, name, value);
        }
    }
    return timer;
}

std::optional<RunningTimer> runningTimer(const Project &project)
{
    const auto stored = project.localState(key);
    return stored ? timerFromText(*stored) : std::nullopt;
}

void setRunningTimer(Project &project, const std::optional<RunningTimer> &timer)
{
    if (timer)
        project.setLocalState(key, toText(*timer));
    else
        project.setLocalState(key, std::nullopt);
}

} // namespace lastrivet
