// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/StrayDatabases.h"

#include "core/storage/Schema.h"

#include <algorithm>
#include <array>
#include <string>
#include <string_view>
#include <system_error>

namespace lastrivet::storage {

namespace fs = std::filesystem;

namespace {

/// The database itself, and what SQLite keeps beside it: opened and closed here, its shared memory
/// would lose the locks by which another program knows that it is in use. Other names that begin
/// like it are strangers' copies.
bool isOf(const std::string &database, const std::string &name)
{
    static constexpr std::array<std::string_view, 4> own{"", "-wal", "-shm", "-journal"};
    return name.starts_with(database) &&
           std::ranges::find(own, std::string_view(name).substr(database.size())) != own.end();
}

} // namespace

std::vector<fs::path> strayDatabases(const ProjectFolder &folder)
{
    const auto own = folder.database().filename().string();
    std::vector<fs::path> strays;
    std::error_code failure;
    for (auto at = fs::directory_iterator(folder.root(), failure);
         !failure && at != fs::directory_iterator(); at.increment(failure)) {
        const auto name = at->path().filename().string();
        std::error_code ignored;
        // Hidden files are such programs' own, and not whole yet.
        const bool isPlain =
            at->symlink_status(ignored).type() == fs::file_type::regular && !name.starts_with('.');
        if (isPlain && !isOf(own, name) && isProjectDatabase(at->path()))
            strays.push_back(at->path());
    }
    std::ranges::sort(strays);
    return strays;
}

} // namespace lastrivet::storage
