// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/Quantile.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace lastrivet::forecast;

namespace {

/// The share of a gamma distribution of whole shape below x: 1 - exp(-x) (1 + x + x²/2! + …).
double shareOfWholeGamma(int shape, double x)
{
    double term = 1;
    double sum = 1;
    for (int n = 1; n < shape; ++n) {
        term *= x / n;
        sum += term;
    }
    return 1 - std::exp(-x) * sum;
}

} // namespace

TEST_CASE("The inverse distributions undo the distributions")
{
    for (const double p : {1e-9, 0.001, 0.05, 0.1, 0.42, 0.5, 0.8, 0.9, 0.975, 0.9999}) {
        CAPTURE(p);
        // The normal distribution by the C library's erfc.
        CHECK(0.5 * std::erfc(-normalQuantile(p) / std::sqrt(2.0)) == Approx(p).epsilon(1e-9));
        for (const int shape : {1, 2, 5, 30}) {
            CAPTURE(shape);
            CHECK(shareOfWholeGamma(shape, gammaQuantile(shape, p)) ==
                  Approx(p).epsilon(1e-6).margin(1e-12));
        }
        // Of shape one half: the square of a normal number, halved.
        CHECK(std::erf(std::sqrt(gammaQuantile(0.5, p))) == Approx(p).epsilon(1e-9));
    }
}
