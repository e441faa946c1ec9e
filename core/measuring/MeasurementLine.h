// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/DecimalSign.h"
#include "core/base/Message.h"
#include "core/base/Result.h"
#include "core/records/Measurement.h"

#include <string_view>

namespace lastrivet::measuring {

/// What is to be measured in one line: its name and, behind a comma, its limits with their unit:
/// `span of the stabiliser, 2740-2746 mm`, `bond, < 0.005 ohm`, `wall, min 1.4 mm`,
/// `wall, min 1.4, max 1.6 mm`, `travel, 20 ± 1 deg`. A comma that no limits follow belongs to the
/// name. `sign` is what the person has before decimals. Says in one sentence what is wrong.
Result<Measurement, Message> readMeasurementLine(std::string_view line,
                                                 DecimalSign sign = DecimalSign::Unknown);

} // namespace lastrivet::measuring
