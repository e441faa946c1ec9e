// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/base/Result.h"
#include "core/workshop/WorkshopTable.h"

namespace lastrivet::workshop {

/// Where the setback is from: K (BR + MT), K the tangent of half the bend.
inline constexpr std::string_view setbackSource = "AC 43.13-1B (9/8/98) p. 4-14 and 4-15";
/// Where counting the rivets of a splice is from.
inline constexpr std::string_view spliceSource = "AC 43.13-1B CHG 1 (9/27/01) para 4-58g(2)";

/// How far before the corner of the flat lines a bend begins, in inches: `degrees` is what the
/// sheet is bent by, `radius` the inner radius. Refuses bends that are not between 0 and 180
/// degrees, a radius below zero and a sheet without thickness.
Result<double, Message> setback(double degrees, double radius, double thickness);

/// How many rivets an inch of width a seam needs.
struct RivetsPerInch {
    /// The sheet of the table: the thinnest that is not thinner than the one asked for.
    double thickness = 0;
    double per_inch = 0;
    Source source;
};

/// AC 43.13-1B table 4-11: 2117-T4 rivets with protruding heads in 5052 sheet, all hardnesses. By
/// the next thicker sheet of the table where it lies between two. Says so when the table has no
/// such pair.
Result<RivetsPerInch, Message> rivetsPerInch(double thickness, double diameter);

/// Rivets on each side of a splice: those an inch, times the share that the place asks for, times
/// the width, rounded up. Refuses what is not above zero.
Result<int, Message> rivetsOfSplice(double perInch, double share, double width);

/// How many rivets fit into rows over a width at a pitch. Refuses part of a row.
Result<int, Message> rivetsThatFit(double rows, double width, double pitch);

/// Rivet sizes for a sheet, by the rules that differ.
struct RivetSizes {
    /// Three times the thicker sheet: FAA-H-8083-31 chapter 4, and the most by NAVEDTRA 14018.
    double target = 0;
    /// The tables' first size that is not below the target: "1/8". Empty above the largest.
    std::string size;
    /// Once the thicker sheet, and 3/32 in structure: NAVEDTRA 14018 chapter 13.
    double least = 0;
    Source target_source;
    Source least_source;
};

/// Refuses a sheet without thickness.
Result<RivetSizes, Message> rivetSizes(double thickness);

} // namespace lastrivet::workshop
