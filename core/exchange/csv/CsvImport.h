// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/ImportPlan.h"
#include "core/exchange/csv/CsvColumns.h"
#include "core/exchange/csv/CsvTable.h"
#include "core/project/Project.h"

#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace lastrivet::exchange {

/// What taking a list in does with one of its rows.
struct CsvRow {
    enum class Fate {
        Added,
        AlreadyThere, ///< on record with the same content, under its id or, without one, any
        Blank,
        Wrong,
    };

    /// Counted as in a spreadsheet: the header is row 1.
    std::size_t row = 0;
    Fate fate = Fate::Added;
    /// The record that it becomes, as people point at it.
    Message record;
    InputErrors errors;
};

/// What taking a list in would do, row by row, before anything is changed.
struct CsvPlan {
    std::vector<CsvRow> rows;
    ImportPlan import;
    /// Everything that stands against it; then nothing of it may be done.
    InputErrors errors;
};

/// Works out what becomes of each row. Parts are given by code, name or id (in `parent_id` also
/// those of other rows), people by name or id, sets and lists as ids or names separated by
/// semicolons or as JSON. A log entry without workers is the project's builder's. Rows without an
/// id that say what is on record already are that record; `newId` gives ids to the others.
CsvPlan planCsv(const CsvTable &table, RecordType type, const CsvColumns &columns,
                const Records &records, const Profile &profile,
                const std::function<std::int64_t()> &newId);
/// The same with temporary ids, for a preview.
CsvPlan dryRun(const CsvTable &table, RecordType type, const CsvColumns &columns,
               const Project &project);

/// Takes a list in in one change named after `source`, or changes nothing and says everything that
/// is wrong.
Result<CsvPlan, InputErrors> importCsv(Project &project, const CsvTable &table, RecordType type,
                                       const CsvColumns &columns, std::string_view source);

} // namespace lastrivet::exchange
