// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/Forecast.h"

#include "core/forecast/Quantile.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <random>

namespace lastrivet::forecast {

namespace {

/// Shares between 0 and 1, the same on every computer: the generator's numbers are laid down by the
/// C++ standard, its distributions are not.
class Draws {
public:
    explicit Draws(std::uint64_t seed)
        : m_random(seed)
    {
    }

    double share() { return (double(m_random() >> 11) + 0.5) / 9007199254740992.0; }
    double normal() { return normalQuantile(share()); }
    double gamma(double shape) { return gammaQuantile(shape, share()); }
    std::size_t below(std::size_t bound) { return std::size_t(share() * double(bound)); }

private:
    std::mt19937_64 m_random;
};

/// How slow the builder is, and how much that varies from step to step.
struct Pace {
    double mean = 0;
    double deviation = 0;
};

Pace drawPace(const Posterior &posterior, Draws &draws)
{
    // A variance above 4 means that steps take from a tenth to ten times what was thought; nothing
    // can be said beyond that.
    const double variance = std::min(4.0, posterior.scale / draws.gamma(posterior.shape));
    const double mean =
        posterior.mean + std::sqrt(variance / posterior.weight) * draws.normal();
    return {mean, std::sqrt(variance)};
}

/// Above so many steps their sum is drawn as one lognormal number of the same mean and variance.
constexpr std::size_t fewSteps = 40;

/// The estimates of an assembly, ready to be drawn from.
struct Steps {
    std::span<const double> estimates;
    double sum = 0;
    double squares = 0;

    explicit Steps(const std::vector<double> &minutes)
        : estimates(minutes)
    {
        for (const double estimate : minutes) {
            sum += estimate;
            squares += estimate * estimate;
        }
    }

    double draw(const Pace &pace, Draws &draws) const
    {
        if (sum <= 0)
            return 0;
        if (estimates.size() <= fewSteps) {
            double all = 0;
            for (const double estimate : estimates)
                all += estimate * std::exp(pace.mean + pace.deviation * draws.normal());
            return all;
        }
        const double variance = pace.deviation * pace.deviation;
        const double relative = (std::exp(variance) - 1) * squares / (sum * sum);
        const double deviation = std::sqrt(std::log1p(relative));
        const double mean = std::exp(pace.mean + variance / 2) * sum;
        return mean * std::exp(deviation * draws.normal() - deviation * deviation / 2);
    }
};

double drawRework(const PastWork &past, Draws &draws)
{
    constexpr double hoursSeen = 100;
    constexpr double shareSeen = 0.08;
    const double shape = shareSeen * hoursSeen + past.rework_minutes / 60;
    return draws.gamma(shape) / (hoursSeen + past.other_minutes / 60);
}

/// How many weeks until so much is done; nothing when it is not within a hundred years.
std::optional<double> drawWeeks(double minutes, const std::vector<double> &weeks, Draws &draws)
{
    constexpr std::size_t block = 4;
    constexpr double longest = 5200;
    double done = 0;
    for (double passed = 0; passed < longest;) {
        const auto first = draws.below(weeks.size() - block + 1);
        for (std::size_t i = first; i < first + block; ++i, ++passed) {
            if (done + weeks[i] >= minutes)
                return passed + (weeks[i] > 0 ? (minutes - done) / weeks[i] : 0);
            done += weeks[i];
        }
    }
    return std::nullopt;
}

double at(const std::vector<double> &sorted, double share)
{
    return sorted[std::min(sorted.size() - 1, std::size_t(share * double(sorted.size())))];
}

template <class Value, class Make> Range<Value> rangeOf(std::vector<double> values, Make make)
{
    std::sort(values.begin(), values.end());
    return {make(at(values, 0.1)), make(at(values, 0.5)), make(at(values, 0.8)),
            make(at(values, 0.9))};
}

Range<std::int64_t> minutesRange(std::vector<double> values)
{
    return rangeOf<std::int64_t>(std::move(values), [](double minutes) {
        return std::int64_t(std::llround(std::min(minutes, 1e15)));
    });
}

/// Shares of the spread: how each assembly goes along with the whole, outermost hundredths aside,
/// which would say more of a few wild draws than of the work.
std::vector<double> sharesOfSpread(const std::vector<std::vector<double>> &parts,
                                   const std::vector<double> &whole)
{
    std::vector<std::size_t> order(whole.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::sort(order.begin(), order.end(),
              [&](std::size_t a, std::size_t b) { return whole[a] < whole[b]; });
    const auto cut = order.size() / 100;
    const std::span kept(order.begin() + std::ptrdiff_t(cut), order.end() - std::ptrdiff_t(cut));
    const auto meanOf = [&](const std::vector<double> &values) {
        double sum = 0;
        for (const auto i : kept)
            sum += values[i];
        return sum / double(kept.size());
    };
    const double mean = meanOf(whole);
    std::vector<double> shares;
    double all = 0;
    for (const auto &part : parts) {
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

/// The last weeks, or the hours that were given in place of them; empty when neither is enough.
std::vector<double> weeksFor(const PastWork &past, const Options &options)
{
    constexpr std::size_t fewestWeeks = 8;
    if (options.hours_per_week)
        return std::vector<double>(4, *options.hours_per_week * 60);
    const bool isWorked = std::any_of(past.weeks.begin(), past.weeks.end(),
                                      [](double minutes) { return minutes > 0; });
    return past.weeks.size() >= fewestWeeks && isWorked ? past.weeks : std::vector<double>{};
}

std::optional<Range<Moment>> finishFrom(Moment asOf, std::vector<double> weeks)
{
    std::sort(weeks.begin(), weeks.end());
    std::optional<Moment> days[4];
    for (std::size_t i = 0; const double share : {0.1, 0.5, 0.8, 0.9}) {
        const double week = at(weeks, share);
        if (!std::isfinite(week))
            return std::nullopt;
        days[i] = asOf.dayOnly().plusDays(std::int64_t(std::ceil(week * 7)));
        if (!days[i])
            return std::nullopt;
        ++i;
    }
    return Range<Moment>{*days[0], *days[1], *days[2], *days[3]};
}

} // namespace

Posterior posteriorOf(const std::vector<double> &logRatios)
{
    const Posterior prior;
    if (logRatios.empty())
        return prior;
    const double count = double(logRatios.size());
    const double mean = std::accumulate(logRatios.begin(), logRatios.end(), 0.0) / count;
    double squares = 0;
    for (const double ratio : logRatios)
        squares += (ratio - mean) * (ratio - mean);
    Posterior posterior;
    posterior.weight = prior.weight + count;
    posterior.mean = (prior.weight * prior.mean + count * mean) / posterior.weight;
    posterior.shape = prior.shape + count / 2;
    posterior.scale = prior.scale + squares / 2 +
                      prior.weight * count * (mean - prior.mean) * (mean - prior.mean) /
                          (2 * posterior.weight);
    return posterior;
}

Forecast forecast(const Records &records, Moment asOf, const Options &options)
{
    const auto past = pastWork(records, asOf);
    const auto posterior = posteriorOf(past.log_ratios);
    const auto weeks = weeksFor(past, options);
    Forecast told{asOf, options.seed, workLeft(records, asOf, options.without), {}, {},
                  weeks.empty(), {}};
    const auto &assemblies = told.work_left.assemblies;
    std::vector<Steps> steps;
    for (const auto &work : assemblies)
        steps.emplace_back(work.steps);
    std::vector<std::vector<double>> parts(assemblies.size(), std::vector<double>(options.draws));
    std::vector<double> whole(options.draws);
    std::vector<double> ends;
    Draws draws(options.seed);
    for (std::size_t draw = 0; draw < options.draws; ++draw) {
        const auto pace = drawPace(posterior, draws);
        const double rework = drawRework(past, draws);
        for (std::size_t i = 0; i < steps.size(); ++i) {
            parts[i][draw] = steps[i].draw(pace, draws) * (1 + rework) + assemblies[i].squawks;
            whole[draw] += parts[i][draw];
        }
        if (!weeks.empty())
            ends.push_back(drawWeeks(whole[draw], weeks, draws)
                               .value_or(std::numeric_limits<double>::infinity()));
    }
    if (!ends.empty())
        told.finish = finishFrom(asOf, std::move(ends));
    const auto shares = sharesOfSpread(parts, whole);
    for (std::size_t i = 0; i < assemblies.size(); ++i)
        told.assemblies.push_back(
            {assemblies[i].assembly, minutesRange(std::move(parts[i])), shares[i]});
    told.minutes_to_go = minutesRange(std::move(whole));
    return told;
}

} // namespace lastrivet::forecast
