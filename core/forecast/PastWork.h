// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"

#include <vector>

namespace lastrivet::forecast {

/// What the log so far tells of how this builder works.
struct PastWork {
    /// ln(actual / estimate) of finished steps that have both.
    std::vector<double> log_ratios;
    double rework_minutes = 0;
    double other_minutes = 0;
    /// Minutes of each of the last weeks that are over, oldest first, at most 26; weeks without
    /// work are zeros. The running week is not among them.
    std::vector<double> weeks;
};

/// Man-minutes: what the workers add up to, as the hours do.
PastWork pastWork(const Records &records, Moment asOf);

} // namespace lastrivet::forecast
