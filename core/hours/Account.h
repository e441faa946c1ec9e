// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/hours/Course.h"
#include "core/hours/Estimates.h"
#include "core/hours/Hours.h"

namespace lastrivet::hours {

/// All sums of the hours worked so far.
struct Account {
    Totals totals;
    Estimates estimates;
    std::vector<CoursePoint> course;
};

inline Account account(const Records &records, Moment asOf)
{
    return {totals(records), estimates(records, asOf), course(records, asOf)};
}

} // namespace lastrivet::hours
