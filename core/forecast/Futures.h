// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/forecast/Draws.h"
#include "core/forecast/PastWork.h"
#include "core/forecast/WorkLeft.h"

#include <functional>
#include <optional>
#include <span>
#include <vector>

namespace lastrivet::forecast {

/// What is known of ln(actual / estimate) after some steps were finished: a normal distribution of
/// unknown mean and variance, with a normal-inverse-gamma prior (Gelman et al., Bayesian Data
/// Analysis, section 3.3). The prior's four values are chosen, ours.
struct Posterior {
    double mean = 0.2;
    double weight = 2;
    double shape = 2;
    double scale = 0.25;
};

Posterior posteriorOf(const std::vector<double> &logRatios);

/// Draws possible futures of the remaining work, one after the other; the same seed gives the same
/// ones.
///
/// For each future, how slow the builder is and how much that varies are drawn once and hold for
/// all steps. Rework comes on top: its share is drawn from what the log shows and a prior of 8 %
/// with the weight of 100 hours (chosen values, ours). Weeks of work are drawn in blocks of four,
/// each of them as often as any other.
class Futures {
public:
    /// Called after each week with the number of weeks so far and the minutes done by then.
    using EachWeek = std::function<void(std::size_t weeks, double done)>;

    /// `weeks`, at least four or none, are those that can come; `assemblies` outlive this.
    Futures(const PastWork &past, const std::vector<AssemblyWork> &assemblies,
            std::vector<double> weeks, std::uint64_t seed);

    /// Draws the next future; the functions below are about it.
    void next(const EachWeek &eachWeek = {});
    /// Minutes to go of each assembly, and of all.
    const std::vector<double> &parts() const { return m_parts; }
    double whole() const { return m_whole; }
    /// Weeks until all is done; none when it is not within a hundred years, or no weeks are known.
    std::optional<double> length() const { return m_length; }

private:
    /// The estimates of an assembly, ready to be drawn from.
    struct Steps {
        std::span<const double> estimates;
        double sum = 0;
        double squares = 0;
    };
    /// How slow the builder is, and how much that varies from step to step.
    struct Slowness {
        double mean = 0;
        double deviation = 0;
    };

    Slowness drawSlowness();
    double drawRework();
    double drawSteps(const Steps &steps, const Slowness &slowness);
    std::optional<double> drawLength(const EachWeek &eachWeek);

    const PastWork m_past;
    const std::vector<AssemblyWork> &m_assemblies;
    const Posterior m_posterior;
    const std::vector<double> m_weeks;
    std::vector<Steps> m_steps;
    Draws m_draws;
    std::vector<double> m_parts;
    double m_whole = 0;
    std::optional<double> m_length;
};

} // namespace lastrivet::forecast
