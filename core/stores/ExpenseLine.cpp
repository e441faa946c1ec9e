// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stores/ExpenseLine.h"

#include "core/base/Trimmed.h"
#include "core/stores/MoneyText.h"

#include <algorithm>
#include <cstddef>
#include <string>

namespace lastrivet::stores {

namespace {

std::string_view firstWord(std::string_view text)
{
    return text.substr(0, text.find(' '));
}

bool isCode(std::string_view word)
{
    return word.size() == 3 &&
           std::all_of(word.begin(), word.end(), [](char c) { return c >= 'A' && c <= 'Z'; });
}

std::string_view behind(std::string_view text, std::string_view word)
{
    return trimmed(text.substr(std::min(word.size(), text.size())));
}

bool isFigures(std::string_view word)
{
    return !word.empty() && word.find_first_not_of("0123456789") == std::string_view::npos;
}

/// "234" or "234,56", behind a blank that parts thousands.
bool isGroup(std::string_view word)
{
    constexpr std::size_t group = 3;
    const auto mark = word.find_first_of(".,");
    const auto whole = word.substr(0, mark);
    return whole.size() == group && isFigures(whole) &&
           (mark == std::string_view::npos || isFigures(word.substr(mark + 1)));
}

/// Takes `USD` or a sign of money off the front; empty when there is none.
std::string takeCurrency(std::string_view &rest)
{
    const auto word = firstWord(rest);
    if (!isCode(word) && word != "€" && word != "£" && word != "$")
        return {};
    rest = behind(rest, word);
    return std::string(word);
}

/// Takes `34.90` or, as French writes it, `1 234,56` off the front.
std::string takeFigures(std::string_view &rest)
{
    constexpr std::size_t longestFirst = 3;
    const auto first = firstWord(rest);
    std::string figures(first);
    rest = behind(rest, first);
    bool mayGoOn = isFigures(first) && first.size() <= longestFirst;
    while (mayGoOn && isGroup(firstWord(rest))) {
        const auto group = firstWord(rest);
        figures += ' ' + std::string(group);
        mayGoOn = isFigures(group);
        rest = behind(rest, group);
    }
    return figures;
}

/// "12 250 rivets" cost 12, or 12250.
bool mayBeTwoNumbers(std::string_view figures)
{
    return figures.find(' ') != std::string_view::npos &&
           figures.find_first_of(".,") == std::string_view::npos;
}

Message askWhich(const std::string &figures)
{
    std::string together = figures;
    std::erase(together, ' ');
    return {"“{0}” may be one amount, or an amount and a count; write {1}, or the currency behind "
            "the amount.",
            {figures, together}};
}

} // namespace

Result<Expense, Message> readExpenseLine(std::string_view line, std::string_view usualCurrency)
{
    std::string_view rest = trimmed(line);
    std::string amount = takeCurrency(rest);
    const std::string figures = takeFigures(rest);
    const std::string behindIt = amount.empty() ? takeCurrency(rest) : std::string();
    if (mayBeTwoNumbers(figures) && behindIt.empty())
        return askWhich(figures);
    amount += (amount.empty() ? "" : " ") + figures + (behindIt.empty() ? "" : " ") + behindIt;
    const auto money = readMoney(amount, usualCurrency);
    if (!money)
        return money.reason();
    Expense expense;
    expense.amount = money->minor_units;
    expense.currency = money->currency;
    if (const auto colon = rest.find(':'); colon != std::string_view::npos) {
        expense.category = trimmed(rest.substr(0, colon));
        rest = trimmed(rest.substr(colon + 1));
    }
    if (rest.empty())
        return Message{"Say what was paid for behind the amount.", {}};
    expense.what = rest;
    return expense;
}

} // namespace lastrivet::stores
