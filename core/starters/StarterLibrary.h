// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/starters/Starter.h"

#include <vector>

namespace lastrivet {

/// The starters that come with the program, by title. Throws `UnreadableInput` when one of them
/// cannot be read.
std::vector<Starter> standardStarters();

} // namespace lastrivet
