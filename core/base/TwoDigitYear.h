// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Moment.h"

#include <chrono>

namespace lastrivet {

/// Of the years whose last two digits are `twoDigits` (0 to 99) the one nearest to today's.
inline int nearestYear(int twoDigits, Moment today)
{
    const int thisYear = int(std::chrono::year_month_day{today.day()}.year());
    const int inCentury = thisYear - thisYear % 100 + twoDigits;
    if (inCentury > thisYear + 50)
        return inCentury - 100;
    return inCentury < thisYear - 50 ? inCentury + 100 : inCentury;
}

} // namespace lastrivet
