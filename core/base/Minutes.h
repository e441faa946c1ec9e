// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>
#include <cstdint>
#include <limits>

namespace lastrivet {

/// A duration in whole minutes. Sums saturate instead of overflowing, so that absurd numbers in a
/// stranger's file do no harm.
class Minutes {
public:
    constexpr Minutes() = default;
    explicit constexpr Minutes(std::int64_t count)
        : m_count(count)
    {
    }

    constexpr std::int64_t count() const { return m_count; }

    constexpr Minutes &operator+=(Minutes other)
    {
        using Limits = std::numeric_limits<std::int64_t>;
        if (__builtin_add_overflow(m_count, other.m_count, &m_count))
            m_count = other.m_count > 0 ? Limits::max() : Limits::min();
        return *this;
    }
    friend constexpr Minutes operator+(Minutes a, Minutes b) { return a += b; }
    friend constexpr auto operator<=>(Minutes, Minutes) = default;

private:
    std::int64_t m_count = 0;
};

} // namespace lastrivet
