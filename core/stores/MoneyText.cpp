// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stores/MoneyText.h"

#include "core/base/Digits.h"
#include "core/base/Id.h"
#include "core/base/Trimmed.h"
#include "core/stores/Currency.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <fmt/format.h>
#include <optional>
#include <vector>

namespace lastrivet::stores {

namespace {

// ISO 4217, as Unicode CLDR in ICU 72 has them; of the Iraqi dinar, glibc 2.36.
constexpr std::array<std::string_view, 17> withoutDecimals{"BIF", "CLP", "DJF", "GNF", "ISK", "JPY",
                                                           "KMF", "KRW", "PYG", "RWF", "UGX", "UYI",
                                                           "VND", "VUV", "XAF", "XOF", "XPF"};
constexpr std::array<std::string_view, 7> withThree{"BHD", "IQD", "JOD", "KWD",
                                                    "LYD", "OMR", "TND"};

bool isLetter(char c)
{
    return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
}

bool startsWithCode(std::string_view text)
{
    constexpr std::size_t length = 3;
    return text.size() > length && std::all_of(text.begin(), text.begin() + length, isLetter) &&
           !isLetter(text[length]);
}

bool endsWithCode(std::string_view text)
{
    constexpr std::size_t length = 3;
    return text.size() > length && std::all_of(text.end() - length, text.end(), isLetter) &&
           !isLetter(text[text.size() - length - 1]);
}

std::string upper(std::string_view code)
{
    std::string letters(code);
    for (char &c : letters)
        c = c >= 'a' && c <= 'z' ? char(c - 'a' + 'A') : c;
    return letters;
}

bool take(std::string_view &text, std::string_view sign)
{
    const auto place = text.find(sign);
    if (place != 0 && (place == std::string_view::npos || place + sign.size() != text.size()))
        return false;
    text = place == 0 ? text.substr(sign.size()) : text.substr(0, place);
    text = trimmed(text);
    return true;
}

/// Takes the currency off the text; `usual` where it names none. Three letters may be no currency.
std::string takeCurrency(std::string_view &text, std::string_view usual)
{
    constexpr std::size_t length = 3;
    if (startsWithCode(text)) {
        const auto code = upper(text.substr(0, length));
        text = trimmed(text.substr(length));
        return code;
    }
    if (endsWithCode(text)) {
        const auto code = upper(text.substr(text.size() - length));
        text = trimmed(text.substr(0, text.size() - length));
        return code;
    }
    if (take(text, "€"))
        return "EUR";
    if (take(text, "£"))
        return "GBP";
    // There are many dollars: which ones, the project knows.
    if (usual.ends_with('D'))
        take(text, "$");
    return upper(trimmed(usual));
}

/// Without what only parts thousands: spaces of any kind and apostrophes.
std::string withoutSpaces(std::string_view text)
{
    std::string plain;
    while (!text.empty()) {
        bool isSpace = false;
        for (const std::string_view space : {" ", "'", "\u00a0", "\u202f", "\u2009"}) {
            if (text.starts_with(space)) {
                text.remove_prefix(space.size());
                isSpace = true;
                break;
            }
        }
        if (!isSpace) {
            plain += text.front();
            text.remove_prefix(1);
        }
    }
    return plain;
}

struct Figures {
    std::string whole;
    std::string decimals;
};

bool areGroups(std::string_view whole)
{
    constexpr std::size_t group = 3;
    auto end = whole.size();
    for (auto mark = whole.find_last_of(".,"); mark != std::string_view::npos;
         mark = mark == 0 ? std::string_view::npos : whole.find_last_of(".,", mark - 1)) {
        if (end - mark - 1 != group)
            return false;
        end = mark;
    }
    return end > 0 && end <= group;
}

/// Where the decimals begin, if there are any: at the last stop or comma, when it does not part
/// thousands.
std::optional<std::size_t> decimalMark(std::string_view text, int decimals)
{
    constexpr std::size_t group = 3;
    const auto last = text.find_last_of(".,");
    if (last == std::string_view::npos)
        return std::nullopt;
    const auto first = text.find_first_of(".,");
    if (first != last)
        return text[first] != text[last] ? std::optional(last) : std::nullopt;
    const bool isGroup = text.size() - last - 1 == group && decimals != int(group) && last > 0 &&
                         last <= group && text[0] != '0';
    return isGroup ? std::nullopt : std::optional(last);
}

std::optional<Figures> figuresIn(std::string_view text, int decimals)
{
    const auto mark = decimalMark(text, decimals);
    const auto whole = text.substr(0, mark.value_or(text.size()));
    Figures figures;
    if (whole.find_first_of(".,") != std::string_view::npos && !areGroups(whole))
        return std::nullopt;
    std::copy_if(whole.begin(), whole.end(), std::back_inserter(figures.whole),
                 [](char c) { return c != '.' && c != ','; });
    if (mark)
        figures.decimals = text.substr(*mark + 1);
    const auto all = figures.whole + figures.decimals;
    if (all.empty() || !std::all_of(all.begin(), all.end(), isDigit))
        return std::nullopt;
    return figures;
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

Result<Money, Message> readMoney(std::string_view text, std::string_view usual)
{
    const std::string written(trimmed(text));
    std::string_view rest = written;
    const auto currency = takeCurrency(rest, usual);
    const int decimals = decimalsOf(currency);
    const auto plain = withoutSpaces(rest);
    if (plain.starts_with('-') || plain.starts_with("\u2212"))
        return Message{"“{0}” is below zero: amounts are of what was paid.", {written}};
    auto figures = figuresIn(plain, decimals);
    if (!figures)
        return Message{"“{0}” is no amount; write it like 12.50.", {written}};
    if (!isCurrency(currency) && currency != upper(trimmed(usual)))
        return Message{"“{0}”: {1} is the code of no currency.", {written, currency}};
    if (currency.empty())
        return Message{"“{0}” names no currency; write it behind, in three letters.", {written}};
    if (figures->decimals.size() > std::size_t(decimals))
        return Message{"“{0}” has more decimals than {1} has.", {written, currency}};
    figures->decimals.resize(std::size_t(decimals), '0');
    const auto all = figures->whole + figures->decimals;
    std::int64_t minor = 0;
    const auto [end, error] = std::from_chars(all.data(), all.data() + all.size(), minor);
    if (error != std::errc{} || minor > largestId)
        return Message{"“{0}” is too large an amount to be kept.", {written}};
    return Money{minor, currency};
}

} // namespace lastrivet::stores
