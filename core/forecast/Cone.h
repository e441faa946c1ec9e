// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/forecast/Forecast.h"

#include <vector>

namespace lastrivet::forecast {

/// How much may be done from the day of the forecast until a later one, in minutes.
struct ConePoint {
    Moment day;
    Range<std::int64_t> minutes{};
};

/// How the hours may grow from the day of the forecast until a little after its P90 finish: at most
/// some forty points, the first with nothing done yet. `told` has to be the forecast from the same
/// past work and options. Empty when it has no finish.
std::vector<ConePoint> cone(const PastWork &past, const Forecast &told, const Options &options);

/// The forecast, and how the hours may grow.
struct Outlook {
    Forecast told;
    std::vector<ConePoint> cone;
};

Outlook outlook(const Records &records, Moment asOf, const Options &options);

} // namespace lastrivet::forecast
