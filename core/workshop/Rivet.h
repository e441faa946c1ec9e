// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/base/Result.h"
#include "core/workshop/WorkshopTable.h"

namespace lastrivet::workshop {

/// A drill for a rivet's hole, by one source; diameters in inches.
struct Drill {
    std::string basis;
    /// As the trade says it: "#30", "F", "1/4".
    std::string drill;
    std::optional<double> diameter;
    Source source;
};

/// How large a driven head is by one source, in inches. Bands of different sources differ: a head
/// may pass one and miss another, so the basis is part of the answer.
struct ShopHead {
    std::string basis;
    std::optional<double> diameter_min;
    std::optional<double> diameter_max;
    std::optional<double> height_min;
    std::optional<double> height_max;
    std::string remark;
    Source source;
};

/// A distance by one source, in inches and in diameters of the rivet where the source gives it so.
struct Spacing {
    /// "edge_distance_min", "pitch_max_navy" …: the source's rule.
    std::string rule;
    /// What it holds for: "protruding", "1 row, flush", "any".
    std::string holds_for;
    double distance = 0;
    std::optional<double> diameters;
    std::string remark;
    Source source;
};

/// The thinnest sheet that may be countersunk by machine, by one source, in inches.
struct ThinnestSheet {
    std::string rule;
    double thickness = 0;
    Source source;
};

/// What the workshop tables know of a solid rivet.
struct Rivet {
    double diameter = 0;
    /// Grip and one and a half diameters, rounded up to the next sixteenth, in inches.
    double length = 0;
    /// The same as the dash number of a part: sixteenths.
    int length_code = 0;
    Source length_source;
    std::vector<Drill> drills;
    std::vector<ShopHead> shop_heads;
    std::vector<ThinnestSheet> countersink;
};

/// Diameters of solid rivets that the tables know, as fractions.
std::vector<std::string> rivetDiameters();

/// `diameter` and `grip` in inches. Says which diameters there are when this is none of them.
Result<Rivet, Message> rivet(double diameter, double grip);

/// Whether a driven head of this width and height, in inches, is within one source's band. Half a
/// thousandth is what the tables' own rounding takes.
bool isWithin(const ShopHead &head, double diameter, double height);

std::vector<Spacing> edgeDistances(double diameter);
std::vector<Spacing> pitches(double diameter);

} // namespace lastrivet::workshop
