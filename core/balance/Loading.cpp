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
    const double slack = 1e-9 * std::max(1.0, scale * scale);
    if (std::abs(cross) > slack)
        return false;
    const double along = width * (point.arm - a.arm) + height * (point.weight - a.weight);
    return along >= -slack && along <= scale * scale + slack;
}

/// What conversion between units adds.
bool isSameArm(double a, double b)
{
    return std::abs(a - b) <= 1e-6 * std::max(1.0, std::abs(a));
}

/// The loads of a case; two lines of one load at one arm are one.
std::vector<Load> mergedLoads(const LoadingCase &loading, Units units)
{
    std::vector<Load> merged;
    for (const auto &load : loadsOf(loading, units)) {
        const auto known = std::find_if(merged.begin(), merged.end(), [&](const Load &other) {
            return other.what == load.what && isSameArm(other.arm, load.arm);
        });
        if (known == merged.end())
            merged.push_back(load);
        else
            known->most += load.most;
    }
    return merged;
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

std::vector<Load> loadsOf(const Records &records, Units units)
{
    std::vector<Load> all;
    // In how many cases each load stands: one that is not in all of them may be left out.
    std::vector<std::size_t> counts;
    std::size_t cases = 0;
    for (const auto &loading : records.loading_cases) {
        if (loading.withdrawn_on)
            continue;
        ++cases;
        for (const auto &load : mergedLoads(loading, units)) {
            const auto known = std::find_if(all.begin(), all.end(), [&](const Load &other) {
                return other.what == load.what && isSameArm(other.arm, load.arm);
            });
            if (known == all.end()) {
                all.push_back({load.what, load.most, load.most, load.arm});
                counts.push_back(1);
                continue;
            }
            known->least = std::min(known->least, load.most);
            known->most = std::max(known->most, load.most);
            ++counts[std::size_t(known - all.begin())];
        }
    }
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (counts[i] < cases)
            all[i].least = 0;
    }
    return all;
}

Result<Balance, Message> loaded(const Item *empty, const LoadingCase &loading,
                                std::optional<Chord> chord, Units units)
{
    std::vector<Item> items;
    if (empty)
        items.push_back(*empty);
    for (const auto &load : loadsOf(loading, units))
        items.push_back({load.what, load.most, load.arm});
    return balance(items, chord);
}

const Envelope *envelopeOf(const Records &records)
{
    const Envelope *latest = nullptr;
    for (const auto &envelope : records.envelopes) {
        if (!envelope.withdrawn_on)
            latest = &envelope;
    }
    return latest;
}

std::optional<Chord> chordOf(const Envelope &envelope, Units units)
{
    if (!envelope.lemac || !envelope.mac || *envelope.mac <= 0)
        return std::nullopt;
    return Chord{converted(*envelope.lemac, envelope.arm_unit, units.arm),
                 converted(*envelope.mac, envelope.arm_unit, units.arm)};
}

std::optional<double> mostWeight(const Records &records, Units units)
{
    const auto &project = records.project;
    if (!project.maximum_weight || !project.weight_unit)
        return std::nullopt;
    return converted(*project.maximum_weight, *project.weight_unit, units.weight);
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
        if (straddles && cg < (b.arm - a.arm) * (weight - a.weight) / (b.weight - a.weight) + a.arm)
            isInside = !isInside;
    }
    return isInside;
}

} // namespace lastrivet::balance
