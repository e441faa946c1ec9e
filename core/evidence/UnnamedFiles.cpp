// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/UnnamedFiles.h"

#include "core/storage/FilesNamed.h"
#include "core/storage/ProjectFolder.h"

#include <spdlog/spdlog.h>

#include <exception>
#include <mutex>
#include <set>
#include <system_error>

namespace lastrivet::evidence {

namespace {

namespace fs = std::filesystem;

/// Files that two takings-in share, of all projects, as long as the program runs: whichever of the
/// two gives up does not know what becomes of the other. Each is there as often as it was claimed.
struct SharedFiles {
    std::mutex mutex;
    std::multiset<fs::path> files;
};

SharedFiles &shared()
{
    static SharedFiles files;
    return files;
}

fs::path placeOf(const fs::path &projectFolder, const std::string &file)
{
    return (projectFolder / file).lexically_normal();
}

/// What the records say now, on a connection of its own: this may be any thread.
std::set<std::string> namedNow(const fs::path &projectFolder)
{
    const storage::ProjectFolder folder(projectFolder);
    if (!fs::exists(folder.database()))
        return {};
    return storage::withFaults([&] {
        const storage::Database database(folder.database(), storage::Database::Access::ReadOnly,
                                         folder.safety());
        return storage::filesOnRecord(database);
    });
}

} // namespace

void keepForRecord(const fs::path &projectFolder, const std::string &file)
{
    auto &all = shared();
    const std::scoped_lock lock(all.mutex);
    all.files.insert(placeOf(projectFolder, file));
}

void letGo(const fs::path &projectFolder, const std::string &file)
{
    auto &all = shared();
    const std::scoped_lock lock(all.mutex);
    if (const auto claim = all.files.find(placeOf(projectFolder, file)); claim != all.files.end())
        all.files.erase(claim);
}

void removeUnnamed(const fs::path &projectFolder, const std::vector<std::string> &files)
{
    if (files.empty())
        return;
    try {
        const auto named = namedNow(projectFolder);
        auto &all = shared();
        const std::scoped_lock lock(all.mutex);
        for (const std::string &file : files) {
            const fs::path place = placeOf(projectFolder, file);
            std::error_code stays;
            if (!named.contains(storage::fileName(file)) && !all.files.contains(place))
                fs::remove(place, stays);
        }
    } catch (const std::exception &fault) {
        spdlog::warn("copies without a record stay: {}", fault.what());
    }
}

} // namespace lastrivet::evidence
