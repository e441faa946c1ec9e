// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Edit.h"

#include <string_view>
#include <vector>

namespace lastrivet::acts {

/// Records that a step is done, and no longer dropped. A step that was done already keeps its day.
void tickStep(Edit &edit, Id<Step> step, Moment on);
/// Takes back that a step is done.
void untickStep(Edit &edit, Id<Step> step);
/// Records that a step will never be done.
void dropStep(Edit &edit, Id<Step> step, Moment on);

/// Takes back that a step was dropped.
void takeUpStep(Edit &edit, Id<Step> step);

/// Adds a step behind the part's other steps.
Id<Step> addStep(Edit &edit, Id<Component> part, std::string_view title);
/// Adds a step before another of the same part.
Id<Step> insertStep(Edit &edit, Id<Step> before, std::string_view title);
/// Moves steps of one part to stand one behind the other, before `before`; at the end when that is
/// none. Other steps keep their numbers while there is room between them.
void moveSteps(Edit &edit, const std::vector<Id<Step>> &steps, Id<Step> before);

} // namespace lastrivet::acts
