// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <string_view>

namespace lastrivet {

/// What people write behind the number of pieces, in small letters, in English, German and French.
inline constexpr std::array<std::string_view, 21> countWords{
    "x",    "×",   "*",   "pc",  "pc.",  "pcs",   "pcs.", "piece", "pieces", "ea",    "ea.",
    "each", "off", "st.", "stk", "stk.", "stück", "pce",  "pces",  "pièce",  "pièces"};

} // namespace lastrivet
