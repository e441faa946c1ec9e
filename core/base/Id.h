// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>
#include <cstdint>
#include <functional>
#include <vector>

namespace lastrivet {

/// The largest id: every JSON reader keeps whole numbers up to here exact.
inline constexpr std::int64_t largestId = (std::int64_t{1} << 53) - 1;

/// The id of a record of one type: 1 to `largestId`, or none. Ids of two record types do not mix.
template <class Record> class Id {
public:
    constexpr Id() = default;
    explicit constexpr Id(std::int64_t value)
        : m_value(value)
    {
    }

    constexpr std::int64_t value() const { return m_value; }
    explicit constexpr operator bool() const { return m_value != 0; }

    friend constexpr auto operator<=>(Id, Id) = default;

private:
    std::int64_t m_value = 0;
};

/// Ids in ascending order, each once; see `insertSorted`.
template <class Record> using IdSet = std::vector<Id<Record>>;

} // namespace lastrivet

template <class Record> struct std::hash<lastrivet::Id<Record>> {
    std::size_t operator()(lastrivet::Id<Record> id) const noexcept
    {
        return std::hash<std::int64_t>{}(id.value());
    }
};
