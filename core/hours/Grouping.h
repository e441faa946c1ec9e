// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Words.h"

namespace lastrivet::hours {

/// How hours are grouped for reading; by step they stand beside the estimates.
enum class Grouping { Component, Month, Week, Person, Kind, Step };

} // namespace lastrivet::hours

namespace lastrivet {

template <> struct Words<hours::Grouping> {
    static constexpr std::array<std::string_view, 6> list{"component", "month", "week",
                                                          "person",    "kind",  "step"};
};

} // namespace lastrivet
