// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Moment.h"
#include "core/exchange/csv/CsvColumns.h"
#include "core/exchange/csv/CsvTable.h"

#include <optional>

namespace lastrivet::exchange {

/// In which order a list writes its days.
enum class DayOrder { YearMonthDay, DayMonthYear, MonthDayYear };

/// The order in which the days of a list are written, told by dots between their numbers, or by
/// numbers above 12. Empty when all can be read either way, and when no order fits all.
std::optional<DayOrder> orderShown(const CsvTable &table, RecordType type,
                                   const CsvColumns &columns);

/// Rewrites the days in columns of moments to ISO 8601. Numbers may be separated by dots, slashes
/// or hyphens; a year of two digits is the one nearest to today. What is no such day stays as it
/// is, so that it is refused as it was written.
void rewriteDays(CsvTable &table, RecordType type, const CsvColumns &columns, DayOrder order,
                 Moment today);

} // namespace lastrivet::exchange
