// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>
#include <cstdint>

namespace lastrivet {

/// A duration in whole minutes.
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
        m_count += other.m_count;
        return *this;
    }
    friend constexpr Minutes operator+(Minutes a, Minutes b) { return a += b; }
    friend constexpr auto operator<=>(Minutes, Minutes) = default;

private:
    std::int64_t m_count = 0;
};

} // namespace lastrivet
