// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/base/Result.h"
#include "core/base/Words.h"
#include "core/workshop/WorkshopTable.h"

namespace lastrivet::workshop {

/// What the insulation of a wire is made for, in °C.
enum class Rating { C105, C150, C200 };

} // namespace lastrivet::workshop

template <> struct lastrivet::Words<lastrivet::workshop::Rating> {
    static constexpr std::array<std::string_view, 3> list{"105", "150", "200"};
};

namespace lastrivet::workshop {

/// A run of copper wire under load. AC 43.13-1B CHG 1 (9/27/01) table 11-9.
struct WireRun {
    std::string gauge;
    double ohms_per_foot = 0;
    /// Ohms per foot x feet x amperes, in volts.
    double drop = 0;
    /// The most amperes of the table for the rating.
    double most_amps = 0;
    Source source;
};

/// How many volts a circuit may lose, by its nominal voltage. AC 43.13-1B CHG 1 table 11-6.
struct DropLimit {
    double nominal = 0;
    double continuous = 0;
    /// From memory only, in the table as we have it.
    double intermittent = 0;
    Source source;
};

/// Wire sizes of the table, thinnest first: "24" … "0000".
std::vector<std::string> gauges();
/// "1/0" and "0" are one size: 0; "00" and "2/0" are -1. Nothing for what is no size.
std::optional<int> gaugeNumber(std::string_view gauge);

/// The drop over `feet` of wire there (the way back through the airframe is another circuit) at
/// `amps`, with the conductor at `celsius`: a hot wire has (234.5 + T) / 254.5 times the resistance
/// that the table gives at 20 °C (AC 43.13-1B CHG 1 chapter 11, copper). Refuses unknown sizes,
/// lengths and currents that are not above zero, and a conductor outside -100 to 300 °C.
Result<WireRun, Message> wireRun(std::string_view gauge, double feet, double amps, Rating rating,
                                 double celsius = 20);

/// The thinnest wire of the table that carries the current and loses no more than `mostDrop`. Says
/// so when there is none.
Result<WireRun, Message> thinnestWire(double feet, double amps, double mostDrop, Rating rating,
                                      double celsius = 20);

std::vector<DropLimit> dropLimits();

/// What a crimped terminal must hold, in pounds, by one basis.
struct CrimpPull {
    std::string basis;
    double least = 0;
    Source source;
};

/// The bases differ by about two: the one that was used is to be written down.
std::vector<CrimpPull> crimpPulls(std::string_view gauge);

/// How many strands of a stripped wire may be nicked or broken; none for a size without a row.
struct StrandLimit {
    std::string strands;
    double nicked = 0;
    double broken = 0;
    Source source;
};
std::optional<StrandLimit> strandLimit(std::string_view gauge);

} // namespace lastrivet::workshop
