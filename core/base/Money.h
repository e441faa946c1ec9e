// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>

namespace lastrivet {

/// An amount in whole minor units (cents) of one ISO 4217 currency.
struct Money {
    std::int64_t minor_units = 0;
    std::string currency;

    friend bool operator==(const Money &, const Money &) = default;
};

} // namespace lastrivet
