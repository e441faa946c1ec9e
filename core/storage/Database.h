// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Error.h"

#include <SQLiteCpp/Database.h>

#include <filesystem>
#include <string>
#include <string_view>

namespace lastrivet::storage {

/// A connection to a project's database, with everything switched off that a hostile file could
/// use and everything on that keeps what was saved. One thread at a time may use it.
class Database {
public:
    enum class Access {
        ReadWrite,
        ReadOnly,
        Immutable, ///< nobody can write the file: no locks, no files beside it
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
    std::int64_t number(const std::string &query) const;
    std::string text(const std::string &query) const;
    /// Whether SQLite checks what rows name; inside a transaction it stays as it was.
    void checkReferences(bool on);
    /// Folds the write-ahead log into the file and empties it.
    void foldLogIn();
    /// Leaves the file as it is when this connection ends, even if changes could be folded in.
    void closeUntouched();

private:
    explicit Database(SQLite::Database sql);

    SQLite::Database m_sql;
    /// Empty in memory.
    std::filesystem::path m_file;
    Access m_access = Access::ReadWrite;
};

/// What SQLite's complaint means to a person; throws the fitting `Fault`.
[[noreturn]] void throwFault(const SQLite::Exception &exception);
[[noreturn]] void throwFault(const std::filesystem::filesystem_error &error);

/// Runs `body`; what SQLite and the file system complain about becomes a `Fault`.
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

/// As `withFaults`; what cannot be read is told with its place, for where it may be one of several.
template <class Body> decltype(auto) withFaultsAt(const std::filesystem::path &place, Body &&body)
{
    try {
        return withFaults(body);
    } catch (const UnreadableInput &fault) {
        throwNamed(place, fault);
    }
}

} // namespace lastrivet::storage
