// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv/CsvDays.h"

#include "core/base/Moment.h"
#include "core/base/Trimmed.h"
#include "core/records/Description.h"

#include <array>
#include <charconv>
#include <fmt/format.h>
#include <optional>
#include <string>

namespace lastrivet::exchange {

namespace {

/// Three numbers and what stands behind them.
struct Numbers {
    std::array<int, 3> values{};
    std::string_view rest;
};

std::optional<Numbers> threeNumbers(std::string_view text)
{
    Numbers found;
    for (std::size_t i = 0; i < found.values.size(); ++i) {
        const char *end = text.data() + text.size();
        const auto [next, error] = std::from_chars(text.data(), end, found.values[i]);
        if (error != std::errc{})
            return std::nullopt;
        text.remove_prefix(std::size_t(next - text.data()));
        if (i == 2)
            break;
        if (text.empty() || std::string_view("./-").find(text.front()) == std::string_view::npos)
            return std::nullopt;
        text.remove_prefix(1);
    }
    found.rest = text;
    return found;
}

void rewrite(std::string &cell, DayOrder order)
{
    constexpr int leastYear = 1900;
    const auto found = threeNumbers(trimmed(cell));
    if (!found)
        return;
    const auto [first, second, year] = found->values;
    const int day = order == DayOrder::DayMonthYear ? first : second;
    const int month = order == DayOrder::DayMonthYear ? second : first;
    if (year < leastYear)
        return;
    const std::string written = fmt::format("{:04}-{:02}-{:02}", year, month, day);
    if (Moment::parse(written))
        cell = written + std::string(found->rest);
}

} // namespace

void rewriteDays(CsvTable &table, RecordType type, const CsvColumns &columns, DayOrder order)
{
    if (order == DayOrder::YearMonthDay)
        return;
    for (std::size_t column = 0; column < columns.size(); ++column) {
        const Field *field = describe(type).find(columns[column]);
        if (!field || field->type != FieldType::Moment)
            continue;
        for (auto &row : table.rows)
            rewrite(row[column], order);
    }
}

} // namespace lastrivet::exchange
