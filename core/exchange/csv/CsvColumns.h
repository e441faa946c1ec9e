// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/csv/CsvTable.h"
#include "core/records/RecordType.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace lastrivet::exchange {

/// For each column of a list the field that it fills; empty for a column that is left out.
using CsvColumns = std::vector<std::string>;

/// A header as headers are compared: lower case, one kind of space between words, none around.
std::string plainHeader(std::string_view header);

/// The record types that lists can be taken in as.
std::span<const RecordType> csvRecordTypes();

/// The fields of a record type that a column can fill, in their order.
std::vector<std::string_view> csvFields(RecordType type);

/// Columns whose header is a field's name, in any case and with spaces for underscores, or what
/// people call it in their own lists ("part", "qty", "date"). Of two for one field, the first; but
/// "time" gives way to a column that says for certain how long something took, and is left out
/// where it holds times of a day, some of them later than anybody works long.
CsvColumns columnsByHeader(const CsvTable &table, RecordType type);

/// What a column "time" was taken for, where no other says how long something took.
enum class TimeColumn { None, IsLength, IsClock };
TimeColumn timeColumn(const CsvTable &table, const CsvColumns &columns, RecordType type);

/// The headers of columns that `columnsByHeader` leaves out because another fills their field.
std::vector<std::string> doubledColumns(const CsvTable &table, RecordType type);

/// The fields that a record of the type must have and no column fills.
std::vector<std::string_view> unfilled(RecordType type, const CsvColumns &columns);

} // namespace lastrivet::exchange
