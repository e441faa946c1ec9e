// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/csv/CsvColumns.h"
#include "core/exchange/csv/CsvTable.h"

namespace lastrivet::exchange {

/// Says of bare numbers in columns of durations that they are hours where the header says so: "1,5"
/// below "hours" becomes "1,5h". Whatever names its unit stays as it is.
void rewriteHours(CsvTable &table, const CsvColumns &columns);

} // namespace lastrivet::exchange
