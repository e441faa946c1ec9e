// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/Database.h"

#include "core/base/WriteFailure.h"

#include <fmt/format.h>
#include <sqlite3.h>

namespace lastrivet::storage {

namespace {

constexpr int busyMilliseconds = 2000;

/// A connection belongs to one thread at a time; SQLite's locks around each of its calls would cost
/// a tenth of the time in which a project opens.
constexpr int oneThread = SQLITE_OPEN_NOMUTEX;

void configure(sqlite3 *handle, int option, int value)
{
    if (sqlite3_db_config(handle, option, value, nullptr) != SQLITE_OK)
        throw Fault("This build of SQLite lacks a protection that project files need.");
}

/// Far above what a project needs, far below SQLite's own limits, which a hostile file could use.
void limit(sqlite3 *handle)
{
    constexpr int longestValue = 256 * 1024 * 1024; // the changes of one import are one value
    sqlite3_limit(handle, SQLITE_LIMIT_LENGTH, longestValue);
    sqlite3_limit(handle, SQLITE_LIMIT_EXPR_DEPTH, 100);
    sqlite3_limit(handle, SQLITE_LIMIT_TRIGGER_DEPTH, 10);
    sqlite3_limit(handle, SQLITE_LIMIT_ATTACHED, 1); // copying needs one
    sqlite3_limit(handle, SQLITE_LIMIT_WORKER_THREADS, 0);
}

void harden(SQLite::Database &sql)
{
    sqlite3 *handle = sql.getHandle();
    limit(handle);
    configure(handle, SQLITE_DBCONFIG_DEFENSIVE, 1);
    configure(handle, SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0);
    configure(handle, SQLITE_DBCONFIG_ENABLE_FKEY, 1);
    configure(handle, SQLITE_DBCONFIG_ENABLE_VIEW, 0);
    configure(handle, SQLITE_DBCONFIG_ENABLE_LOAD_EXTENSION, 0);
    configure(handle, SQLITE_DBCONFIG_ENABLE_FTS3_TOKENIZER, 0);
    configure(handle, SQLITE_DBCONFIG_DQS_DML, 0);
    configure(handle, SQLITE_DBCONFIG_DQS_DDL, 0);
    sqlite3_extended_result_codes(handle, 1);
    // Without recursive triggers, INSERT OR REPLACE would bypass the journal's delete trigger.
    sql.exec("PRAGMA cell_size_check=ON; PRAGMA recursive_triggers=ON; PRAGMA synchronous=FULL");
}

std::string escaped(const std::filesystem::path &file)
{
    std::string uri;
    for (const char c : file.string()) {
        if (c == '?' || c == '#' || c == '%')
            uri += fmt::format("%{:02x}", static_cast<unsigned char>(c));
        else
            uri += c;
    }
    return uri;
}

SQLite::Database connect(const std::filesystem::path &file, Database::Access access)
{
    if (access == Database::Access::ReadWrite)
        return {file.string(), SQLite::OPEN_READWRITE | oneThread, busyMilliseconds};
    const auto *immutable = access == Database::Access::Immutable ? "?immutable=1" : "";
    // With an empty host, or two slashes at the beginning of the path would be taken for one.
    return {fmt::format("file://{}{}", escaped(std::filesystem::absolute(file)), immutable),
            SQLite::OPEN_READONLY | SQLite::OPEN_URI | oneThread, busyMilliseconds};
}

} // namespace

Database::Database(SQLite::Database sql)
    : m_sql(std::move(sql))
{
    harden(m_sql);
}

Database::Database()
    : Database(
          SQLite::Database(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE | oneThread))
{
}

Database::Database(const std::filesystem::path &file, Access access, Safety safety)
    : Database(connect(file, access))
{
    m_file = file;
    m_access = access;
    if (access == Access::ReadWrite)
        use(safety);
}

Database Database::create(const std::filesystem::path &file)
{
    Database made(SQLite::Database(file.string(),
                                   SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE |
                                       SQLITE_OPEN_EXCLUSIVE | oneThread,
                                   busyMilliseconds));
    made.m_file = file;
    return made;
}

Database Database::another() const
{
    const auto access = m_access == Access::Immutable ? Access::Immutable : Access::ReadOnly;
    return Database(m_file, access, Safety::WriteAhead);
}

void Database::use(Safety safety)
{
    if (safety == Safety::WriteAhead) {
        m_sql.exec("PRAGMA journal_mode=WAL");
        return;
    }
    // Leaving write-ahead mode needs shared memory unless the file is held exclusively.
    m_sql.exec("PRAGMA locking_mode=EXCLUSIVE; PRAGMA journal_mode=DELETE;"
               "PRAGMA locking_mode=NORMAL; SELECT count(*) FROM sqlite_schema");
}

void Database::run(std::string_view statements)
{
    m_sql.exec(std::string(statements));
}

std::int64_t Database::number(const std::string &query) const
{
    SQLite::Statement row(m_sql, query);
    return row.executeStep() ? row.getColumn(0).getInt64() : 0;
}

std::string Database::text(const std::string &query) const
{
    SQLite::Statement row(m_sql, query);
    return row.executeStep() ? row.getColumn(0).getString() : std::string();
}

void Database::checkReferences(bool on)
{
    run(on ? "PRAGMA foreign_keys=ON" : "PRAGMA foreign_keys=OFF");
}

void Database::checkpoint()
{
    run("PRAGMA wal_checkpoint(TRUNCATE)");
}

void Database::closeWithoutCheckpoint()
{
    configure(m_sql.getHandle(), SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1);
}

void throwFault(const SQLite::Exception &exception)
{
    const char *detail = exception.what();
    switch (exception.getErrorCode() & 0xff) {
    case SQLITE_FULL:
        throw NotSaved("The disk is full; nothing was changed.", Unchanged::IsSaid);
    case SQLITE_IOERR:
        throw NotSaved(
            Message{"The disk could not be read or written ({0}); nothing was changed.", {detail}},
            Unchanged::IsSaid);
    case SQLITE_READONLY:
    case SQLITE_CANTOPEN:
    case SQLITE_PERM:
        throw NotWritable(Message{"The project cannot be written ({0}).", {detail}});
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        throw NotWritable("Another program holds the project's database just now.");
    case SQLITE_NOTADB:
        throw UnreadableInput("records.db is not a database.");
    case SQLITE_CORRUPT:
        throw UnreadableInput(
            Message{"The database is damaged ({0}); restore a backup.", {detail}});
    case SQLITE_TOOBIG:
        throw UnreadableInput("The database holds a value larger than any that Lastrivet writes.");
    default:
        throw Fault(Message{"The database refused: {0}.", {detail}});
    }
}

void throwFault(const std::filesystem::filesystem_error &error)
{
    // When copying fails, either path may be the cause: a full disk is that of the second.
    if (error.path2().empty())
        throw NotSaved(Message{"{0} could not be read or written: {1}.",
                               {error.path1().string(), whyDiskFailed(error.code().value())}});
    throw NotSaved(Message{
        "{0} or {1} could not be read or written: {2}.",
        {error.path1().string(), error.path2().string(), whyDiskFailed(error.code().value())}});
}

} // namespace lastrivet::storage
