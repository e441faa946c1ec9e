// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Moment.h"

#include <chrono>
#include <string_view>

namespace lastrivet {

/// Where "now" comes from; passed in, so that tests set it.
class Clock {
public:
    virtual ~Clock() = default;
    virtual std::chrono::sys_time<std::chrono::milliseconds> now() const = 0;
};

/// The computer's clock.
class SystemClock final : public Clock {
public:
    std::chrono::sys_time<std::chrono::milliseconds> now() const override;
};

/// `utc` as local workshop time in the IANA zone; in UTC when this computer does not know the zone.
/// 1970-01-01 for a time that no `Moment` can hold.
Moment localMoment(std::chrono::sys_time<std::chrono::milliseconds> utc, std::string_view zone);
/// `wallClock`, read `offsetMinutes` ahead of (east of) UTC, as local time in the IANA zone.
Moment inZone(Moment wallClock, int offsetMinutes, std::string_view zone);
/// True when this computer knows the IANA zone name.
bool isKnownZone(std::string_view zone);

} // namespace lastrivet
