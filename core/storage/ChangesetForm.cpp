// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/ChangesetForm.h"

#include <algorithm>
#include <optional>

namespace lastrivet::storage {

namespace {

constexpr std::uint64_t mostColumns = 1000;

enum Operation : std::uint8_t { Delete = 9, Insert = 18, Update = 23 };
enum Value : std::uint8_t { Undefined, Integer, Real, Text, Bytes, Null };
/// What was made or removed has a value in every column; of an update the others are left out.
enum class Row { Whole, WhatChanged };

/// Takes pieces off the front; returns false or empty when they are not there.
class Pieces {
public:
    explicit Pieces(std::span<const std::uint8_t> bytes)
        : m_rest(bytes)
    {
    }

    bool isAtEnd() const { return m_rest.empty(); }

    bool skip(std::uint64_t count)
    {
        if (count > m_rest.size())
            return false;
        m_rest = m_rest.subspan(std::size_t(count));
        return true;
    }

    std::optional<std::uint8_t> byte()
    {
        if (m_rest.empty())
            return std::nullopt;
        const std::uint8_t first = m_rest.front();
        m_rest = m_rest.subspan(1);
        return first;
    }

    /// Seven bits to a byte, its highest bit saying that more follow; five bytes hold any length.
    std::optional<std::uint64_t> number()
    {
        std::uint64_t number = 0;
        for (int i = 0; i < 5; ++i) {
            const auto next = byte();
            if (!next)
                return std::nullopt;
            number = number << 7 | (*next & 0x7f);
            if ((*next & 0x80) == 0)
                return number;
        }
        return std::nullopt;
    }

    bool skipName()
    {
        const auto end = std::find(m_rest.begin(), m_rest.end(), 0);
        return end != m_rest.end() && skip(std::uint64_t(end - m_rest.begin()) + 1);
    }

    bool skipValue(Row row)
    {
        const auto type = byte();
        if (!type || *type > Null || (row == Row::Whole && *type == Undefined))
            return false;
        if (*type == Integer || *type == Real)
            return skip(8);
        if (*type != Text && *type != Bytes)
            return true;
        const auto length = number();
        return length && skip(*length);
    }

    bool skipRow(std::uint64_t columns, Row row)
    {
        for (; columns > 0; --columns) {
            if (!skipValue(row))
                return false;
        }
        return true;
    }

private:
    std::span<const std::uint8_t> m_rest;
};

/// The number of columns of the table that the next changes belong to.
std::optional<std::uint64_t> readTable(Pieces &pieces)
{
    const auto columns = pieces.number();
    const bool isWhole = columns && *columns > 0 && *columns <= mostColumns &&
                         pieces.skip(*columns) && pieces.skipName();
    return isWhole ? columns : std::nullopt;
}

bool skipChange(Pieces &pieces, std::uint8_t operation, std::uint64_t columns)
{
    const bool isKnown = operation == Delete || operation == Insert || operation == Update;
    const Row row = operation == Update ? Row::WhatChanged : Row::Whole;
    return isKnown && pieces.byte() && pieces.skipRow(columns, row) &&
           (operation != Update || pieces.skipRow(columns, row));
}

} // namespace

bool isWellFormedChangeset(std::span<const std::uint8_t> bytes)
{
    Pieces pieces(bytes);
    std::optional<std::uint64_t> columns;
    while (!pieces.isAtEnd()) {
        const auto first = *pieces.byte();
        if (first == 'T')
            columns = readTable(pieces);
        else if (!columns || !skipChange(pieces, first, *columns))
            return false;
        if (!columns)
            return false;
    }
    return true;
}

} // namespace lastrivet::storage
