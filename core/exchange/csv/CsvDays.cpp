// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv/CsvDays.h"

#include "core/base/Trimmed.h"
#include "core/base/TwoDigitYear.h"
#include "core/records/Description.h"

#include <array>
#include <charconv>
#include <fmt/format.h>
#include <string>

namespace lastrivet::exchange {

namespace {

/// Three numbers and what stands around them.
struct Numbers {
    std::array<int, 3> values{};
    /// How many digits the last one has.
    std::size_t figures = 0;
    char parting = ' ';
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
        found.figures = std::size_t(next - text.data());
        text.remove_prefix(found.figures);
        if (i == 2)
            break;
        if (text.empty() || std::string_view("./-").find(text.front()) == std::string_view::npos)
            return std::nullopt;
        found.parting = text.front();
        text.remove_prefix(1);
    }
    found.rest = text;
    return found;
}

constexpr std::size_t figuresOfShortYear = 2;
constexpr int leastYear = 1900;

void rewrite(std::string &cell, DayOrder order, Moment today)
{
    const auto found = threeNumbers(trimmed(cell));
    if (!found)
        return;
    const auto [first, second, last] = found->values;
    const int day = order == DayOrder::DayMonthYear ? first : second;
    const int month = order == DayOrder::DayMonthYear ? second : first;
    const bool isShort = found->figures == figuresOfShortYear && last >= 0;
    const int year = isShort ? nearestYear(last, today) : last;
    if (year < leastYear)
        return;
    const std::string written = fmt::format("{:04}-{:02}-{:02}", year, month, day);
    if (Moment::parse(written))
        cell = written + std::string(found->rest);
}

/// Calls `body` with each cell of a list that says when.
template <class Table, class Body>
void eachDay(Table &table, RecordType type, const CsvColumns &columns, Body &&body)
{
    for (std::size_t column = 0; column < columns.size(); ++column) {
        const Field *field = describe(type).find(columns[column]);
        if (!field || field->type != FieldType::Moment)
            continue;
        for (auto &row : table.rows)
            body(row[column]);
    }
}

/// What is known of the days of a list once some were looked at.
struct Orders {
    bool isAnyOther = false;
    bool mayBeDayFirst = true;
    bool mayBeMonthFirst = true;

    void lookAt(std::string_view cell)
    {
        constexpr int months = 12;
        const auto found = threeNumbers(trimmed(cell));
        if (!found || found->values[0] >= leastYear)
            return;
        isAnyOther = true;
        // In "26-03-14" the year may come first.
        const bool isAnyOrder = found->parting == '-' && found->figures == figuresOfShortYear;
        mayBeDayFirst = mayBeDayFirst && found->values[1] <= months && !isAnyOrder;
        mayBeMonthFirst =
            mayBeMonthFirst && found->values[0] <= months && !isAnyOrder && found->parting != '.';
    }
};

} // namespace

std::optional<DayOrder> orderShown(const CsvTable &table, RecordType type,
                                   const CsvColumns &columns)
{
    Orders orders;
    eachDay(table, type, columns, [&](const std::string &cell) { orders.lookAt(cell); });
    if (!orders.isAnyOther)
        return DayOrder::YearMonthDay;
    if (orders.mayBeDayFirst == orders.mayBeMonthFirst)
        return std::nullopt;
    return orders.mayBeDayFirst ? DayOrder::DayMonthYear : DayOrder::MonthDayYear;
}

void rewriteDays(CsvTable &table, RecordType type, const CsvColumns &columns, DayOrder order,
                 Moment today)
{
    if (order == DayOrder::YearMonthDay)
        return;
    eachDay(table, type, columns, [&](std::string &cell) { rewrite(cell, order, today); });
}

} // namespace lastrivet::exchange
