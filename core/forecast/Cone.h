// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/forecast/Forecast.h"

#include <vector>

namespace lastrivet::forecast {

/// What may have been done between the day of the forecast and a later one, in minutes.
struct ConePoint {
    Moment day;
    Range<std::int64_t> minutes{};
};

/// How the hours may grow from the day of the forecast until most of its futures are over: at most
/// some forty points, the first with nothing done yet. `told` is the forecast from the same past
/// work and options. Empty when that knows no finish.
std::vector<ConePoint> cone(const PastWork &past, const Forecast &told, const Options &options);

/// The forecast, and how the hours may grow.
struct Outlook {
    Forecast told;
    std::vector<ConePoint> cone;
};

Outlook outlook(const Records &records, Moment asOf, const Options &options);

} // namespace lastrivet::forecast
