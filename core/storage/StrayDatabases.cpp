// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/StrayDatabases.h"

#include "core/storage/Schema.h"

#include <algorithm>
#include <system_error>

namespace lastrivet::storage {

namespace fs = std::filesystem;

std::vector<fs::path> strayDatabases(const ProjectFolder &folder)
{
    std::vector<fs::path> strays;
    std::error_code failure;
    for (auto at = fs::directory_iterator(folder.root(), failure);
         !failure && at != fs::directory_iterator(); at.increment(failure)) {
        const auto name = at->path().filename();
        std::error_code ignored;
        // Hidden files are such programs' own, and not whole yet.
        const bool isPlain = at->symlink_status(ignored).type() == fs::file_type::regular &&
                             !name.string().starts_with('.');
        if (isPlain && name != folder.database().filename() && isProjectDatabase(at->path()))
            strays.push_back(at->path());
    }
    std::ranges::sort(strays);
    return strays;
}

} // namespace lastrivet::storage
