// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/Changeset.h"

#include "core/storage/ChangesetForm.h"
#include "core/storage/ConflictTable.h"

#include <SQLiteCpp/Statement.h>

#include <algorithm>
#include <sqlite3.h>

namespace lastrivet::storage {

namespace {

void require(int code, sqlite3 *handle)
{
    if (code != SQLITE_OK)
        throw SQLite::Exception(handle, code);
}

[[noreturn]] void refuse()
{
    throw UnreadableInput("The journal is damaged: a row's changes cannot be read.");
}

struct FreeBytes {
    void operator()(void *bytes) const { sqlite3_free(bytes); }
};
using Bytes = std::unique_ptr<void, FreeBytes>;

Blob blobOf(const Bytes &bytes, int count)
{
    const auto *first = static_cast<const std::uint8_t *>(bytes.get());
    return first ? Blob(first, first + count) : Blob();
}

/// SQLite's functions take changesets as writable memory but only read them.
void *raw(std::span<const std::uint8_t> changeset)
{
    return const_cast<std::uint8_t *>(changeset.data());
}

struct Operation {
    const char *table = nullptr;
    int columns = 0;
    int code = 0;
};

Operation operationAt(sqlite3_changeset_iter *at)
{
    Operation operation;
    int indirect = 0;
    if (sqlite3changeset_op(at, &operation.table, &operation.columns, &operation.code, &indirect) !=
        SQLITE_OK)
        refuse();
    return operation;
}

RowChange kindOf(int code)
{
    return code == SQLITE_INSERT   ? RowChange::Insert
           : code == SQLITE_DELETE ? RowChange::Delete
                                   : RowChange::Update;
}

using ValueOf = int (*)(sqlite3_changeset_iter *, int, sqlite3_value **);

std::vector<std::optional<Cell>> cellsAt(sqlite3_changeset_iter *at, int columns, ValueOf valueOf)
{
    std::vector<std::optional<Cell>> cells{std::size_t(columns)};
    for (int i = 0; i < columns; ++i) {
        sqlite3_value *value = nullptr;
        if (valueOf(at, i, &value) == SQLITE_OK && value)
            cells[std::size_t(i)] = cellOf(value);
    }
    return cells;
}

/// Columns of a journalled table; 0 for a table that is none.
std::size_t columnsOf(std::string_view name, const RecordTable *table)
{
    return table                   ? table->columns().size()
           : name == profileTable  ? 2
           : name == conflictTable ? conflictColumnCount
                                   : 0;
}

bool isJournalled(std::string_view table)
{
    return columnsOf(table, findRecordTable(table)) > 0;
}

std::size_t keyColumnsOf(const ChangedRow &row)
{
    return row.recordTable ? row.recordTable->keyColumns() : 1;
}

/// Code that reads a row relies on the cells of its key.
bool hasWholeKey(const ChangedRow &row, std::size_t columns)
{
    const std::size_t count = keyColumnsOf(row);
    if (columns < count)
        return false;
    for (std::size_t i = 0; i < count; ++i) {
        if (!row.key(i) || std::holds_alternative<std::monostate>(*row.key(i)))
            return false;
    }
    return std::holds_alternative<std::int64_t>(*row.key(0));
}

enum class Cells { OfTheKey, All };

ChangedRow rowAt(sqlite3_changeset_iter *at, Cells wanted)
{
    const auto operation = operationAt(at);
    ChangedRow row{
        operation.table, findRecordTable(operation.table), kindOf(operation.code), {}, {}};
    if (std::size_t(operation.columns) > columnsOf(row.table, row.recordTable))
        refuse();
    const int count = wanted == Cells::All ? operation.columns
                                           : std::min(operation.columns, int(keyColumnsOf(row)));
    if (operation.code != SQLITE_INSERT)
        row.before = cellsAt(at, count, sqlite3changeset_old);
    if (operation.code != SQLITE_DELETE)
        row.after = cellsAt(at, count, sqlite3changeset_new);
    if (!hasWholeKey(row, std::size_t(operation.columns)))
        refuse();
    return row;
}

using Step = std::function<void(sqlite3_changeset_iter *)>;

void walk(std::span<const std::uint8_t> changeset, const Step &step)
{
    sqlite3_changeset_iter *at = nullptr;
    if (!isWellFormedChangeset(changeset) ||
        sqlite3changeset_start(&at, int(changeset.size()), raw(changeset)) != SQLITE_OK)
        refuse();
    const std::unique_ptr<sqlite3_changeset_iter, int (*)(sqlite3_changeset_iter *)> owner(
        at, sqlite3changeset_finalize);
    int code = sqlite3changeset_next(at);
    for (; code == SQLITE_ROW; code = sqlite3changeset_next(at))
        step(at);
    if (code != SQLITE_DONE)
        refuse();
}

/// Where the key lies in a table, in the order of its columns; empty for no such table.
std::vector<bool> keysOf(const Database &database, const std::string &table)
{
    std::vector<bool> keys;
    SQLite::Statement column(database.sql(),
                             R"(SELECT "pk" FROM pragma_table_info(?) ORDER BY "cid")");
    column.bind(1, table);
    while (column.executeStep())
        keys.push_back(column.getColumn(0).getInt() > 0);
    return keys;
}

/// Whether a table has the columns of a changeset, with the key in the same places; later columns
/// are at the end, and in no key.
bool fits(std::span<const unsigned char> recorded, const std::vector<bool> &keys)
{
    const auto count = recorded.size();
    return count <= keys.size() &&
           std::equal(recorded.begin(), recorded.end(), keys.begin(),
                      [](unsigned char a, bool b) { return (a != 0) == b; }) &&
           std::find(keys.begin() + std::ptrdiff_t(count), keys.end(), true) == keys.end();
}

/// SQLite silently skips tables of another shape; here that is an error.
void requireSameShape(const Database &database, std::span<const std::uint8_t> changeset)
{
    std::set<std::string> seen;
    walk(changeset, [&](sqlite3_changeset_iter *at) {
        const auto operation = operationAt(at);
        if (!seen.insert(operation.table).second)
            return;
        // Nobody's change is of the journal itself, or of what belongs to this computer.
        if (!isJournalled(operation.table))
            refuse();
        unsigned char *flags = nullptr;
        int columns = 0;
        if (sqlite3changeset_pk(at, &flags, &columns) != SQLITE_OK)
            refuse();
        const auto keys = keysOf(database, operation.table);
        if (!fits({flags, std::size_t(columns)}, keys))
            throw UnreadableInput(
                Message{"The journal speaks of a table {0} of another shape.", {operation.table}});
    });
}

int noteConflict(void *context, int kind, sqlite3_changeset_iter *at)
{
    auto &applied = *static_cast<Applied *>(context);
    // Reported once at the end and for no row; the invariants may find the record later.
    if (kind == SQLITE_CHANGESET_FOREIGN_KEY) {
        applied.leavesDangling = true;
        return SQLITE_CHANGESET_OMIT;
    }
    auto &conflict = applied.conflict;
    try {
        const auto row = rowAt(at, Cells::OfTheKey);
        conflict = Conflict{std::string(row.table), recordOf(row)};
    } catch (const std::exception &) {
        conflict = Conflict{{}, {RecordType::Project, 1}};
    }
    return SQLITE_CHANGESET_ABORT;
}

} // namespace

ChangeRecording::ChangeRecording(Database &database)
{
    sqlite3 *handle = database.sql().getHandle();
    sqlite3_session *session = nullptr;
    require(sqlite3session_create(handle, "main", &session), handle);
    m_session.reset(session);
    // The search index has tables too, the journal is one. A table is attached when the first of
    // its rows changes: attaching all of them took as long as writing a row.
    sqlite3session_table_filter(
        session, [](void *, const char *table) { return int(isJournalled(table)); }, nullptr);
    require(sqlite3session_attach(session, nullptr), handle);
}

void ChangeRecording::Delete::operator()(sqlite3_session *session) const
{
    sqlite3session_delete(session);
}

Blob ChangeRecording::changeset()
{
    void *bytes = nullptr;
    int count = 0;
    const int code = sqlite3session_changeset(m_session.get(), &count, &bytes);
    const Bytes owner(bytes);
    require(code, nullptr);
    return blobOf(owner, count);
}

const std::string *textIn(const std::vector<std::optional<Cell>> &cells, std::size_t column)
{
    return column < cells.size() && cells[column] ? std::get_if<std::string>(&*cells[column])
                                                  : nullptr;
}

RecordRef recordOf(const ChangedRow &row)
{
    if (!row.recordTable)
        return {RecordType::Project, 1};
    return {row.recordTable->type(), std::get<std::int64_t>(*row.key(0))};
}

void forEachChange(std::span<const std::uint8_t> changeset,
                   const std::function<void(const ChangedRow &)> &each)
{
    walk(changeset, [&](sqlite3_changeset_iter *at) { each(rowAt(at, Cells::All)); });
}

void forEachKey(std::span<const std::uint8_t> changeset,
                const std::function<void(const ChangedRow &)> &each)
{
    walk(changeset, [&](sqlite3_changeset_iter *at) { each(rowAt(at, Cells::OfTheKey)); });
}

void forEachChangeOf(std::span<const std::uint8_t> changeset, const std::set<RecordRef> &records,
                     const std::function<void(const ChangedRow &)> &each)
{
    walk(changeset, [&](sqlite3_changeset_iter *at) {
        if (records.contains(recordOf(rowAt(at, Cells::OfTheKey))))
            each(rowAt(at, Cells::All));
    });
}

std::vector<RecordRef> touchedBy(std::span<const std::uint8_t> changeset)
{
    std::vector<RecordRef> touched;
    forEachKey(changeset, [&](const ChangedRow &row) { touched.push_back(recordOf(row)); });
    std::sort(touched.begin(), touched.end());
    touched.erase(std::unique(touched.begin(), touched.end()), touched.end());
    return touched;
}

Blob inverted(std::span<const std::uint8_t> changeset)
{
    if (!isWellFormedChangeset(changeset))
        refuse();
    void *bytes = nullptr;
    int count = 0;
    const int code = sqlite3changeset_invert(int(changeset.size()), raw(changeset), &count, &bytes);
    const Bytes owner(bytes);
    if (code != SQLITE_OK)
        refuse();
    return blobOf(owner, count);
}

Applied apply(Database &database, std::span<const std::uint8_t> changeset)
{
    requireSameShape(database, changeset);
    Applied applied;
    sqlite3 *handle = database.sql().getHandle();
    const int code = sqlite3changeset_apply(handle, int(changeset.size()), raw(changeset), nullptr,
                                            noteConflict, &applied);
    if (code != SQLITE_OK && !applied.conflict)
        require(code, handle);
    return applied;
}

} // namespace lastrivet::storage
