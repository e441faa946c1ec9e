// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace lastrivet {

/// The offset of the first byte that is not well-formed UTF-8 (Unicode Standard, table 3-7); empty
/// when all of the text is.
std::optional<std::size_t> firstNotUtf8(std::string_view text);

/// The text with U+FFFD in place of each byte that is not well-formed UTF-8, and of U+0000.
std::string wellFormed(std::string_view text);

} // namespace lastrivet
