// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/Journal.h"

#include "core/base/Error.h"
#include "core/base/Utf8.h"

#include <algorithm>
#include <chrono>
#include <fmt/format.h>
#include <limits>
#include <openssl/rand.h>

namespace lastrivet::storage {

namespace {

constexpr std::string_view lineColumns =
    R"("seq","change_id","stamp","kind","undoes","who","label","schema")";

constexpr std::string_view entryColumns =
    R"("seq","change_id","stamp","kind","undoes","who","label","schema","previous_hash","hash","origin_hash")";

constexpr std::string_view rowColumns =
    R"("seq","change_id","stamp","kind","undoes","who","label","schema","changeset",
       "origin_hash","previous_hash","hash")";

class ChainSum {
public:
    void add(std::string_view bytes)
    {
        m_sum.add(fmt::format("{}:", bytes.size()));
        m_sum.add(bytes);
        m_sum.add(",");
    }
    void add(const std::string &text) { add(std::string_view(text)); }
    void add(const Blob &bytes)
    {
        add(std::string_view(reinterpret_cast<const char *>(bytes.data()), bytes.size()));
    }
    void add(std::int64_t number) { add(fmt::to_string(number)); }
    template <class Value> void add(const std::optional<Value> &value)
    {
        if (value)
            add(*value);
        else
            m_sum.add("-,");
    }
    Sha256::Digest digest() { return m_sum.digest(); }

private:
    Sha256 m_sum;
};

std::string randomChangeId()
{
    std::array<std::uint8_t, 16> bytes{};
    if (RAND_bytes(bytes.data(), int(bytes.size())) != 1)
        throw Fault("This computer gives no random numbers.");
    return hex(bytes);
}

Blob blobOf(const SQLite::Column &column)
{
    const auto *first = static_cast<const std::uint8_t *>(column.getBlob());
    return first ? Blob(first, first + column.getBytes()) : Blob();
}

template <class Value> std::optional<Value> optional(const SQLite::Column &column, Value value)
{
    return column.isNull() ? std::nullopt : std::optional<Value>(std::move(value));
}

JournalLine lineAt(const SQLite::Statement &row)
{
    JournalLine line;
    line.seq = row.getColumn(0).getInt64();
    line.change_id = row.getColumn(1).getString();
    line.stamp = row.getColumn(2).getInt64();
    const auto kind = parseWord<ChangeKind>(row.getColumn(3).getString());
    if (!kind)
        throw UnreadableInput(Message{"The journal is damaged: row {0} is of no known kind.",
                                      {std::to_string(line.seq)}});
    line.kind = *kind;
    line.undoes = row.getColumn(4).getString();
    line.who = row.getColumn(5).getString();
    line.label = row.getColumn(6).getString();
    line.schema = row.getColumn(7).getInt64();
    return line;
}

JournalEntry entryAt(const SQLite::Statement &row)
{
    JournalEntry entry{lineAt(row), {}, {}, {}};
    entry.previous_hash = hex(blobOf(row.getColumn(8)));
    entry.hash = hex(blobOf(row.getColumn(9)));
    entry.origin_hash = hex(blobOf(row.getColumn(10)));
    return entry;
}

JournalRow rowAt(const SQLite::Statement &at)
{
    JournalRow row;
    row.seq = at.getColumn(0).getInt64();
    row.change_id = at.getColumn(1).getString();
    row.stamp = at.getColumn(2).getInt64();
    row.kind = at.getColumn(3).getString();
    row.undoes = optional(at.getColumn(4), at.getColumn(4).getString());
    row.who = optional(at.getColumn(5), at.getColumn(5).getString());
    row.label = at.getColumn(6).getString();
    row.schema = at.getColumn(7).getInt64();
    row.changeset = optional(at.getColumn(8), blobOf(at.getColumn(8)));
    row.origin_hash = optional(at.getColumn(9), blobOf(at.getColumn(9)));
    row.previous_hash = blobOf(at.getColumn(10));
    row.hash = blobOf(at.getColumn(11));
    return row;
}

std::optional<std::string> unlessEmpty(const std::string &text)
{
    return text.empty() ? std::nullopt : std::optional(text);
}

void bindBlob(SQLite::Statement &statement, int index, const Blob &bytes)
{
    statement.bindNoCopy(index, bytes.data(), int(bytes.size()));
}

void bindText(SQLite::Statement &statement, int index, const std::optional<std::string> &text)
{
    if (text)
        statement.bind(index, *text);
    else
        statement.bind(index);
}

/// The first time that no moment can hold. All rows after one of such a time would get impossible
/// times, too.
constexpr std::int64_t beyondTime =
    std::chrono::sys_time<std::chrono::milliseconds>(
        std::chrono::sys_days{std::chrono::year{2200} / std::chrono::January / 1})
        .time_since_epoch()
        .count();

/// Why a row cannot stand behind the one before it; empty when it can. `before` is null for the
/// first.
std::string_view whyBroken(const JournalRow &row, const JournalRow *before)
{
    if (!fitsItsHash(row))
        return "its row {0} (“{1}”) was altered";
    if (row.previous_hash != (before ? before->hash : Blob(32, 0)))
        return "its row {0} (“{1}”) does not follow the row before it";
    // Compared without adding 1, which would overflow for the greatest number.
    if (row.seq < 1 || row.seq - 1 != (before ? before->seq : 0))
        return "its row {0} (“{1}”) is out of sequence";
    return row.stamp < beyondTime ? "" : "its row {0} (“{1}”) is of a time after the year 2199";
}

} // namespace

Sha256::Digest hashOf(const JournalRow &row)
{
    ChainSum sum;
    sum.add(row.seq);
    sum.add(row.change_id);
    sum.add(row.stamp);
    sum.add(row.kind);
    sum.add(row.undoes);
    sum.add(row.who);
    sum.add(row.label);
    sum.add(row.schema);
    sum.add(row.changeset);
    sum.add(row.origin_hash);
    sum.add(row.previous_hash);
    return sum.digest();
}

bool fitsItsHash(const JournalRow &row)
{
    const auto digest = hashOf(row);
    return std::equal(digest.begin(), digest.end(), row.hash.begin(), row.hash.end());
}

std::int64_t stampAfter(std::int64_t seq, std::int64_t stamp)
{
    if (stamp == std::numeric_limits<std::int64_t>::max())
        throw UnreadableInput(Message{
            "The journal is damaged: no time comes after that of row {0}.", {std::to_string(seq)}});
    return stamp + 1;
}

std::optional<Message> firstBreak(const std::vector<JournalRow> &rows)
{
    const JournalRow *before = nullptr;
    for (const JournalRow &row : rows) {
        const std::string_view why = whyBroken(row, before);
        if (!why.empty())
            return Message{why, {std::to_string(row.seq), row.label}};
        before = &row;
    }
    return std::nullopt;
}

Journal::Journal(Database &database)
    : m_database(database)
{
}

JournalEntry Journal::append(const NewChange &change, std::int64_t now)
{
    const auto last = newest();
    JournalRow row;
    row.stamp = std::max({now, change.notBefore, last ? stampAfter(last->seq, last->stamp) : now});
    row.change_id = change.change_id.empty() ? randomChangeId() : change.change_id;
    row.kind = word(change.kind);
    row.undoes = unlessEmpty(change.undoes);
    // A label may hold the name of a file, which is any bytes.
    row.who = unlessEmpty(wellFormed(change.who));
    row.label = wellFormed(change.label);
    row.schema = schema();
    if (!change.changeset.empty())
        row.changeset = change.changeset;
    return chain(std::move(row));
}

std::int64_t Journal::schema()
{
    const StatementUse row(m_schema, m_database.sql(), "PRAGMA user_version");
    return row->executeStep() ? row->getColumn(0).getInt64() : 0;
}

void Journal::carry(const JournalRow &row)
{
    JournalRow carried = row;
    carried.kind = word(ChangeKind::Carried);
    if (!carried.origin_hash)
        carried.origin_hash = row.hash;
    chain(std::move(carried));
}

JournalEntry Journal::chain(JournalRow row)
{
    row.seq = 1;
    row.previous_hash = Blob(32, 0);
    {
        const StatementUse last(
            m_last, m_database.sql(),
            R"(SELECT "seq","hash" FROM "journal" ORDER BY "seq" DESC LIMIT 1)");
        if (last->executeStep()) {
            const std::int64_t newest = last->getColumn(0).getInt64();
            if (newest == std::numeric_limits<std::int64_t>::max())
                throw UnreadableInput(Message{"The journal is damaged: no row can follow row {0}.",
                                              {std::to_string(newest)}});
            row.seq = newest + 1;
            row.previous_hash = blobOf(last->getColumn(1));
        }
    }
    const auto digest = hashOf(row);
    row.hash.assign(digest.begin(), digest.end());
    return insert(row);
}

JournalEntry Journal::insert(const JournalRow &row)
{
    static const auto sql =
        fmt::format("INSERT INTO \"journal\" (\"seq\",\"change_id\",\"stamp\",\"kind\","
                    "\"undoes\",\"who\",\"label\",\"schema\",\"changeset\","
                    "\"origin_hash\",\"previous_hash\",\"hash\") "
                    "VALUES (?,?,?,?,?,?,?,?,?,?,?,?) RETURNING {}",
                    entryColumns);
    const StatementUse statement(m_insert, m_database.sql(), sql);
    statement->clearBindings();
    statement->bind(1, row.seq);
    statement->bind(2, row.change_id);
    statement->bind(3, row.stamp);
    statement->bind(4, row.kind);
    bindText(*statement, 5, row.undoes);
    bindText(*statement, 6, row.who);
    statement->bind(7, row.label);
    statement->bind(8, row.schema);
    if (row.changeset)
        bindBlob(*statement, 9, *row.changeset);
    if (row.origin_hash)
        bindBlob(*statement, 10, *row.origin_hash);
    bindBlob(*statement, 11, row.previous_hash);
    bindBlob(*statement, 12, row.hash);
    statement->executeStep();
    auto entry = entryAt(*statement);
    statement->executeStep();
    return entry;
}

std::optional<JournalLine> Journal::newest() const
{
    static const auto sql =
        fmt::format(R"(SELECT {} FROM "journal" ORDER BY "seq" DESC LIMIT 1)", lineColumns);
    const StatementUse row(m_newest, m_database.sql(), sql);
    return row->executeStep() ? std::optional(lineAt(*row)) : std::nullopt;
}

std::string Journal::newestHash() const
{
    SQLite::Statement row(m_database.sql(),
                          R"(SELECT "hash" FROM "journal" ORDER BY "seq" DESC LIMIT 1)");
    return row.executeStep() ? hex(blobOf(row.getColumn(0))) : std::string();
}

std::string Journal::oldestHash() const
{
    SQLite::Statement row(m_database.sql(),
                          R"(SELECT "hash" FROM "journal" ORDER BY "seq" LIMIT 1)");
    return row.executeStep() ? hex(blobOf(row.getColumn(0))) : std::string();
}

std::vector<JournalLine> Journal::lines() const
{
    std::vector<JournalLine> lines;
    SQLite::Statement row(m_database.sql(),
                          fmt::format(R"(SELECT {} FROM "journal" ORDER BY "seq")", lineColumns));
    while (row.executeStep())
        lines.push_back(lineAt(row));
    return lines;
}

std::vector<JournalEntry> Journal::entries(std::int64_t after) const
{
    std::vector<JournalEntry> entries;
    SQLite::Statement row(
        m_database.sql(),
        fmt::format(R"(SELECT {} FROM "journal" WHERE "seq">? ORDER BY "seq")", entryColumns));
    row.bind(1, after);
    while (row.executeStep())
        entries.push_back(entryAt(row));
    return entries;
}

Blob Journal::changeset(std::int64_t seq) const
{
    SQLite::Statement row(m_database.sql(), R"(SELECT "changeset" FROM "journal" WHERE "seq"=?)");
    row.bind(1, seq);
    return row.executeStep() ? blobOf(row.getColumn(0)) : Blob();
}

void Journal::forEachRow(const std::function<void(const JournalRow &)> &each) const
{
    SQLite::Statement row(m_database.sql(),
                          fmt::format(R"(SELECT {} FROM "journal" ORDER BY "seq")", rowColumns));
    while (row.executeStep())
        each(rowAt(row));
}

std::optional<JournalRow> Journal::rowOf(const std::string &changeId) const
{
    SQLite::Statement row(
        m_database.sql(),
        fmt::format(R"(SELECT {} FROM "journal" WHERE "change_id"=?)", rowColumns));
    row.bind(1, changeId);
    return row.executeStep() ? std::optional(rowAt(row)) : std::nullopt;
}

std::vector<JournalRow> Journal::rows() const
{
    std::vector<JournalRow> rows;
    forEachRow([&](const JournalRow &row) { rows.push_back(row); });
    return rows;
}

} // namespace lastrivet::storage
