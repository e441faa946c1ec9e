// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Money.h"

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace lastrivet::stores {

/// Adds up amounts exactly, each currency for itself.
class MoneySum {
public:
    /// "eur" is the same currency as "EUR".
    void add(std::int64_t minorUnits, std::string_view currency);

    /// One amount per currency, by its code.
    std::vector<Money> amounts() const;
    /// Nothing when there is none of this currency.
    std::int64_t of(std::string_view currency) const;
    /// True when a sum would have overflowed; it then stays as it was before.
    bool isBeyond() const { return m_isBeyond; }

private:
    std::map<std::string, std::int64_t, std::less<>> m_sums;
    bool m_isBeyond = false;
};

} // namespace lastrivet::stores
