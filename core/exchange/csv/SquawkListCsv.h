// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/SquawkFilter.h"

#include <filesystem>
#include <iosfwd>

namespace lastrivet::exchange {

/// Writes a list of squawks as CSV in its order: a column per field, as all records are exported,
/// then what people read in a spreadsheet: `part`, `state` at the list's moment, `reachable`, and
/// `closings`, the titles of those that bury it or would.
void writeSquawkList(const Records &records, const std::vector<readiness::ListedSquawk> &list,
                     Moment asOf, std::ostream &out);
/// The same as a file; throws `NotSaved`, and then leaves an older file there as it was.
void writeSquawkListFile(const Records &records, const std::vector<readiness::ListedSquawk> &list,
                         Moment asOf, const std::filesystem::path &file);

} // namespace lastrivet::exchange
