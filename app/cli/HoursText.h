// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Words.h"
#include "core/hours/Hours.h"
#include "core/records/Records.h"

#include <ostream>

namespace lastrivet::cli {

/// How hours are grouped for reading.
enum class Grouping { Component, Month, Week, Person, Kind };

/// The hours for people: a table in one grouping, then the sums.
void printHours(const hours::Totals &totals, Grouping by, const Records &records,
                std::ostream &out);

} // namespace lastrivet::cli

namespace lastrivet {

template <> struct Words<cli::Grouping> {
    static constexpr std::array<std::string_view, 5> list{"component", "month", "week", "person",
                                                          "kind"};
};

} // namespace lastrivet
