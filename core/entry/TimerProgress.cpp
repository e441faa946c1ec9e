// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/TimerProgress.h"

#include <algorithm>
#include <charconv>

#include <fmt/format.h>

namespace lastrivet {

namespace {

constexpr std::string_view key = "timer_progress";

/// Never less than nothing: the clock may have been set back.
Minutes between(Moment from, Moment to)
{
    const auto days = (to.day() - from.day()).count();
    return Minutes{std::max<std::int64_t>(0, days * 24 * 60 + std::max(to.minuteOfDay(), 0) -
                                                 std::max(from.minuteOfDay(), 0))};
}

std::int64_t number(std::string_view text)
{
    std::int64_t value = 0;
    std::from_chars(text.data(), text.data() + text.size(), value);
    return value;
}

/// One line of the text: a name, a blank, and what it is.
void read(TimerProgress &progress, std::string_view name, std::string_view value)
{
    if (name == "worked")
        progress.worked = Minutes{number(value)};
    else if (name == "is_paused")
        progress.is_paused = value == "1";
    else if (name == "running_since")
        progress.running_since = Moment::parse(value).value_or(progress.began);
    else if (name == "seen")
        progress.seen = Moment::parse(value);
    else if (name == "gap_began")
        progress.gap_began = Moment::parse(value);
    else if (name == "gaps")
        progress.gaps = Minutes{std::max<std::int64_t>(number(value), 0)};
    else if (name == "note")
        progress.note = std::string(value);
}

} // namespace

TimerProgress freshProgress(Moment began)
{
    return {.began = began, .running_since = began, .seen = began};
}

Minutes workedBy(const TimerProgress &progress, Moment now)
{
    const Minutes running = progress.is_paused ? Minutes{} : between(progress.running_since, now);
    return std::max(progress.worked + running, Minutes{});
}

void pause(TimerProgress &progress, Moment now)
{
    progress.worked = workedBy(progress, now);
    progress.is_paused = true;
    progress.seen.reset();
}

void resume(TimerProgress &progress, Moment now)
{
    progress.is_paused = false;
    progress.running_since = now;
    progress.seen = now;
}

void look(TimerProgress &progress, Moment now)
{
    if (progress.is_paused)
        return;
    if (progress.seen && after(*progress.seen, now)) {
        // Set back, by hand or at the end of summer time: what was worked until then was.
        progress.worked += between(progress.running_since, *progress.seen);
        progress.running_since = now;
    }
    const Minutes since = progress.seen ? between(*progress.seen, now) : Minutes{};
    if (since > longestBlink) {
        if (!progress.gap_began)
            progress.gap_began = progress.seen;
        progress.gaps += since;
    }
    progress.seen = now;
}

void leaveGapsOut(TimerProgress &progress)
{
    progress.worked = Minutes{progress.worked.count() - progress.gaps.count()};
    progress.gap_began.reset();
    progress.gaps = {};
}

std::string toText(const TimerProgress &progress)
{
    const auto text = [](const std::optional<Moment> &moment) {
        return moment ? moment->text() : std::string();
    };
    std::string note = progress.note;
    std::ranges::replace(note, '\n', ' ');
    return fmt::format("began {}\nworked {}\nis_paused {}\nrunning_since {}\nseen {}\n"
                       "gap_began {}\ngaps {}\nnote {}\n",
                       progress.began.text(), progress.worked.count(), progress.is_paused ? 1 : 0,
                       progress.running_since.text(), text(progress.seen), text(progress.gap_began),
                       progress.gaps.count(), note);
}

std::optional<TimerProgress> progressFromText(std::string_view text)
{
    std::optional<TimerProgress> progress;
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
            progress = freshProgress(*began);
            progress->seen.reset();
        } else if (progress) {
            read(*progress, name, value);
        }
    }
    return progress;
}

TimerProgress timerProgress(const Project &project, const RunningTimer &timer)
{
    const auto stored = project.localState(key);
    const auto progress = stored ? progressFromText(*stored) : std::nullopt;
    return progress && progress->began == timer.began ? *progress : freshProgress(timer.began);
}

void setTimerProgress(Project &project, const TimerProgress &progress)
{
    project.setLocalState(key, toText(progress));
}

} // namespace lastrivet
