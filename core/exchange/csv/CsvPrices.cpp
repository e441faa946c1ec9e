// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv/CsvPrices.h"

#include "core/base/Trimmed.h"
#include "core/stores/MoneyText.h"

#include <algorithm>
#include <cstddef>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <set>
#include <string>

namespace lastrivet::exchange {

namespace {

bool isPrice(std::string_view field)
{
    return field == "unit_price" || field == "amount";
}

bool isWhole(std::string_view text)
{
    return trimmed(text).find_first_not_of("+-0123456789") == std::string_view::npos;
}

/// The column that says the currency; a new one at the end where there is none.
std::size_t currencyColumn(CsvTable &table, CsvColumns &columns)
{
    const auto found = std::find(columns.begin(), columns.end(), "currency");
    if (found != columns.end())
        return std::size_t(found - columns.begin());
    columns.emplace_back("currency");
    table.header.emplace_back("currency");
    for (auto &row : table.rows)
        row.emplace_back();
    return columns.size() - 1;
}

/// What its other prices say of "1,234": nothing, where they do not agree; `otherwise` where none
/// of them says anything.
DecimalSign signOfColumn(const CsvTable &table, std::size_t place, DecimalSign otherwise)
{
    auto sign = DecimalSign::Unknown;
    for (const auto &row : table.rows) {
        const auto said = stores::decimalSignIn(row[place]);
        if (said == DecimalSign::Unknown || said == sign)
            continue;
        if (sign != DecimalSign::Unknown)
            return DecimalSign::Unknown;
        sign = said;
    }
    return sign == DecimalSign::Unknown ? otherwise : sign;
}

/// In which currencies a list was read.
struct Currencies {
    std::size_t unnamed = 0;
    /// That of prices that name none.
    std::string usual;
    std::set<std::string> others;

    void add(const std::string &currency, bool isNamed)
    {
        if (isNamed) {
            others.insert(currency);
        } else {
            ++unnamed;
            usual = currency;
        }
    }

    std::optional<Message> told() const
    {
        auto strange = others;
        strange.erase(usual);
        if (unnamed == 0 || strange.empty())
            return std::nullopt;
        return Message{
            "Prices without a currency ({0}) are taken in {1}, though others of the "
            "list are in {2}.",
            {std::to_string(unnamed), usual, fmt::format("{}", fmt::join(strange, ", "))}};
    }
};

} // namespace

std::optional<Message> rewritePrices(CsvTable &table, CsvColumns &columns, std::string_view usual,
                                     DecimalSign own)
{
    const auto price = std::find_if(columns.begin(), columns.end(), isPrice);
    if (price == columns.end())
        return std::nullopt;
    const auto place = std::size_t(price - columns.begin());
    if (table.header[place] == *price)
        return std::nullopt;
    const auto currency = currencyColumn(table, columns);
    const auto sign = signOfColumn(table, place, own);
    Currencies currencies;
    for (std::size_t line = 0; line < table.rows.size(); ++line) {
        auto &row = table.rows[line];
        const std::string named(trimmed(row[currency]));
        if (trimmed(row[place]).empty())
            continue;
        const auto money = stores::readMoney(row[place], named.empty() ? usual : named, sign);
        if (!money) {
            table.refusals.insert_or_assign({line, place}, money.reason());
            // Left as it is, a whole number would pass for minor units.
            if (isWhole(row[place]))
                row[place] += " ?";
            continue;
        }
        currencies.add(money->currency,
                       !named.empty() || bool(stores::readMoney(row[place], {}, sign)));
        row[place] = std::to_string(money->minor_units);
        row[currency] = money->currency;
    }
    return currencies.told();
}

} // namespace lastrivet::exchange
