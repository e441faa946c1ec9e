// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"

#include <vector>

namespace lastrivet::forecast {

/// What the log so far shows of how this builder works, in man-minutes.
struct PastWork {
    /// ln(actual / estimate) of finished steps that have both.
    std::vector<double> log_ratios;
    double rework_minutes = 0;
    double other_minutes = 0;
    /// Minutes of each of the last complete weeks, oldest first, at most 26; zero for weeks without
    /// work.
    std::vector<double> weeks;
};

/// Of the log entries that began by `asOf`.
PastWork pastWork(const Records &records, Moment asOf);

} // namespace lastrivet::forecast
