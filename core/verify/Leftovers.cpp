// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/verify/Leftovers.h"

#include "core/evidence/files/NewFile.h"

#include <unistd.h>

#include <algorithm>
#include <charconv>
#include <system_error>

namespace lastrivet::verify_detail {

namespace fs = std::filesystem;

namespace {

/// The prefix and a process, which is another: what this one writes is under way.
bool isOurs(std::string_view name)
{
    const auto prefix = evidence::leftoverPrefix;
    if (!name.starts_with(prefix))
        return false;
    ::pid_t process = 0;
    const auto read =
        std::from_chars(name.data() + prefix.size(), name.data() + name.size(), process);
    return read.ec == std::errc{} && process != ::getpid();
}

} // namespace

std::vector<fs::path> leftovers(const storage::ProjectFolder &folder,
                                const std::set<std::string> &named)
{
    std::vector<fs::path> files;
    std::error_code failure;
    for (auto at = fs::recursive_directory_iterator(folder.root(), failure);
         !failure && at != fs::recursive_directory_iterator(); at.increment(failure)) {
        std::error_code ignored;
        const auto within = at->path().lexically_relative(folder.root()).generic_string();
        if (at->symlink_status(ignored).type() == fs::file_type::regular &&
            isOurs(at->path().filename().string()) && !named.contains(within))
            files.push_back(at->path());
    }
    std::ranges::sort(files);
    return files;
}

} // namespace lastrivet::verify_detail
