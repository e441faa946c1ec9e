// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/csv/CsvColumns.h"
#include "core/exchange/csv/CsvTable.h"

namespace lastrivet::exchange {

/// In which order a list writes its days.
enum class DayOrder { YearMonthDay, DayMonthYear, MonthDayYear };

/// Rewrites the days in columns of moments to ISO 8601. Numbers may be parted by points, strokes or
/// hyphens; the year has four digits. What is no such day stays as it is, to be refused by name.
void rewriteDays(CsvTable &table, RecordType type, const CsvColumns &columns, DayOrder order);

} // namespace lastrivet::exchange
