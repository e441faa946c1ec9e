// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/SecondDatabases.h"

#include "core/storage/StrayDatabases.h"

namespace lastrivet {

namespace fs = std::filesystem;

std::vector<fs::path> secondDatabases(const Project &project)
{
    return storage::strayDatabases(storage::ProjectFolder(project.folder()));
}

void putAway(const Project &project, const fs::path &second)
{
    const storage::ProjectFolder folder(project.folder());
    storage::withFaults([&] {
        fs::create_directories(folder.backups());
        auto target = folder.backups() / ("merged-" + second.filename().string());
        for (int count = 2; fs::exists(target); ++count)
            target = folder.backups() /
                     ("merged-" + std::to_string(count) + "-" + second.filename().string());
        fs::rename(second, target);
        storage::syncFolder(folder.backups());
        storage::syncFolder(folder.root());
    });
}

} // namespace lastrivet
