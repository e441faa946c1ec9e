// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Minutes.h"
#include "core/entry/RunningTimer.h"

#include <optional>
#include <string>
#include <string_view>

namespace lastrivet {

/// How the time of a running timer went: pauses, stretches in which the computer slept, and what
/// was noted meanwhile. Outlives a crash, as the timer does.
struct TimerProgress {
    /// When its timer began; identifies the timer.
    Moment began;
    std::string note{};
    /// Worked before the last pause. Negative while a gap that was left out lies after it.
    Minutes worked{};
    bool is_paused = false;
    /// Since when it runs without a pause.
    Moment running_since;
    /// When the program last looked at the clock: up to then it surely ran.
    std::optional<Moment> seen{};
    /// Where the first gap began: the computer slept, or the program was closed.
    std::optional<Moment> gap_began{};
    /// How long all gaps were; they count as worked until somebody says otherwise.
    Minutes gaps{};

    friend bool operator==(const TimerProgress &, const TimerProgress &) = default;
};

/// Of a timer that runs since it began.
TimerProgress freshProgress(Moment began);
/// How long was worked by `now`, without the pauses; never negative.
Minutes workedBy(const TimerProgress &progress, Moment now);
void pause(TimerProgress &progress, Moment now);
void resume(TimerProgress &progress, Moment now);
/// Notes the time: more than `longestBlink` since the last call is a gap. A clock that was set back
/// takes away nothing of what was worked.
void look(TimerProgress &progress, Moment now);
inline constexpr Minutes longestBlink{5};
/// A timer that runs for longer may have been forgotten, so that it is asked about.
inline constexpr Minutes longestUnasked{4 * 60};
/// Takes the gaps out of the time worked.
void leaveGapsOut(TimerProgress &progress);

/// As text for `local_state`, and back; empty when the text is none.
std::string toText(const TimerProgress &progress);
std::optional<TimerProgress> progressFromText(std::string_view text);

/// How the running timer's time went; a fresh one where nothing is kept of it.
TimerProgress timerProgress(const Project &project, const RunningTimer &timer);
void setTimerProgress(Project &project, const TimerProgress &progress);

} // namespace lastrivet
