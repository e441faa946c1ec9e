// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/forecast/Cone.h"
#include "core/forecast/LookBack.h"
#include "core/hours/Course.h"

#include <iosfwd>
#include <vector>

namespace lastrivet::exchange {

/// The forecast as CSV: a row for the whole and one per assembly, in whole minutes.
void writeForecast(const forecast::Forecast &told, const Records &records, std::ostream &out);

/// What the forecast said each month and what came, in whole minutes.
void writeLookBack(const forecast::LookBack &told, std::ostream &out);

/// How the hours of all who worked grew, and may grow, in whole minutes since the beginning.
void writeCourse(const std::vector<hours::CoursePoint> &course,
                 const std::vector<forecast::ConePoint> &cone, std::ostream &out);

} // namespace lastrivet::exchange
