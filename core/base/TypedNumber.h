// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/DecimalSign.h"

#include <optional>
#include <string_view>
#include <utility>
#include <vector>

namespace lastrivet {

/// Takes a number off the front of what a person typed, a point or a comma before its decimals;
/// what is behind it stays, without spaces before it. Nothing, and nothing is taken, when there is
/// no number there or its comma could be a thousand as well ("1,850"), as it never is with the
/// `sign` of who writes a comma before decimals.
std::optional<double> takeNumber(std::string_view &text, DecimalSign sign = DecimalSign::Unknown);

/// Takes two numbers off the front: "50-70", "0,5 – 0,8", "50 to 70", "50 bis 70", "50 à 70".
std::optional<std::pair<double, double>> takeRange(std::string_view &text,
                                                   DecimalSign sign = DecimalSign::Unknown);

/// What commas part in a typed line, without spaces around, empty parts left out. A comma between
/// two figures belongs to a number.
std::vector<std::string_view> partsOfLine(std::string_view line);

} // namespace lastrivet
