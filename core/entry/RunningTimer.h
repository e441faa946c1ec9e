// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Id.h"
#include "core/base/Minutes.h"
#include "core/base/Moment.h"
#include "core/project/Project.h"
#include "core/records/Component.h"
#include "core/records/Squawk.h"
#include "core/records/Step.h"

#include <optional>
#include <string>
#include <string_view>

namespace lastrivet {

/// The work that is going on now; it is no record until it stops, and outlives a crash.
struct RunningTimer {
    Moment began;
    Id<Component> component_id;
    Id<Step> step_id;
    Id<Squawk> squawk_id;
    /// What was noted while it ran.
    std::string note{};
    /// Worked before the last pause or gap.
    Minutes worked{};
    bool is_paused = false;
    /// Since when it runs without a pause; since it began when there was none.
    std::optional<Moment> running_since{};
    /// When the program last looked at the clock: up to then it surely ran.
    std::optional<Moment> seen{};
    /// The first stretch in which the computer slept or the program was closed.
    std::optional<Moment> gap_began{};
    /// How long all such stretches were; they count as worked until somebody says otherwise.
    Minutes gaps{};

    friend bool operator==(const RunningTimer &, const RunningTimer &) = default;
};

/// A timer that starts now.
RunningTimer startedTimer(Moment now);
/// How long was worked by now, pauses left out.
Minutes workedBy(const RunningTimer &timer, Moment now);
void pauseTimer(RunningTimer &timer, Moment now);
void resumeTimer(RunningTimer &timer, Moment now);
/// Looks at the clock: a jump of more than `longestBlink` since the last look is a gap.
void look(RunningTimer &timer, Moment now);
inline constexpr Minutes longestBlink{5};
/// The gaps were no work.
void leaveGapsOut(RunningTimer &timer);

/// The timer as text for `local_state`, and back; empty when the text is none.
std::string toText(const RunningTimer &timer);
std::optional<RunningTimer> timerFromText(std::string_view text);

/// The timer that runs on this computer, if one does.
std::optional<RunningTimer> runningTimer(const Project &project);
/// Starts, replaces or (without a timer) stops it; the session is another change's business.
void setRunningTimer(Project &project, const std::optional<RunningTimer> &timer);

} // namespace lastrivet
