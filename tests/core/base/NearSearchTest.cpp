// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/NearSearch.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <random>
#include <vector>

using namespace lastrivet;

namespace {

/// Every key from below the first to above the last is where std::lower_bound has it; answers the
/// most looks that one key took.
int mostLooks(const std::vector<std::int64_t> &numbers)
{
    int most = 0;
    const std::int64_t end = numbers.empty() ? 3 : numbers.back() + 3;
    for (std::int64_t key = -2; key < end; ++key) {
        int looks = 0;
        const auto found = firstNotBelow(numbers.size(), key, [&](std::size_t i) {
            ++looks;
            REQUIRE(i < numbers.size());
            return numbers[i];
        });
        const auto place = std::lower_bound(numbers.begin(), numbers.end(), key);
        REQUIRE(found == std::size_t(place - numbers.begin()));
        most = std::max(most, looks);
    }
    return most;
}

} // namespace

TEST_CASE("A number is found wherever it stands among rising ones")
{
    mostLooks({});
    mostLooks({7});
    mostLooks({1, 2});
    mostLooks({1, 1, 1, 5, 5, 90});
    mostLooks({1, 1000});
    std::mt19937 random(11);
    for (int round = 0; round < 300; ++round) {
        std::vector<std::int64_t> numbers(random() % 200);
        const auto widest = 1 + random() % 50;
        std::int64_t next = 0;
        for (auto &number : numbers)
            number = next += std::int64_t(random() % widest);
        mostLooks(numbers);
    }
}

TEST_CASE("Numbers without gaps take few looks, and no order takes many")
{
    std::vector<std::int64_t> even(1000);
    std::vector<std::int64_t> steep(40);
    for (std::size_t i = 0; i < even.size(); ++i)
        even[i] = std::int64_t(i) + 5;
    for (std::size_t i = 0; i < steep.size(); ++i)
        steep[i] = std::int64_t(std::pow(1.4, double(i)));
    CHECK(mostLooks(even) <= 6);
    CHECK(mostLooks(steep) <= 5 + 2 * 6);
}
