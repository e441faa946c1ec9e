// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <string>
#include <string_view>

namespace lastrivet {

/// What keyboards, printed lists and documents have in the place of a hyphen: the hyphen itself,
/// the one at which no line ends, the dashes, and the minus sign.
inline constexpr std::array<std::string_view, 7> hyphens{"-",      "\u2010", "\u2011", "\u2012",
                                                         "\u2013", "\u2014", "\u2212"};

/// The text with a plain hyphen for any of them that stands between two letters or digits of ASCII,
/// as in part numbers and threads.
std::string withPlainHyphens(std::string_view text);

} // namespace lastrivet
