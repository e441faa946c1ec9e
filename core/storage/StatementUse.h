// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <SQLiteCpp/Statement.h>

#include <optional>
#include <string>

namespace lastrivet::storage {

/// A statement that is prepared at its first use and kept for the next ones.
using KeptStatement = std::optional<SQLite::Statement>;

/// One use of a kept statement. Resets it at the end, also after an error such as a full disk, so
/// that it is ready for the next use.
class StatementUse {
public:
    explicit StatementUse(SQLite::Statement &statement)
        : m_statement(statement)
    {
    }
    StatementUse(KeptStatement &kept, const SQLite::Database &database, const std::string &sql)
        : StatementUse(kept ? *kept : kept.emplace(database, sql))
    {
    }
    ~StatementUse() { m_statement.tryReset(); }
    StatementUse(const StatementUse &) = delete;
    StatementUse &operator=(const StatementUse &) = delete;
    SQLite::Statement &operator*() const { return m_statement; }
    SQLite::Statement *operator->() const { return &m_statement; }

private:
    SQLite::Statement &m_statement;
};

} // namespace lastrivet::storage
