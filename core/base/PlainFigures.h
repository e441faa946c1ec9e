// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/DecimalSign.h"

#include <optional>
#include <string>
#include <string_view>

namespace lastrivet {

/// What a person typed as a number with its unit, without spaces of any kind and with a point where
/// a comma stood. Nothing when the comma could be a thousand as well: "1,850", but for who has a
/// comma before decimals; nor when a space between two figures parts no thousands: "84 5",
/// "1500 250", "1 1/2".
std::optional<std::string> plainFigures(std::string_view text,
                                        DecimalSign sign = DecimalSign::Unknown);

} // namespace lastrivet
