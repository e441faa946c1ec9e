// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/storage/Database.h"
#include "tests/ui/support/Workshop.h"

#include <filesystem>
#include <string>
#include <utility>

namespace lastrivet::test {

/// Takes a table away from under an open project, as a disk would that fails, until it is put back.
class AwayTable {
public:
    AwayTable(const Workshop &workshop, std::string table)
        : m_file(workshop.folder() / "records.db")
        , m_table(std::move(table))
    {
        rename(m_table, m_table + "_away");
    }
    void putBack() const { rename(m_table + "_away", m_table); }

private:
    void rename(const std::string &from, const std::string &to) const
    {
        storage::Database database(m_file, storage::Database::Access::ReadWrite,
                                   storage::Database::Safety::WriteAhead);
        database.run("ALTER TABLE \"" + from + "\" RENAME TO \"" + to + "\"");
    }

    std::filesystem::path m_file;
    std::string m_table;
};

} // namespace lastrivet::test
