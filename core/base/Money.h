// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>

namespace lastrivet {

/// An amount in whole minor units (cents) of one ISO 4217 currency.
struct Money {
    std::int64_t minor_units = 0;
    std::string currency;

    friend bool operator==(const Money &, const Money &) = default;
};

/// The sum; empty when the currencies differ, since amounts are never mixed silently.
inline std::optional<Money> sum(const Money &a, const Money &b)
{
    if (a.currency != b.currency)
        return std::nullopt;
    return Money{a.minor_units + b.minor_units, a.currency};
}

} // namespace lastrivet
