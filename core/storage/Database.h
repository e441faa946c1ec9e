// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Error.h"

#include <SQLiteCpp/Database.h>

#include <filesystem>
#include <string>
#include <string_view>

namespace lastrivet::storage {

/// A connection to a project's database, configured to be safe against hostile files and to lose
/// nothing that was committed. To be used by one thread at a time.
class Database {
public:
    enum class Access {
        ReadWrite,
        ReadOnly,
        Immutable, ///< the file cannot change: no locks, and no further files beside it
    };
    enum class Safety {
        WriteAhead,     ///< for local disks
        RollbackJournal ///< for network folders, where processes share no memory
    };

    /// A database in memory, for comparisons.
    Database();
    Database(const std::filesystem::path &file, Access access, Safety safety);
    /// Makes the file; until `use` is called it keeps a rollback journal.
    static Database create(const std::filesystem::path &file);
    void use(Safety safety);

    /// A second connection to the same file, to read only; not for a database in memory.
    Database another() const;

    const SQLite::Database &sql() const { return m_sql; }
    void run(std::string_view statements);
    /// The first column of the query's first row; 0 when there is no row.
    std::int64_t number(const std::string &query) const;
    /// The same as text; empty when there is no row.
    std::string text(const std::string &query) const;
    /// Whether SQLite checks foreign keys; without effect inside a transaction.
    void checkReferences(bool on);
    /// Moves what is in the write-ahead log into the database file and empties the log.
    void checkpoint();
    /// Keeps SQLite from writing to the file when this connection ends, as it usually does to make
    /// a last checkpoint.
    void closeWithoutCheckpoint();

private:
    explicit Database(SQLite::Database sql);

    SQLite::Database m_sql;
    /// Empty in memory.
    std::filesystem::path m_file;
    Access m_access = Access::ReadWrite;
};

/// Throws the `Fault` that says in a sentence what the error means.
[[noreturn]] void throwFault(const SQLite::Exception &exception);
[[noreturn]] void throwFault(const std::filesystem::filesystem_error &error);

/// Runs `body`; turns errors of SQLite and of the file system into `Fault`s.
template <class Body> decltype(auto) withFaults(Body &&body)
{
    try {
        return body();
    } catch (const SQLite::Exception &exception) {
        throwFault(exception);
    } catch (const std::filesystem::filesystem_error &error) {
        throwFault(error);
    }
}

/// As `withFaults`; what cannot be read is named with its path, where it may be one of several
/// files.
template <class Body> decltype(auto) withFaultsAt(const std::filesystem::path &place, Body &&body)
{
    try {
        return withFaults(body);
    } catch (const UnreadableInput &fault) {
        throwNamed(place, fault);
    }
}

} // namespace lastrivet::storage
