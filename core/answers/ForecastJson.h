// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/forecast/Forecast.h"

#include <iosfwd>

namespace lastrivet::answers {

/// Writes hours and dates to go; `component` of work on no part is null.
void writeJson(const forecast::Forecast &forecast, const Records &records, std::ostream &out);

} // namespace lastrivet::answers
