// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Moment.h"

#include <charconv>
#include <fmt/format.h>

namespace lastrivet {

namespace {

using namespace std::chrono;

constexpr int minutesPerDay = 24 * 60;
constexpr sys_days firstDay = year{1900} / January / 1;
constexpr sys_days lastDay = year{2199} / December / 31;

std::optional<int> digits(std::string_view text)
{
    int value = 0;
    for (char c : text) {
        if (c < '0' || c > '9')
            return std::nullopt;
        value = value * 10 + (c - '0');
    }
    return value;
}

std::optional<sys_days> parseDay(std::string_view text)
{
    if (text.size() != 10 || text[4] != '-' || text[7] != '-')
        return std::nullopt;
    const auto y = digits(text.substr(0, 4));
    const auto m = digits(text.substr(5, 2));
    const auto d = digits(text.substr(8, 2));
    if (!y || !m || !d)
        return std::nullopt;
    const year_month_day date{year{*y}, month{unsigned(*m)}, std::chrono::day{unsigned(*d)}};
    if (!date.ok())
        return std::nullopt;
    return sys_days{date};
}

std::optional<int> parseTime(std::string_view text)
{
    if (text.size() != 6 || text[0] != 'T' || text[3] != ':')
        return std::nullopt;
    const auto hour = digits(text.substr(1, 2));
    const auto minute = digits(text.substr(4, 2));
    if (!hour || !minute || *hour > 23 || *minute > 59)
        return std::nullopt;
    return *hour * 60 + *minute;
}

} // namespace

std::optional<Moment> Moment::parse(std::string_view text)
{
    const auto date = parseDay(text.substr(0, 10));
    if (!date)
        return std::nullopt;
    if (text.size() == 10)
        return ofDay(*date);
    const auto time = parseTime(text.substr(10));
    return time ? ofTime(*date, *time) : std::nullopt;
}

std::optional<Moment> Moment::ofDay(sys_days day)
{
    if (day < firstDay || day > lastDay)
        return std::nullopt;
    return Moment{std::int32_t(day.time_since_epoch().count()), -1};
}

std::optional<Moment> Moment::ofTime(sys_days day, int minuteOfDay)
{
    if (day < firstDay || day > lastDay || minuteOfDay < 0 || minuteOfDay >= minutesPerDay)
        return std::nullopt;
    return Moment{std::int32_t(day.time_since_epoch().count()), std::int16_t(minuteOfDay)};
}

std::optional<Moment> Moment::plusMinutes(std::int64_t minutes) const
{
    constexpr std::int64_t bound = std::int64_t{400} * 366 * minutesPerDay;
    if (minutes > bound || minutes < -bound)
        return std::nullopt;
    if (!hasTime())
        return plusDays(minutes / minutesPerDay);
    const std::int64_t total = std::int64_t{m_day} * minutesPerDay + m_minute + minutes;
    const auto days = floor<std::chrono::days>(std::chrono::minutes{total});
    return ofTime(sys_days{days}, int(total - days.count() * minutesPerDay));
}

std::optional<Moment> Moment::plusDays(std::int64_t days) const
{
    constexpr std::int64_t bound = 400 * 366;
    if (days > bound || days < -bound)
        return std::nullopt;
    const sys_days shifted = day() + std::chrono::days{days};
    return hasTime() ? ofTime(shifted, m_minute) : ofDay(shifted);
}

std::string Moment::text() const
{
    const year_month_day date{day()};
    const auto days = fmt::format("{:04}-{:02}-{:02}", int(date.year()), unsigned(date.month()),
                                  unsigned(date.day()));
    return hasTime() ? fmt::format("{}T{:02}:{:02}", days, m_minute / 60, m_minute % 60) : days;
}

} // namespace lastrivet
