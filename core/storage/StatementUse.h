// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <SQLiteCpp/Statement.h>

namespace lastrivet::storage {

/// One use of a statement that is kept: afterwards it is ready for the next one, also when this one
/// failed, as on a full disk.
class StatementUse {
public:
    explicit StatementUse(SQLite::Statement &statement)
        : m_statement(statement)
    {
    }
    ~StatementUse() { m_statement.tryReset(); }
    StatementUse(const StatementUse &) = delete;
    StatementUse &operator=(const StatementUse &) = delete;

private:
    SQLite::Statement &m_statement;
};

} // namespace lastrivet::storage
