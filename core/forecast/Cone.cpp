// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/Cone.h"

#include "core/forecast/Futures.h"

#include <algorithm>

namespace lastrivet::forecast {

namespace {

constexpr std::size_t mostPoints = 40;

/// Weeks between two points, so that the last lies a little beyond the finish.
std::size_t strideFor(const Forecast &told)
{
    const auto days = (told.finish->p90.day() - told.as_of.day()).count();
    const auto weeks = std::size_t(std::max<std::int64_t>(days, 0)) / 7 + 2;
    return (weeks + mostPoints - 1) / mostPoints;
}

} // namespace

std::vector<ConePoint> cone(const PastWork &past, const Forecast &told, const Options &options)
{
    if (!told.finish || told.assemblies.empty())
        return {};
    const std::size_t stride = strideFor(told);
    const auto days = (told.finish->p90.day() - told.as_of.day()).count();
    const std::size_t count = std::size_t(std::max<std::int64_t>(days, 0)) / 7 / stride + 2;
    Futures futures(past, told.work_left.assemblies, weeksFor(past, options), options.seed);
    std::vector<std::vector<double>> done(count, std::vector<double>(options.draws));
    for (std::size_t draw = 0; draw < options.draws; ++draw) {
        std::size_t reached = 0;
        futures.next([&](std::size_t weeks, double minutes) {
            if (weeks % stride == 0 && weeks / stride < count) {
                reached = weeks / stride;
                done[reached][draw] = minutes;
            }
        });
        for (std::size_t i = reached + 1; i < count; ++i)
            done[i][draw] = futures.whole();
    }
    std::vector<ConePoint> points;
    for (std::size_t i = 0; i < count; ++i) {
        if (const auto day = told.as_of.dayOnly().plusDays(std::int64_t(i * stride * 7)))
            points.push_back({*day, minutesRange(std::move(done[i]))});
    }
    return points;
}

Outlook outlook(const Records &records, Moment asOf, const Options &options)
{
    const auto past = pastWork(records, asOf);
    Outlook found{forecast(records, past, asOf, options), {}};
    found.cone = cone(past, found.told, options);
    return found;
}

} // namespace lastrivet::forecast
