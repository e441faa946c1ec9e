// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Result.h"
#include "core/exchange/InputError.h"

#include <string>
#include <string_view>
#include <vector>

namespace lastrivet::exchange {

/// A list as a spreadsheet program writes it: a header and rows of as many cells.
struct CsvTable {
    std::vector<std::string> header;
    std::vector<std::vector<std::string>> rows;
};

/// Reads CSV (RFC 4180) in UTF-8. Lines may also end without a carriage return; cells may also be
/// separated by semicolons or tabs, whichever the header has most of. Rows may leave out cells at
/// their end; empty rows are kept, since people count them.
Result<CsvTable, InputErrors> readCsv(std::string_view text);

/// A row as people count in a spreadsheet: the header is row 1.
Message rowName(std::size_t row);

} // namespace lastrivet::exchange
