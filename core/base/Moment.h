// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace lastrivet {

/// A point in local workshop time: a day, or a day with hour and minute (ISO 8601 text).
///
/// A day without a time is neither before nor after any time of that day, so moments have no
/// `operator<`: compare with `after` and `happened`, sort lists with `sortsBefore`. Valid days run
/// from 1900-01-01 to 2199-12-31.
class Moment {
public:
    /// Reads `YYYY-MM-DD` or `YYYY-MM-DDTHH:MM`; empty when the text is neither or no such day
    /// exists.
    static std::optional<Moment> parse(std::string_view text);
    /// Empty when the day is not between 1900 and 2199.
    static std::optional<Moment> ofDay(std::chrono::sys_days day);
    /// The same with a time; empty, too, when `minuteOfDay` is not between 0 and 1439.
    static std::optional<Moment> ofTime(std::chrono::sys_days day, int minuteOfDay);

    bool hasTime() const { return m_minute >= 0; }
    std::chrono::sys_days day() const { return std::chrono::sys_days{std::chrono::days{m_day}}; }
    /// 0 to 1439; -1 for a day without time.
    int minuteOfDay() const { return m_minute; }
    /// The same day without its time.
    Moment dayOnly() const { return Moment{m_day, -1}; }
    /// Adds on the wall clock, without regard to daylight saving; empty when the result leaves the
    /// valid years. A day without a time stays one.
    std::optional<Moment> plusMinutes(std::int64_t minutes) const;
    std::optional<Moment> plusDays(std::int64_t days) const;
    std::string text() const;

    friend bool operator==(Moment, Moment) = default;
    /// True when `a` is certainly later than `b`: on a later day, or at a later time of the same
    /// day when both have a time.
    friend bool after(Moment a, Moment b)
    {
        return a.m_day > b.m_day || (a.m_day == b.m_day && a.m_minute >= 0 && b.m_minute >= 0 &&
                                     a.m_minute > b.m_minute);
    }
    /// The order of the ISO texts, for sorting lists only: a day comes before its times.
    friend bool sortsBefore(Moment a, Moment b)
    {
        return a.m_day != b.m_day ? a.m_day < b.m_day : a.m_minute < b.m_minute;
    }

private:
    constexpr Moment(std::int32_t day, std::int16_t minute)
        : m_day(day)
        , m_minute(minute)
    {
    }

    std::int32_t m_day;
    std::int16_t m_minute;
};

/// True when `moment` is set and not certainly after `by`.
inline bool happened(const std::optional<Moment> &moment, Moment by)
{
    return moment && !after(*moment, by);
}

} // namespace lastrivet
