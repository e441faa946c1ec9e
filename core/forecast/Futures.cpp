// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/Futures.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace lastrivet::forecast {

namespace {

/// Above this many steps their sum is drawn as one lognormal number of the same mean and variance.
constexpr std::size_t fewSteps = 40;
/// Weeks that are drawn together, so that good and bad stretches of time stay together. After the
/// newest week comes the oldest (a circular block bootstrap), so that each week comes as often as
/// any other: else the outermost ones would hardly come at all.
constexpr std::size_t block = 4;
/// A hundred years, in weeks.
constexpr double longestWeeks = 5200;

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
    posterior.scale =
        prior.scale + squares / 2 +
        prior.weight * count * (mean - prior.mean) * (mean - prior.mean) / (2 * posterior.weight);
    return posterior;
}

Futures::Futures(const PastWork &past, const std::vector<AssemblyWork> &assemblies,
                 std::vector<double> weeks, std::uint64_t seed)
    : m_past(past)
    , m_assemblies(assemblies)
    , m_posterior(posteriorOf(past.log_ratios))
    , m_weeks(std::move(weeks))
    , m_draws(seed)
    , m_parts(assemblies.size())
{
    for (const auto &work : assemblies) {
        Steps steps{work.steps, 0, 0};
        for (const double estimate : work.steps) {
            steps.sum += estimate;
            steps.squares += estimate * estimate;
        }
        m_steps.push_back(steps);
    }
}

void Futures::next(const EachWeek &eachWeek)
{
    const auto slowness = drawSlowness();
    const double rework = drawRework();
    m_whole = 0;
    for (std::size_t i = 0; i < m_steps.size(); ++i) {
        m_parts[i] = drawSteps(m_steps[i], slowness) * (1 + rework) + m_assemblies[i].squawks;
        m_whole += m_parts[i];
    }
    m_length = m_weeks.empty() ? std::nullopt : drawLength(eachWeek);
}

Futures::Slowness Futures::drawSlowness()
{
    // A variance above 4 means that steps take from a tenth to ten times what was thought; nothing
    // can be said beyond that.
    const double variance = std::min(4.0, m_posterior.scale / m_draws.gamma(m_posterior.shape));
    const double mean =
        m_posterior.mean + std::sqrt(variance / m_posterior.weight) * m_draws.normal();
    return {mean, std::sqrt(variance)};
}

double Futures::drawRework()
{
    constexpr double hoursSeen = 100;
    constexpr double shareSeen = 0.08;
    const double shape = shareSeen * hoursSeen + m_past.rework_minutes / 60;
    return m_draws.gamma(shape) / (hoursSeen + m_past.other_minutes / 60);
}

double Futures::drawSteps(const Steps &steps, const Slowness &slowness)
{
    if (steps.sum <= 0)
        return 0;
    if (steps.estimates.size() <= fewSteps) {
        double all = 0;
        for (const double estimate : steps.estimates)
            all += estimate * std::exp(slowness.mean + slowness.deviation * m_draws.normal());
        return all;
    }
    const double variance = slowness.deviation * slowness.deviation;
    const double relative = (std::exp(variance) - 1) * steps.squares / (steps.sum * steps.sum);
    const double deviation = std::sqrt(std::log1p(relative));
    const double mean = std::exp(slowness.mean + variance / 2) * steps.sum;
    return mean * std::exp(deviation * m_draws.normal() - deviation * deviation / 2);
}

std::optional<double> Futures::drawLength(const EachWeek &eachWeek)
{
    double done = 0;
    for (std::size_t passed = 0; double(passed) < longestWeeks;) {
        const auto first = m_draws.below(m_weeks.size());
        for (std::size_t i = first; i < first + block; ++i) {
            const double week = m_weeks[i % m_weeks.size()];
            if (done + week >= m_whole)
                return double(passed) + (week > 0 ? (m_whole - done) / week : 0);
            done += week;
            ++passed;
            if (eachWeek)
                eachWeek(passed, done);
        }
    }
    return std::nullopt;
}

} // namespace lastrivet::forecast
