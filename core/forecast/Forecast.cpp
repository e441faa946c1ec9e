// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/Forecast.h"

#include "core/forecast/Futures.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace lastrivet::forecast {

namespace {

/// What came out of all futures, a row per assembly.
struct Outcomes {
    std::vector<std::vector<double>> parts;
    std::vector<double> whole;
    /// Empty while no pace is known.
    std::vector<double> weeks;
};

Outcomes drawOutcomes(Futures &futures, std::size_t assemblies, std::size_t draws, bool hasPace)
{
    Outcomes outcomes{std::vector<std::vector<double>>(assemblies, std::vector<double>(draws)),
                      std::vector<double>(draws),
                      {}};
    for (std::size_t draw = 0; draw < draws; ++draw) {
        futures.next();
        for (std::size_t i = 0; i < assemblies; ++i)
            outcomes.parts[i][draw] = futures.parts()[i];
        outcomes.whole[draw] = futures.whole();
        if (hasPace)
            outcomes.weeks.push_back(
                futures.length().value_or(std::numeric_limits<double>::infinity()));
    }
    return outcomes;
}

/// Shares of the spread: the covariance of each assembly with the whole, without the outermost
/// hundredths, where a few extreme draws would outweigh the rest.
std::vector<double> sharesOfSpread(const Outcomes &outcomes)
{
    const auto &whole = outcomes.whole;
    std::vector<std::size_t> order(whole.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::sort(order.begin(), order.end(),
              [&](std::size_t a, std::size_t b) { return whole[a] < whole[b]; });
    const auto cut = std::ptrdiff_t(order.size() / 100);
    const std::span kept(order.begin() + cut, order.end() - cut);
    const auto meanOf = [&](const std::vector<double> &values) {
        double sum = 0;
        for (const auto i : kept)
            sum += values[i];
        return sum / double(kept.size());
    };
    const double mean = meanOf(whole);
    std::vector<double> shares;
    double all = 0;
    for (const auto &part : outcomes.parts) {
        const double partMean = meanOf(part);
        double together = 0;
        for (const auto i : kept)
            together += (part[i] - partMean) * (whole[i] - mean);
        shares.push_back(together);
        all += together;
    }
    for (auto &share : shares)
        share = all > 0 ? share / all : 0;
    return shares;
}

std::optional<Range<Moment>> finishFrom(Moment asOf, std::vector<double> weeks)
{
    const auto range = rangeOf(std::move(weeks));
    std::optional<Moment> days[4];
    for (std::size_t i = 0; const double week : {range.p10, range.p50, range.p80, range.p90}) {
        if (!std::isfinite(week))
            return std::nullopt;
        days[i] = asOf.dayOnly().plusDays(std::int64_t(std::ceil(week * 7)));
        if (!days[i])
            return std::nullopt;
        ++i;
    }
    return Range<Moment>{*days[0], *days[1], *days[2], *days[3]};
}

constexpr std::size_t fewestWeeks = 8;

bool isLongEnough(const PastWork &past)
{
    return past.weeks.size() >= fewestWeeks;
}

bool isIdle(const PastWork &past)
{
    return std::none_of(past.weeks.begin(), past.weeks.end(),
                        [](double minutes) { return minutes > 0; });
}

} // namespace

std::vector<double> weeksFor(const PastWork &past, const Options &options)
{
    if (options.hours_per_week)
        return std::vector<double>(4, *options.hours_per_week * 60);
    return isLongEnough(past) && !isIdle(past) ? past.weeks : std::vector<double>{};
}

Forecast forecast(const Records &records, Moment asOf, const Options &options)
{
    return forecast(records, pastWork(records, asOf), asOf, options);
}

Forecast forecast(const Records &records, const PastWork &past, Moment asOf, const Options &options)
{
    const auto weeks = weeksFor(past, options);
    Forecast told{
        .as_of = asOf, .seed = options.seed, .work_left = workLeft(records, asOf, options.choice)};
    told.needs_hours_per_week = weeks.empty() && !told.work_left.isNothing();
    told.idle_weeks = isLongEnough(past) && isIdle(past) ? std::int64_t(past.weeks.size()) : 0;
    told.without = options.choice.without;
    const auto &assemblies = told.work_left.assemblies;
    if (assemblies.empty())
        return told;
    Futures futures(past, assemblies, weeks, options.seed);
    auto outcomes = drawOutcomes(futures, assemblies.size(), options.draws, !weeks.empty());
    const auto shares = sharesOfSpread(outcomes);
    for (std::size_t i = 0; i < assemblies.size(); ++i)
        told.assemblies.push_back(
            {assemblies[i].assembly, minutesRange(std::move(outcomes.parts[i])), shares[i]});
    if (!outcomes.weeks.empty())
        told.finish = finishFrom(asOf, std::move(outcomes.weeks));
    told.minutes_to_go = minutesRange(std::move(outcomes.whole));
    return told;
}

} // namespace lastrivet::forecast
