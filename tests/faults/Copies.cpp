// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/Copies.h"

#include "core/storage/Database.h"
#include "core/storage/DatabaseCopies.h"
#include "core/storage/Integrity.h"
#include "tests/faults/Site.h"

namespace lastrivet::faults {

namespace fs = std::filesystem;

std::string damageInCopies(const fs::path &site)
{
    const auto backup = site / shelf / Site::projectName;
    std::string damage;
    if (fs::exists(backup / "records.db"))
        damage = damageIn(backup, Leftovers::MayBeThere);
    for (const auto &project : {site / Site::projectName, backup}) {
        for (const auto &copy : storage::databaseCopies(project / "backups")) {
            const storage::Database database(copy.file, storage::Database::Access::Immutable,
                                             storage::Database::Safety::RollbackJournal);
            for (const auto &found : storage::damagesOf(database))
                damage += copy.file.string() + ": " + found + "\n";
        }
    }
    return damage;
}

std::set<std::string> hashesOnShelf(const fs::path &site)
{
    const auto backup = site / shelf / Site::projectName;
    std::set<std::string> hashes;
    if (!fs::exists(backup / "records.db"))
        return hashes;
    for (const auto &entry : Project::open(backup, {nullptr, {}, true})->journal())
        hashes.insert(entry.hash);
    return hashes;
}

} // namespace lastrivet::faults
