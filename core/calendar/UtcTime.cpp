// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/UtcTime.h"

#include "core/base/TimeZone.h"

#include <date/tz.h>

namespace lastrivet::calendar {

std::optional<Moment> inUtc(Moment wallClock, std::string_view zone)
{
    using namespace std::chrono;
    const date::time_zone *known = findZone(zone);
    if (!wallClock.hasTime() || !known)
        return std::nullopt;
    const date::local_time<minutes> local(wallClock.day().time_since_epoch() +
                                          minutes{wallClock.minuteOfDay()});
    // `first` is the offset before a change of clocks, and the only one away from changes.
    const seconds offset = known->get_info(local).first.offset;
    const sys_time<minutes> utc(floor<minutes>(local.time_since_epoch() - offset));
    const sys_days day = floor<days>(utc);
    return Moment::ofTime(day, int((utc - day).count()));
}

} // namespace lastrivet::calendar
