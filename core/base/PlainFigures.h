// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/DecimalSign.h"

#include <optional>
#include <string>
#include <string_view>

namespace lastrivet {

/// A typed number with its unit, without spaces of any kind, and with a point in place of a decimal
/// comma. Nothing when the comma could just as well separate thousands ("1,850"), unless `sign`
/// says that it is the decimal sign; and when a space between two digits does not separate
/// thousands
/// ("84 5", "1500 250", "1 1/2").
std::optional<std::string> plainFigures(std::string_view text,
                                        DecimalSign sign = DecimalSign::Unknown);

} // namespace lastrivet
