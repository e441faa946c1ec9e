// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Description.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Statement.h>

#include <cstdint>
#include <string>
#include <variant>
#include <vector>

struct sqlite3_value;

namespace lastrivet::storage {

/// A value as the record tables keep it.
using Cell = std::variant<std::monostate, std::int64_t, double, std::string>;
using Row = std::vector<Cell>;
using Blob = std::vector<std::uint8_t>;

Cell cellOf(const Scalar &value);
Cell cellOf(const SQLite::Column &column);
Cell cellOf(sqlite3_value *value);

/// Binds without a copy: the cell outlives the statement's next step.
void bind(SQLite::Statement &statement, int index, const Cell &cell);

/// A value of SQLite's fundamental datatype `type` as the kind of value that the field takes; null
/// when that is another kind. A text points into it.
Scalar scalarOf(const Field &field, sqlite3_value *value, int type);
/// The same of a cell; a text points into it.
Scalar scalarOf(const Field &field, const Cell &cell);

} // namespace lastrivet::storage
