// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/DayText.h"

#include "core/base/CaseFold.h"
#include "core/base/Digits.h"
#include "core/base/ParseNumber.h"
#include "core/base/TwoDigitYear.h"

#include <algorithm>
#include <array>
#include <initializer_list>
#include <iterator>

namespace lastrivet::entry {

namespace {

using namespace std::chrono;
using Words = std::vector<std::string>;

/// A language's names, and how many of their letters (bytes) have to be there at least.
template <std::size_t count> struct Names {
    std::array<std::string_view, count> names;
    std::size_t fewest;
};

constexpr Names<12> monthNames[] = {
    {{"january", "february", "march", "april", "may", "june", "july", "august", "september",
      "october", "november", "december"},
     3},
    {{"januar", "februar", "märz", "april", "mai", "juni", "juli", "august", "september", "oktober",
      "november", "dezember"},
     3},
    {{"janvier", "février", "mars", "avril", "mai", "juin", "juillet", "août", "septembre",
      "octobre", "novembre", "décembre"},
     3},
};
constexpr Names<7> weekdayNames[] = {
    {{"sunday", "monday", "tuesday", "wednesday", "thursday", "friday", "saturday"}, 3},
    {{"sonntag", "montag", "dienstag", "mittwoch", "donnerstag", "freitag", "samstag"}, 5},
    {{"dimanche", "lundi", "mardi", "mercredi", "jeudi", "vendredi", "samedi"}, 4},
};

/// Weekdays as calendars shorten them, with the point that tells them from other words; "mar." is
/// left to March.
struct Short {
    std::string_view word;
    int place;
};
constexpr Short shortWeekdays[] = {
    {"so.", 0},  {"mo.", 1},  {"di.", 2},  {"mi.", 3},  {"do.", 4},  {"fr.", 5},  {"sa.", 6},
    {"dim.", 0}, {"lun.", 1}, {"mer.", 3}, {"jeu.", 4}, {"ven.", 5}, {"sam.", 6},
};

/// Days that are named by how far they are from today.
struct Named {
    std::string_view word;
    int away;
};
constexpr Named nearDays[] = {
    {"today", 0},       {"heute", 0},    {"aujourd'hui", 0}, {"aujourd’hui", 0},
    {"yesterday", -1},  {"gestern", -1}, {"hier", -1},       {"vorgestern", -2},
    {"avant-hier", -2}, {"tomorrow", 1}, {"morgen", 1},      {"demain", 1},
};

/// Parts of a day, which are read and dropped: the "morgen" of "heute morgen" is not tomorrow.
constexpr std::string_view dayParts[] = {
    "morgen",  "früh",       "vormittag", "mittag",    "abend",  "nachmittag",
    "morgens", "vormittags", "abends",    "matin",     "soir",   "nachmittags",
    "midi",    "après-midi", "morning",   "afternoon", "evening"};

/// How many words behind a day say which part of it is meant.
std::size_t partOfDay(const Words &words, std::size_t behind)
{
    return behind < words.size() && std::ranges::find(dayParts, words[behind]) != std::end(dayParts)
               ? 1
               : 0;
}

/// The place of a name or of its beginning; -1 when it is none.
template <std::size_t count, std::size_t languages>
int placeOf(const Names<count> (&all)[languages], std::string_view word)
{
    if (word.ends_with('.'))
        word.remove_suffix(1);
    for (const Names<count> &language : all) {
        for (std::size_t i = 0; i < count; ++i) {
            const std::string_view name = language.names[i];
            if (name == word || (word.size() >= language.fewest && name.starts_with(word)))
                return int(i);
        }
    }
    return -1;
}

std::optional<int> wholeNumber(std::string_view word)
{
    const auto number = parseNumber<int>(word);
    return number && *number >= 0 ? number : std::nullopt;
}

std::optional<Moment> dayOf(int yearNumber, int month, int dayNumber)
{
    const year_month_day date{year{yearNumber}, std::chrono::month{unsigned(month)},
                              std::chrono::day{unsigned(dayNumber)}};
    return date.ok() ? Moment::ofDay(sys_days{date}) : std::nullopt;
}

/// The latest such day that is not after today.
std::optional<Moment> latestDay(int month, int number, Moment today)
{
    const int thisYear = int(year_month_day{today.day()}.year());
    for (int back = 0; back <= 8; ++back) { // 29 February comes once in up to eight years
        const auto day = dayOf(thisYear - back, month, number);
        if (day && !after(*day, today))
            return day;
    }
    return std::nullopt;
}

/// A day's number, with the dot that German writes behind it, or as French writes the first.
std::optional<int> dayNumber(std::string_view word)
{
    if (word == "1er")
        return 1;
    if (word.ends_with('.'))
        word.remove_suffix(1);
    const auto number = wholeNumber(word);
    return number && *number >= 1 && *number <= 31 ? number : std::nullopt;
}

std::optional<DayRead> readMonthDay(const Words &words, std::size_t first, Moment today)
{
    if (first + 1 >= words.size())
        return std::nullopt;
    const bool isDayFirst = dayNumber(words[first]).has_value();
    const auto number = dayNumber(words[isDayFirst ? first : first + 1]);
    const int month = placeOf(monthNames, words[isDayFirst ? first + 1 : first]) + 1;
    if (!number || month == 0)
        return std::nullopt;
    if (first + 2 < words.size() && words[first + 2].size() == 4) {
        if (const auto yearNumber = wholeNumber(words[first + 2])) {
            const auto day = dayOf(*yearNumber, month, *number);
            return day ? std::optional(DayRead{*day, 3}) : std::nullopt;
        }
    }
    const auto day = latestDay(month, *number, today);
    return day ? std::optional(DayRead{*day, 2}) : std::nullopt;
}

std::optional<int> yearOf(std::string_view word, Moment today)
{
    const auto number = wholeNumber(word);
    if (!number || (word.size() != 4 && word.size() != 2))
        return std::nullopt;
    return word.size() == 4 ? number : std::optional(nearestYear(*number, today));
}

/// `3.3.`, `3.3.26` or `3.3.2026`, as German writes days; `3.3` alone may be anything.
std::optional<Moment> dottedDay(std::string_view word, Moment today)
{
    const auto first = word.find('.');
    const auto second = first == std::string_view::npos ? first : word.find('.', first + 1);
    if (second == std::string_view::npos)
        return std::nullopt;
    const auto number = dayNumber(word.substr(0, first));
    const auto month = wholeNumber(word.substr(first + 1, second - first - 1));
    const auto rest = word.substr(second + 1);
    if (!number || !month || *month < 1 || *month > 12)
        return std::nullopt;
    if (rest.empty())
        return latestDay(*month, *number, today);
    const auto yearNumber = yearOf(rest, today);
    return yearNumber ? dayOf(*yearNumber, *month, *number) : std::nullopt;
}

bool isOfDigits(std::string_view text, std::size_t most)
{
    return text.size() <= most && isAllDigits(text);
}

int weekdayAt(std::string_view word)
{
    const auto known = std::ranges::find(shortWeekdays, word, &Short::word);
    return known == std::end(shortWeekdays) ? placeOf(weekdayNames, word) : known->place;
}

std::optional<Moment> latestWeekday(int place, Moment today)
{
    const int back = int((weekday{today.day()} - weekday{unsigned(place)}).count());
    return today.dayOnly().plusDays(back == 0 ? -7 : -back);
}

std::optional<DayRead> readWeekday(const Words &words, std::size_t first, Moment today)
{
    const int place = first < words.size() ? weekdayAt(words[first]) : -1;
    const auto day = place >= 0 ? latestWeekday(place, today) : std::nullopt;
    return day ? std::optional(DayRead{*day, 1}) : std::nullopt;
}

bool isWord(const Words &words, std::size_t at, std::initializer_list<std::string_view> known)
{
    return at < words.size() && std::ranges::find(known, words[at]) != known.end();
}

/// "last Friday", "letzten Freitag", "vendredi dernier".
std::optional<DayRead> readLastWeekday(const Words &words, std::size_t first, Moment today)
{
    const bool isFirst = isWord(words, first, {"last", "letzten", "letzter"});
    auto read = readWeekday(words, first + (isFirst ? 1 : 0), today);
    if (read)
        read->words += isFirst || isWord(words, first + 1, {"dernier"}) ? 1 : 0;
    return read;
}

/// "2 days ago", "vor 2 Tagen", "il y a 2 jours".
std::optional<DayRead> readDaysAgo(const Words &words, std::size_t first, Moment today)
{
    const bool isGerman = isWord(words, first, {"vor"});
    const bool isFrench = isWord(words, first, {"il"}) && isWord(words, first + 1, {"y"}) &&
                          isWord(words, first + 2, {"a"});
    const std::size_t at = first + (isGerman ? 1 : isFrench ? 3 : 0);
    const auto count =
        at < words.size() && isOfDigits(words[at], 2) ? wholeNumber(words[at]) : std::nullopt;
    const bool areDays =
        isGerman   ? isWord(words, at + 1, {"tag", "tagen"})
        : isFrench ? isWord(words, at + 1, {"jour", "jours"})
                   : isWord(words, at + 1, {"day", "days"}) && isWord(words, at + 2, {"ago"});
    const auto day = count && areDays ? today.dayOnly().plusDays(-*count) : std::nullopt;
    const std::size_t behind = isGerman || isFrench ? 2 : 3;
    return day ? std::optional(DayRead{*day, at - first + behind}) : std::nullopt;
}

/// "14/11/2026" and "11/14/2026", of whose numbers only one can be the month.
std::optional<Moment> slashedDay(std::string_view word)
{
    constexpr int months = 12;
    const auto first = word.find('/');
    const auto second = first == std::string_view::npos ? first : word.find('/', first + 1);
    if (second == std::string_view::npos || word.size() - second != 5)
        return std::nullopt;
    const auto front = word.substr(0, first);
    const auto middle = word.substr(first + 1, second - first - 1);
    const auto yearNumber = wholeNumber(word.substr(second + 1));
    // The types of the calendar take a larger number modulo 256: "14/257/2026" is a drawing's.
    if (!isOfDigits(front, 2) || !isOfDigits(middle, 2) || !yearNumber)
        return std::nullopt;
    const int one = *wholeNumber(front);
    const int other = *wholeNumber(middle);
    if (one <= months && other <= months && one != other)
        return std::nullopt;
    return one > months ? dayOf(*yearNumber, other, one) : dayOf(*yearNumber, one, other);
}

/// "14-Nov-2026", "14.Nov.26", "14/nov/2026".
std::optional<Moment> namedDay(std::string_view word, Moment today)
{
    const auto first = word.find_first_of("-./");
    const auto second = first == std::string_view::npos ? first : word.find_last_of("-./");
    if (second == first)
        return std::nullopt;
    const auto number = dayNumber(word.substr(0, first));
    const int monthNumber = placeOf(monthNames, word.substr(first + 1, second - first - 1)) + 1;
    const auto yearNumber = yearOf(word.substr(second + 1), today);
    return number && monthNumber > 0 && yearNumber ? dayOf(*yearNumber, monthNumber, *number)
                                                   : std::nullopt;
}

} // namespace

std::optional<DayRead> readDay(const Words &words, std::size_t first, Moment today)
{
    const std::string &word = words[first];
    for (const Named &near : nearDays) {
        if (near.word != word)
            continue;
        const auto day = today.dayOnly().plusDays(near.away);
        return day ? std::optional(DayRead{*day, 1 + partOfDay(words, first + 1)}) : std::nullopt;
    }
    std::string iso = word;
    std::ranges::replace(iso, 't', 'T');
    if (const auto moment = Moment::parse(iso))
        return DayRead{*moment, 1};
    if (const auto day = dottedDay(word, today))
        return DayRead{*day, 1 + partOfDay(words, first + 1)};
    if (const auto day = slashedDay(word))
        return DayRead{*day, 1 + partOfDay(words, first + 1)};
    if (const auto day = namedDay(word, today))
        return DayRead{*day, 1 + partOfDay(words, first + 1)};
    if (const auto day = readDaysAgo(words, first, today))
        return day;
    if (const auto day = readMonthDay(words, first, today))
        return DayRead{day->day, day->words + partOfDay(words, first + day->words)};
    auto day = readLastWeekday(words, first, today);
    if (day)
        day->words += partOfDay(words, first + day->words);
    return day;
}

std::optional<DayRead> withShortYear(const DayRead &read, const Words &words, std::size_t first,
                                     Moment today)
{
    constexpr std::size_t digits = 2;
    const std::size_t behind = first + read.words;
    const bool isMonthDay =
        read.words == 2 && (isMonthName(words[first]) || isMonthName(words[first + 1]));
    if (!isMonthDay || behind >= words.size() || words[behind].size() != digits)
        return std::nullopt;
    const auto yearNumber = yearOf(words[behind], today);
    if (!yearNumber)
        return std::nullopt;
    const year_month_day date{read.day.day()};
    const auto day = dayOf(*yearNumber, int(unsigned(date.month())), int(unsigned(date.day())));
    return day ? std::optional(DayRead{*day, 3}) : std::nullopt;
}

std::optional<Moment> parseDayText(std::string_view text, Moment today)
{
    const auto words = foldedWords(text);
    if (words.empty())
        return std::nullopt;
    auto read = readDay(words, 0, today);
    if (const auto dated = read ? withShortYear(*read, words, 0, today) : std::nullopt)
        read = dated;
    return read && read->words == words.size() ? std::optional(read->day) : std::nullopt;
}

std::optional<Moment> parseMonthEnd(std::string_view text)
{
    constexpr std::size_t yearFigures = 4;
    std::string plain(text);
    std::ranges::replace_if(
        plain, [](char c) { return c == '/' || c == '-' || c == '.'; }, ' ');
    const auto words = foldedWords(plain);
    if (words.size() != 2)
        return std::nullopt;
    const std::size_t yearAt = words[0].size() == yearFigures && isAllDigits(words[0]) ? 0 : 1;
    const auto yearNumber = words[yearAt].size() == yearFigures && isAllDigits(words[yearAt])
                                ? wholeNumber(words[yearAt])
                                : std::nullopt;
    const std::string &word = words[1 - yearAt];
    const int monthNumber =
        isOfDigits(word, 2) ? *wholeNumber(word) : placeOf(monthNames, word) + 1;
    if (!yearNumber || monthNumber < 1 || monthNumber > 12)
        return std::nullopt;
    const year_month_day_last date{year{*yearNumber},
                                   month_day_last{std::chrono::month{unsigned(monthNumber)}}};
    return Moment::ofDay(sys_days{date});
}

bool lacksYear(std::string_view text)
{
    const auto words = foldedWords(text);
    if (words.size() == 1)
        return looksLikeDay(words[0]) && words[0].ends_with('.');
    if (words.size() != 2)
        return false;
    const bool isDayFirst = isMonthName(words[1]);
    return (isDayFirst || isMonthName(words[0])) && dayNumber(words[isDayFirst ? 0 : 1]);
}

bool isMonthName(std::string_view word)
{
    return placeOf(monthNames, word) >= 0;
}

bool looksLikeDay(std::string_view word)
{
    const auto first = word.find_first_of("./-");
    if (first == std::string_view::npos)
        return false;
    const char parting = word[first];
    const auto second = word.find(parting, first + 1);
    if (second == std::string_view::npos)
        return false;
    const auto front = word.substr(0, first);
    const auto middle = word.substr(first + 1, second - first - 1);
    const auto end = word.substr(second + 1);
    if (!isOfDigits(front, 4) || !isOfDigits(middle, 2))
        return false;
    if (end.empty())
        return parting == '.' && dayNumber(front);
    if (front.size() == 4)
        return isOfDigits(end, 2);
    return isOfDigits(end, 4) && (end.size() == 4 || (end.size() == 2 && parting != '-'));
}

} // namespace lastrivet::entry
