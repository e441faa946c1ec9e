// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/today/Today.h"

namespace lastrivet::today {

/// Everything that needs attention as of the answer's moment, the gravest first. An expiry is told
/// for as many days after it as before (`stores::soonDays`); a calibration that is overdue, until
/// there is a newer one.
std::vector<Attention> reminders(const Records &records, const readiness::Answer &answer);

} // namespace lastrivet::today
