// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/Quantile.h"

#include <fmt/core.h>
#include <iostream>
#include <string>

// Reads `normal P`, `gamma SHAPE P` and `share SHAPE X`, a line each, and answers a number a line:
// the inverse of the normal distribution, of the gamma distribution, and the latter's share below
// X.
int main()
{
    std::string what;
    while (std::cin >> what) {
        double first = 0;
        double second = 0;
        std::cin >> first;
        if (what != "normal")
            std::cin >> second;
        using namespace lastrivet::forecast;
        const double answer = what == "normal"  ? normalQuantile(first)
                              : what == "gamma" ? gammaQuantile(first, second)
                                                : gammaShare(first, second);
        fmt::print("{:.17g}\n", answer);
    }
    return 0;
}
