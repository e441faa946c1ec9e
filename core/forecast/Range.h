// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace lastrivet::forecast {

/// Four points of a distribution; `Value` need have no default.
template <class Value> struct Range {
    Value p10;
    Value p50;
    Value p80;
    Value p90;

    friend bool operator==(const Range &, const Range &) = default;
};

/// The four points of drawn values, of which there is at least one.
inline Range<double> rangeOf(std::vector<double> values)
{
    auto begin = values.begin();
    const auto at = [&](double share) {
        const auto place = std::min(values.size() - 1, std::size_t(share * double(values.size())));
        // What is below the point before stays there.
        std::nth_element(begin, values.begin() + std::ptrdiff_t(place), values.end());
        begin = values.begin() + std::ptrdiff_t(place);
        return *begin;
    };
    return {at(0.1), at(0.5), at(0.8), at(0.9)};
}

/// The same in whole minutes.
inline Range<std::int64_t> minutesRange(std::vector<double> values)
{
    const auto range = rangeOf(std::move(values));
    const auto whole = [](double minutes) {
        return std::int64_t(std::llround(std::min(minutes, 1e15)));
    };
    return {whole(range.p10), whole(range.p50), whole(range.p80), whole(range.p90)};
}

} // namespace lastrivet::forecast
