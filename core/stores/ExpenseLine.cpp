// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stores/ExpenseLine.h"

#include "core/base/Trimmed.h"
#include "core/stores/MoneyText.h"

#include <algorithm>

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

} // namespace

Result<Expense, Message> readExpenseLine(std::string_view line, std::string_view usualCurrency)
{
    std::string_view rest = trimmed(line);
    std::string amount;
    if (isCode(firstWord(rest))) {
        amount = std::string(firstWord(rest)) + ' ';
        rest = behind(rest, firstWord(rest));
    }
    amount += firstWord(rest);
    rest = behind(rest, firstWord(rest));
    if (isCode(firstWord(rest)) && amount.find(' ') == std::string::npos) {
        amount += ' ' + std::string(firstWord(rest));
        rest = behind(rest, firstWord(rest));
    }
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
