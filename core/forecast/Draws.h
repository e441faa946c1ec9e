// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/forecast/Quantile.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <random>

namespace lastrivet::forecast {

/// Random numbers that are the same on every computer. The C++ standard defines the numbers of its
/// generators but not those of its distributions, so distributions are inverted here.
class Draws {
public:
    explicit Draws(std::uint64_t seed)
        : m_random(seed)
    {
    }

    /// Uniform between 0 and 1, both excluded.
    double share()
    {
        // A double of 53 bits loses the half above 2^52, so that the greatest would round to 1.
        return std::min((double(m_random() >> 11) + 0.5) / 0x1p53, std::nextafter(1.0, 0.0));
    }
    double normal() { return normalQuantile(share()); }
    /// Of a gamma distribution of rate 1.
    double gamma(double shape) { return gammaQuantile(shape, share()); }
    /// Uniform from 0 to `bound` - 1.
    std::size_t below(std::size_t bound) { return std::size_t(share() * double(bound)); }

private:
    std::mt19937_64 m_random;
};

} // namespace lastrivet::forecast
