// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/hours/Grouping.h"
#include "core/records/Records.h"

#include <iosfwd>

namespace lastrivet::exchange {

/// Writes all hours in one grouping as CSV with a header row, in whole minutes.
/// `minutes` is what the clock says, `worker_minutes` what all who worked add up to. By component
/// there are both of the part alone and with everything below; by step the estimate beside what
/// came of it by `asOf`.
void writeHours(const Records &records, Moment asOf, hours::Grouping by, std::ostream &out);

} // namespace lastrivet::exchange
