// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stores/MoneySum.h"

#include "core/base/CaseFold.h"
#include "core/base/Trimmed.h"

namespace lastrivet::stores {

void MoneySum::add(std::int64_t minorUnits, std::string_view currency)
{
    std::int64_t &sum = m_sums[asciiUpper(trimmed(currency))];
    std::int64_t next = 0;
    if (__builtin_add_overflow(sum, minorUnits, &next))
        m_isBeyond = true;
    else
        sum = next;
}

std::vector<Money> MoneySum::amounts() const
{
    std::vector<Money> amounts;
    for (const auto &[currency, sum] : m_sums)
        amounts.push_back({sum, currency});
    return amounts;
}

std::int64_t MoneySum::of(std::string_view currency) const
{
    const auto found = m_sums.find(currency);
    return found == m_sums.end() ? 0 : found->second;
}

} // namespace lastrivet::stores
