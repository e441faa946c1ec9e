// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/forecast/Quantile.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <random>

namespace lastrivet::forecast {

/// Random numbers that are the same on every computer: the generator's are laid down by the C++
/// standard, its distributions are not, so these are drawn by inverting their distributions.
class Draws {
public:
    explicit Draws(std::uint64_t seed)
        : m_random(seed)
    {
    }

    /// Between 0 and 1, neither of them.
    double share()
    {
        // The half is lost where numbers are whole, so that the greatest would be 1.
        return std::min((double(m_random() >> 11) + 0.5) / 9007199254740992.0,
                        std::nextafter(1.0, 0.0));
    }
    double normal() { return normalQuantile(share()); }
    /// Of rate 1.
    double gamma(double shape) { return gammaQuantile(shape, share()); }
    std::size_t below(std::size_t bound) { return std::size_t(share() * double(bound)); }

private:
    std::mt19937_64 m_random;
};

} // namespace lastrivet::forecast
