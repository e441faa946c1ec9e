// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/files/FileBehind.h"

#include "core/base/Error.h"

#include <system_error>

namespace lastrivet::evidence {

namespace fs = std::filesystem;

fs::path fileBehind(const fs::path &named)
{
    std::error_code failure;
    const bool isLink = fs::is_symlink(fs::symlink_status(named, failure));
    if (fs::is_other(fs::status(named, failure)))
        throw NotSaved(
            Message{"{0} is no file but a device or a pipe; nothing was written. Name a file.",
                    {named.string()}});
    if (!isLink)
        return named;
    const fs::path place = fs::canonical(named, failure);
    if (failure)
        throw NotSaved(
            Message{"{0} is a link that leads nowhere; nothing was written.", {named.string()}});
    return place;
}

} // namespace lastrivet::evidence
