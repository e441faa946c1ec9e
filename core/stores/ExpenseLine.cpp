// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stores/ExpenseLine.h"

#include "core/base/CaseFold.h"
#include "core/base/Digits.h"
#include "core/base/Trimmed.h"
#include "core/stores/Currency.h"
#include "core/stores/MoneyText.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <optional>
#include <string>

namespace lastrivet::stores {

namespace {

/// Without the colon behind it, which parts the category.
std::string_view firstWord(std::string_view text)
{
    auto word = text.substr(0, text.find(' '));
    if (word.size() > 1 && word.ends_with(':'))
        word.remove_suffix(1);
    return word;
}

bool isCode(std::string_view word)
{
    return word.size() == 3 &&
           std::all_of(word.begin(), word.end(), [](char c) { return c >= 'A' && c <= 'Z'; });
}

/// "KIT" of "12 KIT: skins" is a category, "EUR" of "12 EUR: skins" the currency.
bool isCodeIn(std::string_view text, std::string_view word)
{
    return isCode(word) && (!text.substr(word.size()).starts_with(':') || isCurrency(word));
}

std::string_view behind(std::string_view text, std::string_view word)
{
    return trimmed(text.substr(std::min(word.size(), text.size())));
}

constexpr std::array<std::string_view, 3> signs{"€", "£", "$"};

std::string_view withoutSignInFront(std::string_view word)
{
    for (const std::string_view sign : signs)
        word.remove_prefix(word.starts_with(sign) ? sign.size() : 0);
    return word;
}

std::string_view withoutSignBehind(std::string_view word)
{
    for (const std::string_view sign : signs)
        word.remove_suffix(word.ends_with(sign) ? sign.size() : 0);
    return word;
}

std::string_view withoutSign(std::string_view word)
{
    return withoutSignInFront(withoutSignBehind(word));
}

/// "234" or "234,56", behind a blank that parts thousands.
bool isGroup(std::string_view word)
{
    constexpr std::size_t group = 3;
    word.remove_suffix(lengthOfDashes(word));
    const auto mark = word.find_first_of(".,");
    const auto whole = word.substr(0, mark);
    return whole.size() == group && isAllDigits(whole) &&
           (mark == std::string_view::npos || isAllDigits(word.substr(mark + 1)));
}

/// Takes `USD`, `euros` or a sign of money off the front; empty when there is none.
std::string takeCurrency(std::string_view &rest)
{
    const auto word = firstWord(rest);
    const auto said = currencySaid(word);
    if (said.empty() && !isCodeIn(rest, word) &&
        std::find(signs.begin(), signs.end(), word) == signs.end())
        return {};
    rest = behind(rest, word);
    return said.empty() ? std::string(word) : said;
}

/// Takes `34.90` or, as French writes it, `1 234,56` off the front, with a sign that is joined to
/// it.
std::string takeFigures(std::string_view &rest)
{
    constexpr std::size_t longestFirst = 3;
    const auto first = firstWord(rest);
    std::string figures(first);
    rest = behind(rest, first);
    const auto bare = withoutSignInFront(first);
    bool mayGoOn = isAllDigits(bare) && bare.size() <= longestFirst;
    while (mayGoOn && isGroup(withoutSignBehind(firstWord(rest)))) {
        const auto group = firstWord(rest);
        figures += ' ' + std::string(group);
        mayGoOn = isAllDigits(group);
        rest = behind(rest, group);
    }
    return figures;
}

/// "12 250 rivets" cost 12, or 12250, and so "12 250,5 m". What has all `decimals` is one amount,
/// as is what has its sign or the dash of "12 250,-" behind it.
bool mayBeTwoNumbers(std::string_view figures, int decimals)
{
    if (figures.find(' ') == std::string_view::npos || withoutSignBehind(figures) != figures ||
        lengthOfDashes(figures) > 0)
        return false;
    const auto mark = figures.find_first_of(".,");
    return mark == std::string_view::npos || figures.size() - mark - 1 != std::size_t(decimals);
}

/// "x 4.50 glue" and "x rivets", behind a number that was no amount, but a count; no "x-ray".
bool isTimes(std::string_view text)
{
    for (const std::string_view times : {"x", "X", "×", "*"}) {
        if (!text.starts_with(times))
            continue;
        const auto behindIt = text.substr(times.size());
        return behindIt.starts_with(' ') || (!behindIt.empty() && isDigit(behindIt.front()));
    }
    return false;
}

/// What is bought by measure or by number, in small letters. Without `in`, which may be a word.
constexpr std::array<std::string_view, 27> measures{
    "mm",  "cm",     "m",   "km",  "ft",   "g",     "kg",  "lb",     "lbs",
    "oz",  "ml",     "cl",  "l",   "m²",   "m2",    "gal", "v",      "pc",
    "pcs", "pieces", "st.", "stk", "stk.", "stück", "pce", "pièces", "meter"};

/// The "mm" of "10 mm drill", behind a number that was no amount.
bool isMeasure(std::string_view word)
{
    const auto small = folded(word);
    return std::find(measures.begin(), measures.end(), small) != measures.end();
}

/// The "ct" of "50 ct washers": cost half of one, not fifty.
bool isHundredth(std::string_view word)
{
    const auto small = folded(word);
    return small == "ct" || small == "cent" || small == "cents" || small == "centimes" ||
           small == "pence" || small == "rappen";
}

Message askWhich(const std::string &figures)
{
    std::string together = figures;
    std::erase(together, ' ');
    return {"“{0}” may be one amount, or an amount and a count; write {1}, or the currency behind "
            "the amount.",
            {figures, together}};
}

/// "12 € 50 boulons" cost 12.50, or are fifty for twelve: asked of whole amounts with the currency
/// behind them, and two figures behind that.
std::optional<Message> whyCents(const std::string &figures, const std::string &currency,
                                std::string_view rest, DecimalSign sign)
{
    const std::string_view amount = withoutSignBehind(figures);
    const std::string said = currency.empty() ? figures.substr(amount.size()) : currency;
    const auto next = firstWord(rest);
    const bool isWhole = amount.find_first_not_of("0123456789 ") == std::string_view::npos;
    const bool hasCents = decimalsOf(said) == int(next.size()) && isAllDigits(next);
    // "12 € 50 m cable", "12 € 50 x bolts": a count for certain.
    const auto counted = behind(rest, next);
    const bool isCount = isTimes(counted) || isMeasure(firstWord(counted));
    if (said.empty() || !isWhole || !hasCents || isCount)
        return std::nullopt;
    const std::string whole = std::string(amount) + (sign == DecimalSign::Comma ? "," : ".");
    return Message{"“{0}” may be {1}, or {2} for a count; write {1} or {2}.",
                   {std::string(amount) + ' ' + said + ' ' + std::string(next),
                    whole + std::string(next) + ' ' + said,
                    whole + std::string(next.size(), '0') + ' ' + said}};
}

/// Asks which is meant where figures can be one amount, or an amount and a count.
std::optional<Message> whyTwoReadings(const std::string &figures, const std::string &behindIt,
                                      std::string_view rest, int decimals, DecimalSign sign)
{
    if (mayBeTwoNumbers(figures, decimals) && behindIt.empty())
        return askWhich(figures);
    return whyCents(figures, behindIt, rest, sign);
}

} // namespace

Result<Expense, Message> readExpenseLine(std::string_view line, std::string_view usualCurrency,
                                         DecimalSign sign)
{
    std::string_view rest = trimmed(line);
    std::string amount = takeCurrency(rest);
    const std::string figures = takeFigures(rest);
    const std::string behindIt = amount.empty() ? takeCurrency(rest) : std::string();
    const int decimals = decimalsOf(isCode(amount) ? amount : usualCurrency);
    if (auto why = whyTwoReadings(figures, behindIt, rest, decimals, sign))
        return *why;
    amount += (amount.empty() ? "" : " ") + figures + (behindIt.empty() ? "" : " ") + behindIt;
    const auto money = readMoney(amount, usualCurrency, sign);
    if (!money)
        return money.reason();
    if (isTimes(rest))
        return Message{"“{0}” is a count and a price: write what was paid for all of them.",
                       {std::string(trimmed(line))}};
    const bool saysMoney = amount != figures || withoutSign(figures) != figures;
    if (!saysMoney && isMeasure(firstWord(rest)))
        return Message{"“{0} {1}” is a measure and no amount: begin with what was paid.",
                       {figures, std::string(firstWord(rest))}};
    if (!saysMoney && isHundredth(firstWord(rest)))
        return Message{"“{0} {1}”: write the amount with its decimals, like 0.50.",
                       {figures, std::string(firstWord(rest))}};
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
