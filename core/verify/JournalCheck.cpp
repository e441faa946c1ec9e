// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Tongue.h"
#include "core/storage/Changeset.h"
#include "core/storage/ConflictTable.h"
#include "core/storage/Journal.h"
#include "core/storage/Migration.h"
#include "core/storage/Schema.h"
#include "core/storage/TableRows.h"
#include "core/verify/Checks.h"

#include <algorithm>
#include <limits>
#include <string>
#include <utility>

namespace lastrivet::verify_detail {

namespace {

using storage::JournalRow;
using storage::RecordTable;
using storage::Row;
using storage::TableRows;

/// Journalled tables that are no records.
constexpr std::pair<std::string_view, std::string_view> sideTables[]{
    {storage::profileTable, R"("id","content")"},
    {storage::conflictTable, storage::conflictColumns}};

bool comesFirst(const TableRows &a, const TableRows &b, std::size_t keys)
{
    if (a.isAtEnd() || b.isAtEnd())
        return b.isAtEnd();
    return std::lexicographical_compare(a.row().begin(), a.row().begin() + std::ptrdiff_t(keys),
                                        b.row().begin(), b.row().begin() + std::ptrdiff_t(keys));
}

struct Compared {
    std::string_view table;
    std::string_view record;
    std::size_t keyColumns;
};

void compare(const Compared &compared, TableRows has, TableRows should, Findings &findings)
{
    const auto tell = [&](const Row &row, std::string_view pattern) {
        const auto *number = std::get_if<std::int64_t>(&row.front());
        const auto id = number ? *number : 0;
        findings.add(
            {pattern,
             {nested({compared.record, {}}), std::to_string(id), std::string(compared.table)}},
            compared.record, id);
    };
    while (!has.isAtEnd() || !should.isAtEnd()) {
        if (comesFirst(has, should, compared.keyColumns)) {
            tell(has.row(), "{0} {1} is in the records, and no change in the journal made it "
                            "(table {2}).");
            has.advance();
        } else if (comesFirst(should, has, compared.keyColumns)) {
            tell(should.row(),
                 "{0} {1} is in the journal, and missing from the records (table {2}).");
            should.advance();
        } else {
            if (has.row() != should.row())
                tell(has.row(), "{0} {1} differs from what the journal made of it (table {2}).");
            has.advance();
            should.advance();
        }
    }
}

void checkLink(const JournalRow &row, const JournalRow &before, Findings &findings)
{
    const auto tell = [&](std::string_view pattern) {
        findings.add({pattern, {std::to_string(row.seq), row.label}});
    };
    if (!storage::fitsItsHash(row))
        tell("Row {0} of the journal (“{1}”) was altered: its hash does not fit its content.");
    if (row.previous_hash != before.hash)
        tell("Row {0} of the journal (“{1}”) does not follow the row before it: a row was altered, "
             "removed or put in.");
    if (row.seq != before.seq + 1)
        tell("Row {0} of the journal (“{1}”) is out of sequence.");
    // Rows that a merge carried over keep the time of the copy that made them.
    if (row.kind != word(ChangeKind::Carried) && row.stamp <= before.stamp)
        tell("Row {0} of the journal (“{1}”) is not later than the row before it.");
}

/// Plays every row; false when one does not fit.
bool play(const storage::Journal &journal, storage::Database &into, Findings &findings)
{
    bool fits = true;
    journal.forEachRow([&](const JournalRow &row) {
        // What a merge carried over is in the merge's own row already.
        if (!fits || !row.changeset || row.kind == word(ChangeKind::Carried))
            return;
        if (const auto conflict = storage::apply(into, *row.changeset).conflict) {
            findings.add({"Row {0} of the journal (“{1}”) does not fit the rows before it.",
                          {std::to_string(row.seq), row.label}},
                         word(conflict->record.type), conflict->record.id);
            fits = false;
        }
    });
    return fits;
}

} // namespace

void checkJournal(storage::Database &database, Verification &verification)
{
    Findings findings(verification, "journal");
    JournalRow before;
    before.stamp = std::numeric_limits<std::int64_t>::min();
    before.hash = storage::Blob(32, 0);
    storage::Journal(database).forEachRow([&](const JournalRow &row) {
        checkLink(row, before, findings);
        const auto newestStamp = std::max(before.stamp, row.stamp);
        before = row;
        before.stamp = newestStamp;
        before.changeset.reset();
        ++verification.journal_rows;
    });
}

void checkReplay(storage::Database &database, Verification &verification)
{
    Findings findings(verification, "replay");
    storage::Database played;
    storage::runSteps(played);
    // Halfway through the history a reference may lead nowhere yet.
    played.checkReferences(false);
    if (!play(storage::Journal(database), played, findings))
        return;
    for (const RecordTable &table : storage::recordTables()) {
        compare({table.name(), table.record().name(), table.keyColumns()},
                TableRows(database, table), TableRows(played, table), findings);
    }
    for (const auto &[table, columns] : sideTables) {
        compare({table, "project", 1}, TableRows(database, table, columns),
                TableRows(played, table, columns), findings);
    }
}

} // namespace lastrivet::verify_detail
