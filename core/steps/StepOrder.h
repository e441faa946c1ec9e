// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"

#include <vector>

namespace lastrivet::steps {

/// The live steps of a part in their order: by position, those without one last, then by id.
std::vector<Id<Step>> stepsOf(const Records &records, Id<Component> part);

/// The live steps that come directly before one; a withdrawn one is passed through.
IdSet<Step> stepsBefore(const Records &records, const Step &step);

/// The steps, and those elsewhere that come directly before or after one of them.
IdSet<Step> withNeighbours(const Records &records, const std::vector<Id<Step>> &steps);

/// How `step` already comes before `before`: from the one to the other, each directly before the
/// next. Empty when it does not, so that `step` may come after `before`.
std::vector<Id<Step>> wayFrom(const Records &records, Id<Step> step, Id<Step> before);

} // namespace lastrivet::steps
