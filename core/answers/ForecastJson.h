// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/forecast/LookBack.h"

#include <iosfwd>

namespace lastrivet::answers {

/// Writes hours and dates to go, and how the forecast fared where `lookBack` is given; `component`
/// of work on no part is null.
void writeJson(const forecast::Forecast &forecast, const forecast::LookBack *lookBack,
               const Records &records, std::ostream &out);

} // namespace lastrivet::answers
