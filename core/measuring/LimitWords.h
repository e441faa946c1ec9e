// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <string_view>

// What stands before a limit in a typed line, in small letters, in English, German and French.
namespace lastrivet::measuring::words {

constexpr std::array<std::string_view, 8> most{"<=",   "<",        "≤",          "max. ",
                                               "max ", "at most ", "höchstens ", "au plus "};
constexpr std::array<std::string_view, 8> least{">=",   ">",         "≥",           "min. ",
                                                "min ", "at least ", "mindestens ", "au moins "};

} // namespace lastrivet::measuring::words
