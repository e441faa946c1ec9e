// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <cstddef>
#include <cstdint>

namespace lastrivet {

/// The position of the first number not below `key` among `size` numbers in ascending order; `size`
/// when all are below. Interpolation search for the first guess, then galloping outwards from it:
/// ids without gaps are found at once, others in at most twice the steps of a binary search.
template <class NumberAt>
std::size_t firstNotBelow(std::size_t size, std::int64_t key, const NumberAt &numberAt)
{
    if (size == 0 || key <= numberAt(0))
        return 0;
    const std::int64_t first = numberAt(0);
    const std::int64_t last = numberAt(size - 1);
    if (key > last)
        return size;
    const double share = double(key - first) / double(last - first);
    const auto guess = std::min(size - 1, std::size_t(share * double(size - 1) + 0.5));
    std::size_t low = 0;
    std::size_t high = size - 1;
    std::size_t step = 1;
    if (numberAt(guess) < key) {
        for (low = guess; low + step < high && numberAt(low + step) < key; step *= 2)
            low += step;
        high = std::min(high, low + step);
    } else {
        for (high = guess; high > step && numberAt(high - step) >= key; step *= 2)
            high -= step;
        low = high > step ? high - step : 0;
    }
    // The number at `low` is below, that at `high` is not.
    while (high - low > 1) {
        const std::size_t middle = low + (high - low) / 2;
        (numberAt(middle) < key ? low : high) = middle;
    }
    return high;
}

} // namespace lastrivet
