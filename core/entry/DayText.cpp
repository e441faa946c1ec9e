// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/DayText.h"

#include "core/entry/Fold.h"

#include <algorithm>
#include <array>
#include <charconv>

namespace lastrivet::entry {

namespace {

using namespace std::chrono;
using Words = std::vector<std::string>;

constexpr std::array<std::string_view, 12> monthNames{
    "january", "february", "march",     "april",   "may",      "june",
    "july",    "august",   "september", "october", "november", "december"};
constexpr std::array<std::string_view, 7> weekdayNames{
    "sunday", "monday", "tuesday", "wednesday", "thursday", "friday", "saturday"};

/// The place of a name or of its beginning of three letters or more; -1 when it is none.
template <std::size_t count>
int placeOf(const std::array<std::string_view, count> &names, std::string_view word)
{
    if (word.ends_with('.'))
        word.remove_suffix(1);
    for (std::size_t i = 0; i < count && word.size() >= 3; ++i) {
        if (names[i].starts_with(word))
            return int(i);
    }
    return -1;
}

std::optional<int> wholeNumber(std::string_view word)
{
    int number = 0;
    const auto [end, error] = std::from_chars(word.data(), word.data() + word.size(), number);
    if (error != std::errc{} || end != word.data() + word.size() || number < 0)
        return std::nullopt;
    return number;
}

std::optional<Moment> dayOf(int yearNumber, int month, int dayNumber)
{
    const year_month_day date{year{yearNumber}, std::chrono::month{unsigned(month)},
                              std::chrono::day{unsigned(dayNumber)}};
    return date.ok() ? Moment::ofDay(sys_days{date}) : std::nullopt;
}

std::optional<DayRead> readMonthDay(const Words &words, std::size_t first, Moment today)
{
    if (first + 1 >= words.size())
        return std::nullopt;
    const bool isDayFirst = wholeNumber(words[first]).has_value();
    const auto number = wholeNumber(words[isDayFirst ? first : first + 1]);
    const int month = placeOf(monthNames, words[isDayFirst ? first + 1 : first]) + 1;
    if (!number || month == 0 || *number < 1 || *number > 31)
        return std::nullopt;
    if (first + 2 < words.size() && words[first + 2].size() == 4) {
        const auto yearNumber = wholeNumber(words[first + 2]);
        const auto day = yearNumber ? dayOf(*yearNumber, month, *number) : std::nullopt;
        if (yearNumber)
            return day ? std::optional(DayRead{*day, 3}) : std::nullopt;
    }
    const int thisYear = int(year_month_day{today.day()}.year());
    for (int back = 0; back <= 8; ++back) { // 29 February comes once in up to eight years
        const auto day = dayOf(thisYear - back, month, *number);
        if (day && !after(*day, today))
            return DayRead{*day, 2};
    }
    return std::nullopt;
}

std::optional<Moment> latestWeekday(int place, Moment today)
{
    const int back = int((weekday{today.day()} - weekday{unsigned(place)}).count());
    return today.dayOnly().plusDays(back == 0 ? -7 : -back);
}

} // namespace

std::optional<DayRead> readDay(const Words &words, std::size_t first, Moment today)
{
    const std::string &word = words[first];
    if (word == "today")
        return DayRead{today.dayOnly(), 1};
    if (word == "yesterday")
        return DayRead{*today.dayOnly().plusDays(-1), 1};
    std::string iso = word;
    std::ranges::replace(iso, 't', 'T');
    if (const auto moment = Moment::parse(iso))
        return DayRead{*moment, 1};
    if (const int place = placeOf(weekdayNames, word); place >= 0) {
        const auto day = latestWeekday(place, today);
        return day ? std::optional(DayRead{*day, 1}) : std::nullopt;
    }
    return readMonthDay(words, first, today);
}

std::optional<Moment> parseDayText(std::string_view text, Moment today)
{
    const auto words = foldedWords(text);
    if (words.empty())
        return std::nullopt;
    const auto read = readDay(words, 0, today);
    return read && read->words == words.size() ? std::optional(read->day) : std::nullopt;
}

std::optional<int> parseClock(std::string_view word)
{
    const auto colon = word.find(':');
    if (colon == std::string_view::npos)
        return std::nullopt;
    const auto hour = wholeNumber(word.substr(0, colon));
    const auto minute = wholeNumber(word.substr(colon + 1));
    if (!hour || !minute || *hour > 23 || *minute > 59 || word.size() - colon != 3)
        return std::nullopt;
    return *hour * 60 + *minute;
}

} // namespace lastrivet::entry
