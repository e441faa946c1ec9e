// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/storage/Database.h"
#include "core/storage/Integrity.h"

#include <vector>

namespace lastrivet::storage {

/// When references between records are checked.
enum class ReferenceCheck {
    WithEachRow,
    /// Once, over the whole database; for changes of many rows. Checking with each row, SQLite
    /// would search whole tables for rows that refer to it.
    AtTheEnd,
};

/// A write transaction; rolled back unless it is committed.
class Transaction {
public:
    explicit Transaction(Database &database, ReferenceCheck check = ReferenceCheck::WithEachRow);
    /// Checks references at the end; the dangling ones in `known`, which were there before, may
    /// stay.
    Transaction(Database &database, std::vector<DanglingRow> known);
    ~Transaction();
    Transaction(const Transaction &) = delete;
    Transaction &operator=(const Transaction &) = delete;

    /// Throws a `Fault` that names a record with a dangling reference. After an exception of SQLite
    /// it is not known whether the disk has the changes.
    void commit();

private:
    void requireReferences() const;
    void end() noexcept;

    Database &m_database;
    ReferenceCheck m_check;
    std::vector<DanglingRow> m_known;
    bool m_isOpen = true;
};

/// A read transaction: while it lives, everything that is read is of one moment, whatever another
/// program writes.
class ReadTransaction {
public:
    explicit ReadTransaction(const Database &database);
    ~ReadTransaction();
    ReadTransaction(const ReadTransaction &) = delete;
    ReadTransaction &operator=(const ReadTransaction &) = delete;

private:
    const Database &m_database;
};

} // namespace lastrivet::storage
