// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <string_view>

// What stands before a limit in a typed line, in small letters, in English, German and French.
namespace lastrivet::measuring::words {

// The longer of two that begin alike comes first.
constexpr std::array<std::string_view, 19> most{"<=",
                                                "<",
                                                "≤",
                                                "max. ",
                                                "max : ",
                                                "max: ",
                                                "max ",
                                                "maxi. ",
                                                "maxi ",
                                                "maximum ",
                                                "maximal ",
                                                "at most ",
                                                "no more than ",
                                                "not more than ",
                                                "höchstens ",
                                                "bis zu ",
                                                "nicht mehr als ",
                                                "au plus ",
                                                "pas plus de "};
constexpr std::array<std::string_view, 19> least{">=",
                                                 ">",
                                                 "≥",
                                                 "min. ",
                                                 "min : ",
                                                 "min: ",
                                                 "min ",
                                                 "mini. ",
                                                 "mini ",
                                                 "minimum ",
                                                 "minimal ",
                                                 "mind. ",
                                                 "mind ",
                                                 "at least ",
                                                 "no less than ",
                                                 "not less than ",
                                                 "mindestens ",
                                                 "au moins ",
                                                 "pas moins de "};

/// What nobody writes before a figure but in a limit.
constexpr std::array<std::string_view, 14> begins{
    "max",     "maxi", "maximum",    "maximal",   "min",     "mini",     "minimum",
    "minimal", "mind", "mindestens", "höchstens", "between", "zwischen", "entre"};

} // namespace lastrivet::measuring::words
