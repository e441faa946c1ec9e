// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/files/FileBehind.h"

#include "core/base/Error.h"

#include <fmt/format.h>

#include <system_error>

namespace lastrivet::evidence {

namespace fs = std::filesystem;

fs::path fileBehind(const fs::path &named)
{
    std::error_code failure;
    const bool isLink = fs::is_symlink(fs::symlink_status(named, failure));
    const fs::file_status behind = fs::status(named, failure);
    if (isLink && behind.type() == fs::file_type::not_found)
        throw NotSaved(
            fmt::format("{} is a link that leads nowhere; nothing was written.", named.string()));
    if (fs::is_other(behind))
        throw NotSaved(
            fmt::format("{} is no file but a device or a pipe; nothing was written. Name a file.",
                        named.string()));
    if (!isLink)
        return named;
    const fs::path place = fs::canonical(named, failure);
    return failure ? named : place;
}

} // namespace lastrivet::evidence
