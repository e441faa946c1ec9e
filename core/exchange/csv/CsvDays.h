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

/// The order that the days of a list show: by points between their numbers, or by numbers that can
/// be no month. Empty where all of them may be read either way, and where no order fits all.
std::optional<DayOrder> orderShown(const CsvTable &table, RecordType type,
                                   const CsvColumns &columns);

/// Rewrites the days in columns of moments to ISO 8601. Numbers may be parted by points, strokes or
/// hyphens; a year of two figures is the one nearest to today. What is no such day stays as it is,
/// to be refused by name.
void rewriteDays(CsvTable &table, RecordType type, const CsvColumns &columns, DayOrder order,
                 Moment today);

} // namespace lastrivet::exchange
