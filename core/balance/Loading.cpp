// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/balance/Loading.h"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <numeric>

namespace lastrivet::balance {

namespace {

struct Corner {
    double arm = 0;
    double weight = 0;
};

Balance sumOf(const Item &empty, std::span<const Load> loads, const std::vector<double> &weights)
{
    Balance sum{empty.weight, empty.weight * empty.arm, 0, {}};
    for (std::size_t i = 0; i < loads.size(); ++i) {
        sum.weight += weights[i];
        sum.moment += weights[i] * loads[i].arm;
    }
    sum.cg = sum.moment / sum.weight;
    return sum;
}

/// `sign` is 1 to go aft, -1 to go forward.
Loading farthest(const Item &empty, std::span<const Load> loads, std::optional<double> mostWeight,
                 double sign)
{
    Loading loading;
    for (const auto &load : loads)
        loading.weights.push_back(load.least);
    loading.sum = sumOf(empty, loads, loading.weights);
    std::vector<std::size_t> order(loads.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return sign * loads[a].arm > sign * loads[b].arm;
    });
    for (const auto i : order) {
        if (sign * loads[i].arm <= sign * loading.sum.cg)
            break;
        double more = loads[i].most - loads[i].least;
        if (mostWeight)
            more = std::min(more, std::max(0.0, *mostWeight - loading.sum.weight));
        loading.weights[i] += more;
        loading.sum = sumOf(empty, loads, loading.weights);
    }
    return loading;
}

bool isOnEdge(const Corner &a, const Corner &b, const Corner &point)
{
    const double width = b.arm - a.arm;
    const double height = b.weight - a.weight;
    const double cross = width * (point.weight - a.weight) - height * (point.arm - a.arm);
    const double scale = std::hypot(width, height);
    // What conversion between units adds.
    if (std::abs(cross) > 1e-9 * std::max(1.0, scale * scale))
        return false;
    const double along =
        width * (point.arm - a.arm) + height * (point.weight - a.weight);
    return along >= -1e-9 && along <= scale * scale + 1e-9;
}

} // namespace

Result<Extremes, Message> extremes(const Item &empty, std::span<const Load> loads,
                                   std::optional<double> mostWeight)
{
    double least = empty.weight;
    for (const auto &load : loads) {
        if (!std::isfinite(load.arm) || !(load.least >= 0) || !(load.most >= load.least) ||
            !std::isfinite(load.most))
            return Message{"{0} needs a weight of 0 or more, and an arm.", {load.what}};
        least += load.least;
    }
    if (!(empty.weight > 0) || !std::isfinite(empty.arm))
        return Message{"The empty weight is above zero.", {}};
    if (mostWeight && least > *mostWeight)
        return Message{"With the least that must be on board it weighs {0}, more than the {1} that "
                       "are allowed.",
                       {fmt::format("{:.6g}", least), fmt::format("{:.6g}", *mostWeight)}};
    return Extremes{farthest(empty, loads, mostWeight, -1), farthest(empty, loads, mostWeight, 1)};
}

std::vector<Load> loadsOf(const LoadingCase &loading, Units units)
{
    std::vector<Load> loads;
    for (const auto &item : loading.items)
        loads.push_back({item.what, 0, converted(item.weight, loading.weight_unit, units.weight),
                         converted(item.arm, loading.arm_unit, units.arm)});
    return loads;
}

bool isWithin(const Envelope &envelope, double weight, double cg, Units units)
{
    std::vector<Corner> corners;
    for (const auto &point : envelope.points)
        corners.push_back({converted(point.arm, envelope.arm_unit, units.arm),
                           converted(point.weight, envelope.weight_unit, units.weight)});
    if (corners.size() < 3)
        return false;
    const Corner asked{cg, weight};
    bool isInside = false;
    for (std::size_t i = 0, j = corners.size() - 1; i < corners.size(); j = i++) {
        const auto &a = corners[i];
        const auto &b = corners[j];
        if (isOnEdge(a, b, asked))
            return true;
        const bool straddles = (a.weight > weight) != (b.weight > weight);
        if (straddles &&
            cg < (b.arm - a.arm) * (weight - a.weight) / (b.weight - a.weight) + a.arm)
            isInside = !isInside;
    }
    return isInside;
}

} // namespace lastrivet::balance
