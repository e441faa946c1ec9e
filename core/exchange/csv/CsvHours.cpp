// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv/CsvHours.h"

#include "core/base/Trimmed.h"

#include <algorithm>
#include <array>
#include <string>
#include <string_view>

namespace lastrivet::exchange {

namespace {

bool isHours(std::string_view header)
{
    constexpr std::array<std::string_view, 8> words{"hours", "hrs",  "h",      "stunden",
                                                    "std",   "std.", "heures", "estimate_hours"};
    return std::find(words.begin(), words.end(), plainHeader(header)) != words.end();
}

bool isBareNumber(std::string_view cell)
{
    const auto marks =
        std::count_if(cell.begin(), cell.end(), [](char c) { return c == '.' || c == ','; });
    return cell.find_first_of("0123456789") != std::string_view::npos && marks <= 1 &&
           cell.find_first_not_of("0123456789.,") == std::string_view::npos;
}

/// Spreadsheets write a third of an hour with sixteen digits; the fifth is less than a second.
std::string withFourDigits(std::string number)
{
    constexpr std::size_t digits = 4;
    const auto mark = number.find_first_of(".,");
    if (mark != std::string::npos && number.size() > mark + 1 + digits)
        number.resize(mark + 1 + digits);
    return number;
}

} // namespace

void rewriteHours(CsvTable &table, const CsvColumns &columns)
{
    for (std::size_t column = 0; column < columns.size(); ++column) {
        if (!columns[column].ends_with("minutes") || !isHours(table.header[column]))
            continue;
        for (auto &row : table.rows) {
            const std::string number(trimmed(row[column]));
            if (isBareNumber(number))
                row[column] = withFourDigits(number) + "h";
        }
    }
}

} // namespace lastrivet::exchange
