// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/backup/OwnCopies.h"

#include "core/storage/DatabaseCopies.h"
#include "core/storage/Opening.h"

#include <algorithm>
#include <cstdint>
#include <system_error>

namespace lastrivet::backup {

bool keepCopy(const std::filesystem::path &project, Time now)
{
    return storage::withFaults([&] {
        const storage::ProjectFolder folder(project);
        const auto source = storage::openDatabase(folder, true, now);
        return storage::addDatabaseCopy(*source.database, folder.backups(), now).has_value();
    });
}

bool isCopyDue(const std::filesystem::path &project, Time now)
{
    using std::chrono::days;
    const auto today = std::chrono::floor<days>(now);
    const auto copies = storage::databaseCopies(storage::ProjectFolder(project).backups());
    return std::none_of(copies.begin(), copies.end(), [&](const storage::DatabaseCopy &copy) {
        return std::chrono::floor<days>(copy.made) == today;
    });
}

bool isCopyDueAtEnd(const std::filesystem::path &project, Time now)
{
    constexpr std::uintmax_t largestOfSmall = 8 * 1024 * 1024;
    std::error_code failure;
    const auto bytes =
        std::filesystem::file_size(storage::ProjectFolder(project).database(), failure);
    return (!failure && bytes <= largestOfSmall) || isCopyDue(project, now);
}

} // namespace lastrivet::backup
