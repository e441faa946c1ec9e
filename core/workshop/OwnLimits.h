// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lastrivet::workshop {

/// A limit of this project that stands in the place of a table's: the maker's drawing says so.
struct OwnLimit {
    /// What it is the limit of: "torque 1/4-28 tension", or a table's name and its row's first
    /// cells.
    std::string subject;
    std::optional<double> minimum;
    std::optional<double> maximum;
    /// As the person wrote it: "in-lb", "mm".
    std::string unit;
    /// Drawing, manual, letter; never empty.
    std::string source;

    friend bool operator==(const OwnLimit &, const OwnLimit &) = default;
};

/// The key under which a project keeps them on this computer (`Project::localState`).
inline constexpr std::string_view ownLimitsKey = "workshop.own_limits";

/// What the torque of a thread and a kind of nut ("tension", "shear") is kept under.
std::string torqueSubject(std::string_view thread, std::string_view nut);

/// Reads what `ownLimitsText` wrote; what is damaged counts as none.
std::vector<OwnLimit> ownLimits(std::string_view text);
std::string ownLimitsText(const std::vector<OwnLimit> &limits);

/// The one of a subject; null when the tables stand.
const OwnLimit *ownLimit(const std::vector<OwnLimit> &limits, std::string_view subject);
/// Puts one in the place of another of its subject.
void setOwnLimit(std::vector<OwnLimit> &limits, OwnLimit limit);
void dropOwnLimit(std::vector<OwnLimit> &limits, std::string_view subject);

} // namespace lastrivet::workshop
