// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/DurationText.h"

#include "core/base/CaseFold.h"
#include "core/base/Digits.h"
#include "core/entry/DayText.h"
#include "core/entry/LineWords.h"
#include "core/entry/SaidNumber.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <iterator>
#include <string>

namespace lastrivet::entry {

namespace {

/// The most words that say one length of time.
constexpr std::size_t mostWords = 5;
constexpr std::int64_t longestMinutes = 99 * 60;
/// Far beyond any sense, and far below any limit of the sums here.
constexpr std::int64_t longestNumber = 1'000'000'000;

/// Lengths that are said in words, with no spaces between them.
struct Said {
    std::string_view words;
    std::int64_t minutes;
};
constexpr Said saidLengths[] = {
    {"halfanhour", 30},
    {"ahalfhour", 30},
    {"halfhour", 30},
    {"aquarterofanhour", 15},
    {"einehalbestunde", 30},
    {"halbestunde", 30},
    {"eineviertelstunde", 15},
    {"viertelstunde", 15},
    {"einedreiviertelstunde", 45},
    {"dreiviertelstunde", 45},
    {"anderthalbstunden", 90},
    {"eineinhalbstunden", 90},
    {"unedemi-heure", 30},
    {"demi-heure", 30},
    {"unedemieheure", 30},
    {"3viertelstunde", 45},
    {"unquartd'heure", 15},
    {"unquartd’heure", 15},
    {"uneheureetdemie", 90},
    {"anhour", 60},
    {"anhourandahalf", 90},
};

/// Takes the digits at the front; empty when there are none.
std::optional<std::int64_t> takeNumber(std::string_view &text)
{
    std::int64_t number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc{} || number < 0)
        return std::nullopt;
    text.remove_prefix(std::size_t(end - text.data()));
    return number;
}

bool takeWord(std::string_view &text, std::initializer_list<std::string_view> words)
{
    for (const auto word : words) {
        if (text.starts_with(word)) {
            text.remove_prefix(word.size());
            return true;
        }
    }
    return false;
}

bool takeHour(std::string_view &text)
{
    return takeWord(text, {"hours", "hour", "hrs", "hr", "heures", "heure", "h", "stunden",
                           "stunde", "std.", "std"});
}

bool takeMinute(std::string_view &text)
{
    return takeWord(text, {"minutes", "minuten", "minute", "mins", "min", "mn", "m"});
}

/// What parts hours from minutes that are called so: "1 h. 30 min", "1 hour and 30 minutes".
bool takeJoin(std::string_view &text)
{
    return takeWord(text, {".", ",", "and", "und", "et"});
}

/// What stands behind the point of a decimal fraction of hours, in minutes.
std::optional<std::int64_t> takeFraction(std::string_view &text)
{
    const std::size_t before = text.size();
    const auto digits = takeNumber(text);
    const std::size_t count = before - text.size();
    if (!digits || count > 4)
        return std::nullopt;
    std::int64_t scale = 1;
    for (std::size_t i = 0; i < count; ++i)
        scale *= 10;
    return (*digits * 60 + scale / 2) / scale;
}

/// The half of "2 heures et demie", of "2 and a half hours" and of "2½ h".
std::optional<std::int64_t> takeSaidRest(std::string_view &text)
{
    if (takeWord(text, {"etdemie", "etdemi", "andahalf", "undeinehalbe", "einhalb", "½"}))
        return 30;
    if (takeWord(text, {"etquart", "andaquarter", "¼"}))
        return 15;
    if (takeWord(text, {"¾"}))
        return 45;
    return std::nullopt;
}

/// The front of "½ h" and "3/4 h".
std::optional<std::int64_t> takePartOfHour(std::string_view &text)
{
    if (takeWord(text, {"½", "1/2"}))
        return 30;
    if (takeWord(text, {"¼", "1/4"}))
        return 15;
    if (takeWord(text, {"¾", "3/4"}))
        return 45;
    return std::nullopt;
}

/// The "3stunden" of "dreistunden" and the "3einhalbstunden" of "dreieinhalbstunden"; what counts
/// neither hours nor minutes, called by their name, stays as it is.
std::string inDigits(std::string_view text)
{
    constexpr std::array<std::string_view, 10> counted{
        "hour", "hr",      "heure",        "std",      "stunde",
        "min",  "einhalb", "undeinehalbe", "andahalf", "andaquarter"};
    std::string_view rest = text;
    const auto number = takeSaidNumber(rest);
    const bool isCounting =
        number && std::ranges::any_of(counted, [&](auto word) { return rest.starts_with(word); });
    return isCounting ? std::to_string(*number) + std::string(rest) : std::string(text);
}

/// The "thirty" of "two hours thirty" and the "dix" of "une heure dix minutes"; of "two hours six
/// rivets" nothing.
std::optional<std::int64_t> takeSaidMinutes(std::string_view &text)
{
    constexpr std::int64_t leastRound = 15;
    std::string_view rest = text;
    const auto number = takeSaidNumber(rest);
    std::string_view unit = rest;
    if (!number || (*number < leastRound && !takeMinute(unit)))
        return std::nullopt;
    text = rest;
    return number;
}

std::optional<std::int64_t> minutesOf(std::string_view text)
{
    const auto said = std::ranges::find(saidLengths, text, &Said::words);
    if (said != std::end(saidLengths))
        return said->minutes;
    if (const auto part = takePartOfHour(text))
        return takeHour(text) && text.empty() ? part : std::nullopt;
    const bool isPoint = text.starts_with('.') || text.starts_with(',');
    const auto whole = isPoint ? std::optional<std::int64_t>{0} : takeNumber(text);
    if (!whole || *whole > longestNumber)
        return std::nullopt;
    if (takeWord(text, {".", ","})) {
        const auto part = takeFraction(text);
        return part && takeHour(text) && text.empty() ? std::optional(*whole * 60 + *part)
                                                      : std::nullopt;
    }
    if (takeMinute(text))
        return text.empty() ? whole : std::nullopt;
    if (const auto rest = takeSaidRest(text))
        return takeHour(text) && text.empty() ? std::optional(*whole * 60 + *rest) : std::nullopt;
    const bool isHour = takeHour(text);
    if (!isHour && !takeWord(text, {":"}))
        return std::nullopt;
    if (text.empty())
        return *whole * 60;
    if (const auto rest = takeSaidRest(text))
        return text.empty() ? std::optional(*whole * 60 + *rest) : std::nullopt;
    const bool isJoined = isHour && takeJoin(text);
    const bool isSaid = isHour && !text.empty() && !isDigit(text.front());
    const auto minutes = isSaid ? takeSaidMinutes(text) : takeNumber(text);
    const bool isWhole = minutes && *minutes < 60 && (takeMinute(text) || !isJoined);
    return isWhole && text.empty() ? std::optional(*whole * 60 + *minutes) : std::nullopt;
}

/// Whether a number stands in front of `end`, also one with a point behind it: "rib 1. 2h" is no
/// hour and a fifth.
bool isNumberBefore(std::string_view text, std::size_t end)
{
    if (end > 1 && (text[end - 1] == '.' || text[end - 1] == ','))
        --end;
    return end > 0 && isDigit(text[end - 1]);
}

bool beginsWithNumber(std::string_view text)
{
    return (!text.empty() && isDigit(text.front())) || takePartOfHour(text).has_value();
}

/// "rib 1 2h", "rib 1 ½ h": two numbers with a blank between them are never one.
bool hasTwoNumbersInARow(std::string_view text)
{
    for (std::size_t blank = text.find(' '); blank != std::string_view::npos;) {
        const std::size_t next = text.find_first_not_of(' ', blank);
        if (next == std::string_view::npos)
            return false;
        if (isNumberBefore(text, blank) && beginsWithNumber(text.substr(next)))
            return true;
        blank = text.find(' ', next);
    }
    return false;
}

/// "1 h 3 mar", "1 h 8 Uhr", "1 h 2 days ago": the last of the words is the day of a month, an hour
/// of the clock or a count of days, and no minutes.
bool endsInDayOrHour(const EntryWords &line, std::size_t first, std::size_t end, std::size_t last)
{
    constexpr std::array<std::string_view, 3> others{"uhr", "day", "days"};
    if (end - first < 2 || end >= last ||
        !(isMonthName(line.folded(end)) || words::isOneOf(line.folded(end), others)))
        return false;
    const std::string &number = line.folded(end - 1);
    return number.size() <= 2 && isAllDigits(number) && number <= (number.size() == 1 ? "9" : "31");
}

/// "2h, 12 rivets": behind a comma a bare number is no minutes of the hours in front of it.
bool hasNumberBehindComma(const EntryWords &line, std::size_t first, std::size_t end)
{
    if (end - first < 2 || !isAllDigits(line.folded(end - 1)))
        return false;
    const std::string before = line.text(end - 2, end - 1);
    return before.ends_with(',') || before.ends_with(';');
}

/// "zwei und eine halbe Stunde": what is said behind an "and" is the least of what is meant. Nor
/// does the half of "1 1/2 h" count alone.
bool isRestOfMore(const EntryWords &line, std::size_t first)
{
    constexpr std::array<std::string_view, 3> articles{"a", "eine", "une"};
    const std::string &word = line.folded(first);
    if (std::string_view rest = word;
        first > 0 && isAllDigits(line.folded(first - 1)) && takePartOfHour(rest))
        return true;
    const bool isSaid = !word.empty() && word.front() >= 'a' && word.front() <= 'z';
    const bool hasArticle = first > 0 && words::isOneOf(line.folded(first - 1), articles);
    const std::size_t begin = first - (hasArticle ? 1 : 0);
    return isSaid && begin > 0 && words::isOneOf(line.folded(begin - 1), words::join);
}

/// "à deux heures" is an hour of the clock, and "two or three hours" and "twenty two hours" are not
/// what the last of the words says.
bool isSaidBehindOther(const EntryWords &line, std::size_t first)
{
    constexpr std::array<std::string_view, 3> either{"or", "oder", "ou"};
    std::string close = line.joined(first, std::min(first + mostWords, line.count()));
    std::erase(close, ' ');
    if (first == 0 || inDigits(close) == close)
        return false;
    const std::string &before = line.folded(first - 1);
    const bool isBehindDash =
        first > 1 && line.isDash(first - 1) && isSaidNumber(line.folded(first - 2));
    return isBehindDash || isSaidNumber(before) || words::isOneOf(before, either) ||
           words::isOneOf(before, words::at) || words::isOneOf(before, words::until);
}

/// "15 Min.", and "2h." and "1h30m." at the end of a sentence. "14:30." may be a time of day, and
/// "a cable of 9 m." is no time.
bool endsInAbbreviation(std::string_view close)
{
    if (close.size() < 3 || close.back() != '.' || isDigit(close[close.size() - 2]))
        return false;
    const auto inFront = close.substr(0, close.size() - 2);
    const bool saysHours =
        std::ranges::any_of(inFront, [](char c) { return c >= 'a' && c <= 'z'; });
    return !close.ends_with("m.") || !isDigit(inFront.back()) || saysHours;
}

} // namespace

std::optional<std::int64_t> readMinutes(std::string_view text)
{
    std::string close = folded(text);
    if (hasTwoNumbersInARow(close))
        return std::nullopt;
    std::erase(close, ' ');
    if (close.ends_with(':'))
        return std::nullopt;
    if (endsInAbbreviation(close))
        close.pop_back();
    std::string_view rest = close;
    const bool isNegative = takeWord(rest, {"-", "−"});
    const auto minutes = minutesOf(inDigits(rest));
    return minutes && isNegative ? std::optional(-*minutes) : minutes;
}

LengthRead readLength(const EntryWords &line, std::size_t first, std::size_t last)
{
    // "LA - 2h" is no negative time.
    if (first >= last || line.isDash(first) || isRestOfMore(line, first) ||
        isSaidBehindOther(line, first))
        return {};
    for (std::size_t count = std::min(mostWords, last - first); count > 0; --count) {
        if (endsInDayOrHour(line, first, first + count, last) ||
            hasNumberBehindComma(line, first, first + count))
            continue;
        if (const auto minutes = readMinutes(line.joined(first, first + count)))
            return {*minutes, count};
    }
    return {};
}

std::optional<Minutes> parseDuration(std::string_view text)
{
    const auto minutes = readMinutes(text);
    if (!minutes || *minutes <= 0 || *minutes > longestMinutes)
        return std::nullopt;
    return Minutes{*minutes};
}

} // namespace lastrivet::entry
