// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/hours/Estimates.h"
#include "core/hours/Grouping.h"
#include "core/hours/Hours.h"
#include "core/records/Records.h"

#include <ostream>

namespace lastrivet::cli {

/// The hours for people: a table in one grouping, then the sums.
void printHours(const hours::Totals &totals, hours::Grouping by, const Records &records,
                std::ostream &out);
/// What finished steps were thought to take, part by part, and what they took.
void printEstimates(const hours::Estimates &estimates, const Records &records, std::ostream &out);

} // namespace lastrivet::cli
