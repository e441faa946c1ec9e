// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Id.h"
#include "core/base/Moment.h"
#include "core/project/Project.h"
#include "core/records/Component.h"
#include "core/records/Squawk.h"
#include "core/records/Step.h"

#include <optional>

namespace lastrivet {

/// The work that is going on now; it is no record until it stops, and outlives a crash.
struct RunningTimer {
    Moment began;
    Id<Component> component_id;
    Id<Step> step_id;
    Id<Squawk> squawk_id;

    friend bool operator==(const RunningTimer &, const RunningTimer &) = default;
};

/// The timer that runs on this computer, if one does.
std::optional<RunningTimer> runningTimer(const Project &project);
/// Starts or replaces the timer, or stops it when there is none; a log entry is not made here.
void setRunningTimer(Project &project, const std::optional<RunningTimer> &timer);

} // namespace lastrivet
