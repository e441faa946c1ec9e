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
    /// Once, over the whole database: for many rows. With each row SQLite would look for the rows
    /// that name it, which takes a walk over their tables.
    AtTheEnd,
};

/// A write transaction: undone unless it is committed.
class Transaction {
public:
    explicit Transaction(Database &database, ReferenceCheck check = ReferenceCheck::WithEachRow);
    /// References are checked at the end; what dangled before, which `known` tells, may stay.
    Transaction(Database &database, std::vector<DanglingRow> known);
    ~Transaction();
    Transaction(const Transaction &) = delete;
    Transaction &operator=(const Transaction &) = delete;

    /// Throws a `Fault` that names a record with a dangling reference. An exception of SQLite from
    /// here leaves open whether the disk has the changes.
    void commit();

private:
    void requireReferences() const;
    void end() noexcept;

    Database &m_database;
    ReferenceCheck m_check;
    std::vector<DanglingRow> m_known;
    bool m_isOpen = true;
};

/// While it lives, everything that is read is of one moment, whatever another program writes.
class Reading {
public:
    explicit Reading(const Database &database);
    ~Reading();
    Reading(const Reading &) = delete;
    Reading &operator=(const Reading &) = delete;

private:
    const Database &m_database;
};

} // namespace lastrivet::storage
