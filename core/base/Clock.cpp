// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Clock.h"

#include "core/base/TimeZone.h"

#include <date/tz.h>

namespace lastrivet {

std::chrono::sys_time<std::chrono::milliseconds> SystemClock::now() const
{
    return std::chrono::floor<std::chrono::milliseconds>(std::chrono::system_clock::now());
}

Moment localMoment(std::chrono::sys_time<std::chrono::milliseconds> utc, std::string_view zone)
{
    using namespace std::chrono;
    // Stamps of a strange journal may lie beyond what zones are reckoned for.
    constexpr milliseconds mostFromEpoch = years{400};
    if (utc.time_since_epoch() > mostFromEpoch || utc.time_since_epoch() < -mostFromEpoch)
        return *Moment::parse("1970-01-01");
    milliseconds local = utc.time_since_epoch();
    if (const auto *known = findZone(zone))
        local = known->to_local(utc).time_since_epoch();
    const auto day = floor<days>(sys_time<milliseconds>{local});
    const auto minute = floor<minutes>(sys_time<milliseconds>{local} - day);
    const auto moment = Moment::ofTime(day, int(minute.count()));
    return moment ? *moment : *Moment::parse("1970-01-01");
}

Moment inZone(Moment wallClock, int offsetMinutes, std::string_view zone)
{
    using namespace std::chrono;
    if (!wallClock.hasTime())
        return wallClock;
    const sys_time<milliseconds> utc =
        wallClock.day() + minutes{wallClock.minuteOfDay() - offsetMinutes};
    return localMoment(utc, zone);
}

bool isKnownZone(std::string_view zone)
{
    // What an unknown one counts as is known everywhere.
    return zone == "UTC" || findZone(zone) != nullptr;
}

} // namespace lastrivet
