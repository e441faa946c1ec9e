// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/verify/Verification.h"

#include "core/base/Clock.h"
#include "core/storage/Opening.h"
#include "core/storage/Schema.h"
#include "core/verify/Checks.h"

namespace lastrivet {

namespace {

using namespace verify_detail;

constexpr std::string_view networkNote =
    "The project lies on a network folder or the like, and keeps a rollback journal there.";

/// Damage that keeps a check from going on is a finding, too.
template <class Check>
void guarded(Verification &verification, std::string_view what, Check &&check)
{
    try {
        storage::withFaults(check);
    } catch (const Fault &fault) {
        Findings(verification, what).add(fault.what());
    }
}

void checkAll(storage::Database &database, const storage::ProjectFolder &folder,
              std::stop_token stop, Verification &verification)
{
    std::optional<Records> records;
    guarded(verification, "database", [&] { checkDatabase(database, verification); });
    guarded(verification, "database", [&] { records = checkRecords(database, verification); });
    guarded(verification, "journal", [&] { checkJournal(database, verification); });
    guarded(verification, "replay", [&] { checkReplay(database, verification); });
    if (!records)
        return;
    guarded(verification, "search", [&] { checkSearch(*records, database, verification); });
    guarded(verification, "file",
            [&] { checkFiles(*records, database, folder, stop, verification); });
}

} // namespace

Verification verify(const std::filesystem::path &root, std::stop_token stop)
{
    const storage::ProjectFolder folder(root);
    storage::requireProject(folder.root(), folder.database());
    Verification verification;
    guarded(verification, "database", [&] {
        const auto opening = storage::openDatabase(folder, true, SystemClock{}.now());
        if (opening.safety == storage::Database::Safety::RollbackJournal)
            verification.notes.emplace_back(networkNote);
        checkAll(*opening.database, folder, stop, verification);
    });
    return verification;
}

} // namespace lastrivet
