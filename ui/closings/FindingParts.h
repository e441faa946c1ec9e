// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/Answer.h"
#include "core/records/Records.h"

#include <vector>

namespace lastrivet::ui {

/// The parts that findings at these closings may be about: those that the closings hide, the rest
/// of their reach, and last those that they are on; all parts where that is too many to choose
/// among, or none.
std::vector<Id<Component>> partsWithin(const Records &records, const readiness::Answer &answer,
                                       const IdSet<Closing> &closings);

} // namespace lastrivet::ui
