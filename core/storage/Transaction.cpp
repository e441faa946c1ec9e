// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/Transaction.h"

#include <algorithm>
#include <exception>
#include <spdlog/spdlog.h>
#include <utility>

namespace lastrivet::storage {

namespace {

/// Ignores errors: after most faults SQLite has rolled back by itself, and rolling back fails.
template <class Step> void attempt(const Step &step) noexcept
{
    try {
        step();
    } catch (const std::exception &exception) {
        spdlog::debug("ending a transaction: {}", exception.what());
    }
}

} // namespace

Transaction::Transaction(Database &database, ReferenceCheck check)
    : m_database(database)
    , m_check(check)
{
    // Inside a transaction SQLite ignores this pragma.
    if (m_check == ReferenceCheck::AtTheEnd)
        m_database.checkReferences(false);
    try {
        m_database.run("BEGIN IMMEDIATE");
    } catch (...) {
        m_isOpen = false;
        end();
        throw;
    }
}

Transaction::Transaction(Database &database, std::vector<DanglingRow> known)
    : Transaction(database, ReferenceCheck::AtTheEnd)
{
    m_known = std::move(known);
}

Transaction::~Transaction()
{
    end();
}

void Transaction::commit()
{
    if (m_check == ReferenceCheck::AtTheEnd)
        requireReferences();
    m_database.run("COMMIT");
    m_isOpen = false;
    end();
}

void Transaction::requireReferences() const
{
    for (const auto &row : danglingRows(m_database)) {
        if (std::find(m_known.begin(), m_known.end(), row) == m_known.end())
            throw Fault(Message{"{0} {1} names a {2} that does not exist.",
                                {row.table, std::to_string(row.id), row.missing}});
    }
}

void Transaction::end() noexcept
{
    if (std::exchange(m_isOpen, false))
        attempt([this] { m_database.run("ROLLBACK"); });
    if (m_check == ReferenceCheck::AtTheEnd)
        attempt([this] { m_database.checkReferences(true); });
}

ReadTransaction::ReadTransaction(const Database &database)
    : m_database(database)
{
    m_database.number("BEGIN");
}

ReadTransaction::~ReadTransaction()
{
    try {
        m_database.number("COMMIT");
    } catch (const std::exception &exception) {
        spdlog::debug("ending a read transaction: {}", exception.what());
    }
}

} // namespace lastrivet::storage
