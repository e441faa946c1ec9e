// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"
#include "core/storage/Database.h"
#include "core/storage/ProjectFolder.h"
#include "core/verify/Verification.h"

#include <set>
#include <string>
#include <string_view>
#include <utility>

namespace lastrivet::verify_detail {

/// Findings of one kind, no more than are useful.
class Findings {
public:
    static constexpr int most = 100;

    Findings(Verification &verification, std::string_view what)
        : m_verification(verification)
        , m_what(what)
    {
    }

    void add(Message message, std::string_view record = {}, std::int64_t id = 0)
    {
        if (++m_count > most)
            ++m_verification.untold;
        else
            m_verification.findings.push_back({std::string(m_what), std::string(record), id,
                                               english(message), std::move(message)});
    }

private:
    Verification &m_verification;
    std::string_view m_what;
    int m_count = 0;
};

/// SQLite's own checks, and whether every reference leads somewhere.
void checkDatabase(const storage::Database &database, Verification &verification);
/// The records, checked against the rules they keep. Throws when they cannot be read.
Records checkRecords(const storage::Database &database, Verification &verification);
/// Every row's hash and its link to the row before.
void checkJournal(storage::Database &database, Verification &verification);
/// The journal played from its beginning into an empty database, compared table by table.
void checkReplay(storage::Database &database, Verification &verification);
/// The words that are searched, against the records.
void checkSearch(const Records &records, storage::Database &database, Verification &verification);
/// Every file that some record names or ever named: undone photos keep their files. Paths within
/// the project's folder, with slashes.
std::set<std::string> namedFiles(const Records &records, storage::Database &database);
/// Files that records name, files that no record ever named, and databases beside the project's
/// own.
void checkFiles(const Records &records, storage::Database &database,
                const storage::ProjectFolder &folder, std::stop_token stop,
                Verification &verification);

} // namespace lastrivet::verify_detail
