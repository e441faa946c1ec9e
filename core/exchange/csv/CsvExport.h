// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Description.h"
#include "core/records/Records.h"

#include <filesystem>
#include <iosfwd>
#include <span>
#include <string>
#include <string_view>

namespace lastrivet::exchange {

/// Writes all records of a type as CSV (RFC 4180, UTF-8, header row): a column per field, lists as
/// compact JSON. Texts that a spreadsheet would take for a formula begin with an apostrophe.
void writeCsv(const Records &records, RecordType type, std::ostream &out);

/// Writes a file per record type, named like its array in the interchange document, into a folder
/// that is made when it is not there. All are on the disk before the first takes the place of one
/// of an earlier export. Throws `NotSaved`.
void writeCsvFolder(const Records &records, const std::filesystem::path &folder);

/// A text as one cell: quoted where it must be, and nothing that a spreadsheet would run.
std::string csvCell(std::string_view text);
/// The cells of a record's fields, in their order, without the end of the line.
void writeCsvFields(std::span<const Field> fields, const void *record, std::ostream &out);

/// True when a spreadsheet may take the text for a formula, also behind apostrophes.
bool needsApostrophe(std::string_view text);
/// A cell as it was before it got the apostrophe that keeps a spreadsheet from running it.
std::string_view withoutApostrophe(std::string_view cell);

} // namespace lastrivet::exchange
