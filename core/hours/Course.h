// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Minutes.h"
#include "core/records/Records.h"

#include <chrono>
#include <vector>

namespace lastrivet::hours {

/// Where the hours of all who worked stood at the end of a day.
struct CoursePoint {
    std::chrono::sys_days day{};
    Minutes done;
    /// Of those: done again.
    Minutes rework;

    friend bool operator==(const CoursePoint &, const CoursePoint &) = default;
};

/// How the hours grew: a point for the day before the first week, then for the Sunday that ends
/// each week, the last one for `asOf`. Empty without a log entry.
std::vector<CoursePoint> course(const Records &records, Moment asOf);

/// The Monday of a day's week.
std::chrono::sys_days mondayOf(std::chrono::sys_days day);

} // namespace lastrivet::hours
