// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

namespace lastrivet::entry {

/// Takes a number from the front of folded text without blanks that is said in English, German or
/// French words: one to twelve, and the round ones that minutes are counted in, "thirty",
/// "quarante-cinq". Nothing for other text.
std::optional<std::int64_t> takeSaidNumber(std::string_view &text);

/// Whether a folded word is such a number and nothing else.
bool isSaidNumber(std::string_view word);

} // namespace lastrivet::entry
