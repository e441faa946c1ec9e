// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/base/Result.h"
#include "core/exchange/InputError.h"

#include <cstddef>
#include <map>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace lastrivet::exchange {

/// A list as a spreadsheet program writes it: a header and rows of as many cells.
struct CsvTable {
    std::vector<std::string> header;
    std::vector<std::vector<std::string>> rows;
    /// What is wrong with a cell, by row and column from 0, where whoever rewrote its column knows
    /// that better than whoever reads what is left in it.
    std::map<std::pair<std::size_t, std::size_t>, Message> refusals = {};
};

/// Reads CSV (RFC 4180) in UTF-8. Lines may also end without a carriage return; cells may also be
/// separated by semicolons or tabs, whichever the header has most of. Rows may leave out cells at
/// their end; empty rows are kept, since people count them.
Result<CsvTable, InputErrors> readCsv(std::string_view text);

/// A row as people count in a spreadsheet: the header is row 1.
Message rowName(std::size_t row);

} // namespace lastrivet::exchange
