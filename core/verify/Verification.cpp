// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/verify/Verification.h"

#include "core/base/Clock.h"
#include "core/base/Tongue.h"
#include "core/storage/Opening.h"
#include "core/storage/Schema.h"
#include "core/storage/Transaction.h"
#include "core/verify/Checks.h"

#include <optional>

namespace lastrivet {

namespace {

using namespace verify_detail;

const Message networkNote{
    "The project lies on a network folder or the like, and keeps a rollback journal there.", {}};

/// Damage that keeps a check from going on is a finding, too.
template <class Check>
void guarded(Verification &verification, std::string_view what, Check &&check)
{
    try {
        storage::withFaults(check);
    } catch (const Fault &fault) {
        Findings(verification, what).add(fault.message());
    }
}

/// The records; empty when they cannot be read.
std::optional<Records> checkStored(storage::Database &database, Verification &verification)
{
    // Another program may write meanwhile; tables and journal have to be of one moment.
    const storage::ReadTransaction reading(database);
    std::optional<Records> records;
    guarded(verification, "database", [&] { checkDatabase(database, verification); });
    guarded(verification, "database", [&] { records = checkRecords(database, verification); });
    guarded(verification, "journal", [&] { checkJournal(database, verification); });
    guarded(verification, "replay", [&] { checkReplay(database, verification); });
    if (records)
        guarded(verification, "search", [&] { checkSearch(*records, database, verification); });
    return records;
}

void checkAll(storage::Database &database, const storage::ProjectFolder &folder,
              std::stop_token stop, Verification &verification)
{
    const auto records = checkStored(database, verification);
    if (records)
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
            verification.notes.push_back(networkNote);
        checkAll(*opening.database, folder, stop, verification);
    });
    if (verification.untold > 0)
        verification.notes.push_back(
            {"Only the first {0} findings of each kind are listed; {1} more are not.",
             {std::to_string(Findings::most), std::to_string(verification.untold)}});
    return verification;
}

} // namespace lastrivet
