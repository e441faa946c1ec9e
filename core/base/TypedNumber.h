// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/DecimalSign.h"

#include <optional>
#include <string_view>
#include <utility>
#include <vector>

namespace lastrivet {

/// Takes a number off the front of a typed text, with a point or a comma before its decimals, as
/// "8,5" or ".4"; what follows stays in `text`, trimmed. Nothing, and `text` stays as it is, when no
/// number is there or its comma could just as well separate thousands ("1,850"), unless `sign` says
/// that it is the decimal sign.
std::optional<double> takeNumber(std::string_view &text, DecimalSign sign = DecimalSign::Unknown);

/// The same for two numbers, least and most as they are written: "50-70", "0,5 – 0,8", "50 to 70",
/// "50 bis 70", "50 à 70", "between 50 and 70", "zwischen 50 und 70", "de 50 à 70".
std::optional<std::pair<double, double>> takeRange(std::string_view &text,
                                                   DecimalSign sign = DecimalSign::Unknown);

/// The parts of a typed line between its commas and semicolons, trimmed, empty ones left out. A
/// comma between two digits belongs to a number and separates nothing.
std::vector<std::string_view> partsOfLine(std::string_view line);

} // namespace lastrivet
