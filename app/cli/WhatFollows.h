// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/Answer.h"
#include "core/records/Records.h"

#include <ostream>

namespace lastrivet::cli {

/// What follows from a readiness answer about all closings: what can be worked on, what unlocks
/// most, what one visit could cover, what is soon out of reach or is already, and what the records
/// lack. Each a list under one line, the empty ones left out.
void printWhatFollows(const readiness::Answer &answer, const Records &records, std::ostream &out);

} // namespace lastrivet::cli
