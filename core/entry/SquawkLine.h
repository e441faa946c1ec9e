// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/entry/PartFinder.h"
#include "core/records/Squawk.h"

#include <string_view>

namespace lastrivet::entry {

/// Reads a squawk told in one line: "left aileron: overdriven rivet at the third hinge".
///
/// In front of the colon a part by code or name and, if wanted, a severity; behind it the title. A
/// line without a colon, or with something else in front of it, is all title.
Squawk readSquawk(std::string_view line, const PartFinder &parts);

} // namespace lastrivet::entry
