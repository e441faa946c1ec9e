// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/today/Today.h"

namespace lastrivet::today {

/// How many days ahead expiry and calibration are announced, and how long an expiry is repeated; a
/// calibration that is overdue is told until there is a newer one.
inline constexpr std::int64_t reminderDays = 30;

/// Everything that needs attention as of the answer's moment, the gravest first.
std::vector<Attention> reminders(const Records &records, const readiness::Answer &answer);

} // namespace lastrivet::today
