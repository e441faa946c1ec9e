// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stores/MoneyText.h"

#include "core/base/CaseFold.h"
#include "core/base/Digits.h"
#include "core/base/Id.h"
#include "core/base/Trimmed.h"
#include "core/stores/Currency.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <fmt/format.h>
#include <iterator>
#include <optional>
#include <span>
#include <utility>

namespace lastrivet::stores {

namespace {

// ISO 4217, as Unicode CLDR in ICU 72 has them; of the Iraqi dinar, glibc 2.36.
constexpr std::array<std::string_view, 17> withoutDecimals{"BIF", "CLP", "DJF", "GNF", "ISK", "JPY",
                                                           "KMF", "KRW", "PYG", "RWF", "UGX", "UYI",
                                                           "VND", "VUV", "XAF", "XOF", "XPF"};
constexpr std::array<std::string_view, 7> withThree{"BHD", "IQD", "JOD", "KWD",
                                                    "LYD", "OMR", "TND"};

bool startsWithCode(std::string_view text)
{
    constexpr std::size_t length = 3;
    return text.size() > length &&
           std::all_of(text.begin(), text.begin() + length, isAsciiLetter) &&
           !isAsciiLetter(text[length]);
}

bool endsWithCode(std::string_view text)
{
    constexpr std::size_t length = 3;
    return text.size() > length && std::all_of(text.end() - length, text.end(), isAsciiLetter) &&
           !isAsciiLetter(text[text.size() - length - 1]);
}

/// Takes a word or sign, given in small letters, off the front or the end.
bool take(std::string_view &text, std::string_view sign)
{
    const auto place = asciiLower(text).find(sign);
    if (place != 0 && (place == std::string_view::npos || place + sign.size() != text.size()))
        return false;
    text = place == 0 ? text.substr(sign.size()) : text.substr(0, place);
    text = trimmed(text);
    return true;
}

/// How people write a currency, in small letters, and its code.
using Saying = std::pair<std::string_view, std::string_view>;
/// Dollars of one country, which begin or end like a code. "$can" comes before its beginning.
constexpr std::array<Saying, 7> dollars{{{"us$", "USD"},
                                         {"$us", "USD"},
                                         {"ca$", "CAD"},
                                         {"can$", "CAD"},
                                         {"$can", "CAD"},
                                         {"$ca", "CAD"},
                                         {"au$", "AUD"}}};
constexpr std::array<Saying, 8> currencyWords{{{"eur", "EUR"},
                                               {"euro", "EUR"},
                                               {"euros", "EUR"},
                                               {"usd", "USD"},
                                               {"cad", "CAD"},
                                               {"aud", "AUD"},
                                               {"gbp", "GBP"},
                                               {"chf", "CHF"}}};

/// Takes the currency off the text; `usual` where it names none. Three letters may be no currency.
std::string takeCurrency(std::string_view &text, std::string_view usual)
{
    constexpr std::size_t length = 3;
    for (const auto &[said, code] : dollars) {
        if (take(text, said))
            return std::string(code);
    }
    if (startsWithCode(text)) {
        const auto code = asciiUpper(text.substr(0, length));
        text = trimmed(text.substr(length));
        return code;
    }
    if (endsWithCode(text)) {
        const auto code = asciiUpper(text.substr(text.size() - length));
        text = trimmed(text.substr(0, text.size() - length));
        return code;
    }
    for (const std::string_view euros : {"€", "euros", "euro"}) {
        if (take(text, euros))
            return "EUR";
    }
    if (take(text, "£"))
        return "GBP";
    // There are many dollars: which ones, the project knows.
    if (usual.ends_with('D'))
        take(text, "$");
    return asciiUpper(trimmed(usual));
}

/// With one kind of space and one of apostrophe.
std::string withPlainSpaces(std::string_view text)
{
    constexpr std::array<std::pair<std::string_view, char>, 4> kinds{
        {{"\u00a0", ' '}, {"\u202f", ' '}, {"\u2009", ' '}, {"\u2019", '\''}}};
    std::string plain(text);
    for (const auto &[kind, sign] : kinds) {
        for (auto at = plain.find(kind); at != std::string::npos; at = plain.find(kind, at))
            plain.replace(at, kind.size(), 1, sign);
    }
    return plain;
}

constexpr std::size_t groupSize = 3;

/// "1234", "12 250", "1.234.567": in groups of three, which one sign alone parts, or in none.
bool areGroups(std::string_view whole)
{
    const auto first = whole.find_first_not_of("0123456789");
    if (first == std::string_view::npos)
        return true;
    if (first == 0 || first > groupSize)
        return false;
    for (auto at = first; at < whole.size(); at += groupSize + 1) {
        const auto group = whole.substr(at + 1, groupSize);
        if (whole[at] != whole[first] || group.size() != groupSize || !isAllDigits(group))
            return false;
    }
    return true;
}

/// "1,234": one sign, and before and behind it what thousands are parted into.
bool mayPartThousands(std::string_view text, std::size_t mark)
{
    const auto whole = text.substr(0, mark);
    const auto behind = text.substr(mark + 1);
    return isAllDigits(whole) && whole.size() <= groupSize && whole.front() != '0' &&
           isAllDigits(behind) && behind.size() == groupSize;
}

DecimalSign signOf(char mark)
{
    return mark == ',' ? DecimalSign::Comma : DecimalSign::Point;
}

/// What the last stop or comma of an amount says.
enum class Mark { Decimals, Thousands, Either };

Mark meaningOf(std::string_view text, std::size_t mark, int decimals, DecimalSign sign)
{
    const auto first = text.find_first_of(".,");
    if (first != mark)
        return text[first] == text[mark] ? Mark::Thousands : Mark::Decimals;
    if (!mayPartThousands(text, mark) || signOf(text[mark]) == sign)
        return Mark::Decimals;
    const bool hasThree = decimals >= int(groupSize);
    if (sign != DecimalSign::Unknown)
        return hasThree ? Mark::Either : Mark::Thousands;
    // With a stop it is as `figureOf` has it.
    if (hasThree && text[mark] == '.')
        return Mark::Decimals;
    return decimals == 0 ? Mark::Thousands : Mark::Either;
}

struct Figures {
    std::string whole;
    std::string decimals;
    /// The decimals may be the last three figures of thousands.
    bool is_either = false;

    std::string together() const { return whole + decimals; }
};

std::optional<Figures> figuresIn(std::string_view text, int decimals, DecimalSign sign)
{
    auto mark = text.find_last_of(".,");
    Figures figures;
    if (mark != std::string_view::npos) {
        const auto meaning = meaningOf(text, mark, decimals, sign);
        figures.is_either = meaning == Mark::Either;
        mark = meaning == Mark::Thousands ? std::string_view::npos : mark;
    }
    const auto whole = text.substr(0, mark);
    if (!areGroups(whole))
        return std::nullopt;
    std::copy_if(whole.begin(), whole.end(), std::back_inserter(figures.whole), isDigit);
    if (mark != std::string_view::npos)
        figures.decimals = text.substr(mark + 1);
    return isAllDigits(figures.together()) ? std::optional(figures) : std::nullopt;
}

/// Takes the end off "12,-" and "12.–", as whole amounts are written by hand, and answers which
/// sign stands there before decimals.
std::optional<DecimalSign> takeDash(std::string_view &text)
{
    const auto length = lengthOfDashes(text);
    if (length == 0)
        return std::nullopt;
    const char mark = text[text.size() - length];
    text.remove_suffix(length);
    return signOf(mark);
}

Message askWhich(const std::string &written, const Figures &figures, DecimalSign sign)
{
    const std::string mark = sign == DecimalSign::Comma ? "," : ".";
    return {"“{0}” may be {1} or {2}; write {1} when that is meant.",
            {written, figures.together(), figures.whole + mark + figures.decimals}};
}

} // namespace

int decimalsOf(std::string_view currency)
{
    if (std::find(withoutDecimals.begin(), withoutDecimals.end(), currency) !=
        withoutDecimals.end())
        return 0;
    if (std::find(withThree.begin(), withThree.end(), currency) != withThree.end())
        return 3;
    return currency == "CLF" || currency == "UYW" ? 4 : 2;
}

std::string figureOf(const Money &money)
{
    const auto decimals = std::size_t(decimalsOf(money.currency));
    const bool isNegative = money.minor_units < 0;
    const auto size =
        isNegative ? 0 - std::uint64_t(money.minor_units) : std::uint64_t(money.minor_units);
    auto figures = fmt::format("{:0{}}", size, decimals + 1);
    if (decimals > 0)
        figures.insert(figures.size() - decimals, 1, '.');
    return isNegative ? "-" + figures : figures;
}

std::string currencySaid(std::string_view word)
{
    const auto small = asciiLower(word);
    for (const auto sayings :
         {std::span<const Saying>(dollars), std::span<const Saying>(currencyWords)}) {
        for (const auto &[said, code] : sayings) {
            if (said == small)
                return std::string(code);
        }
    }
    return {};
}

std::string currencyCode(std::string_view text)
{
    const auto word = trimmed(text);
    if (auto said = currencySaid(word); !said.empty())
        return said;
    if (word == "€" || word == "£")
        return word == "€" ? "EUR" : "GBP";
    const auto code = asciiUpper(word);
    return isCurrency(code) ? code : std::string();
}

std::optional<std::int64_t> withDecimals(std::int64_t minorUnits, int more)
{
    constexpr std::int64_t ten = 10;
    for (; more > 0; --more) {
        if (__builtin_mul_overflow(minorUnits, ten, &minorUnits) || minorUnits > largestId)
            return std::nullopt;
    }
    for (; more < 0; ++more) {
        if (minorUnits % ten != 0)
            return std::nullopt;
        minorUnits /= ten;
    }
    return minorUnits;
}

std::size_t lengthOfDashes(std::string_view amount)
{
    for (const std::string_view dashes : {"--", "-", "\u2013", "\u2014"}) {
        if (!amount.ends_with(dashes))
            continue;
        const auto whole = amount.substr(0, amount.size() - dashes.size());
        const bool isMarked = whole.ends_with(',') || whole.ends_with('.');
        if (isMarked && whole.size() > 1 && isDigit(whole[whole.size() - 2]))
            return dashes.size() + 1;
    }
    return 0;
}

DecimalSign decimalSignIn(std::string_view text)
{
    const std::string plain = withPlainSpaces(text);
    std::string_view rest = trimmed(plain);
    takeCurrency(rest, "USD");
    if (const auto sign = takeDash(rest))
        return *sign;
    const auto mark = rest.find_last_of(".,");
    if (mark == std::string_view::npos || !figuresIn(rest, int(groupSize), signOf(rest[mark])))
        return DecimalSign::Unknown;
    const auto first = rest.find_first_of(".,");
    if (first != mark && rest[first] == rest[mark])
        return rest[mark] == ',' ? DecimalSign::Point : DecimalSign::Comma;
    return mayPartThousands(rest, mark) ? DecimalSign::Unknown : signOf(rest[mark]);
}

Result<Money, Message> readMoney(std::string_view text, std::string_view usual, DecimalSign sign)
{
    const std::string written(trimmed(text));
    const std::string plain = withPlainSpaces(written);
    std::string_view rest = trimmed(plain);
    const auto currency = takeCurrency(rest, usual);
    const int decimals = decimalsOf(currency);
    const bool hasFigure = rest.find_first_of("0123456789") != std::string_view::npos;
    if (hasFigure && (rest.starts_with('-') || rest.starts_with("\u2212")))
        return Message{"“{0}” is below zero: amounts are of what was paid.", {written}};
    sign = takeDash(rest).value_or(sign);
    auto figures = figuresIn(rest, decimals, sign);
    if (!figures)
        return Message{"“{0}” is no amount; write it like 12.50.", {written}};
    if (!isCurrency(currency) && currency != asciiUpper(trimmed(usual)))
        return Message{"“{0}”: {1} is the code of no currency.", {written, currency}};
    if (currency.empty())
        return Message{"“{0}” names no currency; write it behind, in three letters.", {written}};
    if (figures->is_either)
        return askWhich(written, *figures, sign);
    if (figures->decimals.size() > std::size_t(decimals))
        return Message{"“{0}” has more decimals than {1} has.", {written, currency}};
    figures->decimals.resize(std::size_t(decimals), '0');
    const auto all = figures->together();
    std::int64_t minor = 0;
    const auto [end, error] = std::from_chars(all.data(), all.data() + all.size(), minor);
    if (error != std::errc{} || minor > largestId)
        return Message{"“{0}” is too large an amount to be kept.", {written}};
    return Money{minor, currency};
}

} // namespace lastrivet::stores
