// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace lastrivet {

/// The place of the first byte that keeps a text from being well-formed UTF-8 (Unicode Standard,
/// table 3-7); empty when it is.
std::optional<std::size_t> firstNotUtf8(std::string_view text);

/// The text with U+FFFD in place of each byte that keeps it from being well-formed, and of U+0000.
std::string wellFormed(std::string_view text);

} // namespace lastrivet
