// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"

#include <cstddef>
#include <vector>

namespace lastrivet::evidence {

/// How many of the files are dated ahead, or years before the project was begun: the camera's clock
/// stood wrong.
std::size_t datedWrongly(const Records &records, const std::vector<Id<Media>> &taken, Moment today);

} // namespace lastrivet::evidence
