// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/files/FileBehind.h"

#include "core/base/Error.h"
#include "core/storage/Schema.h"

#include <algorithm>
#include <array>
#include <string>
#include <string_view>
#include <system_error>

namespace lastrivet::evidence {

namespace fs = std::filesystem;

namespace {

/// Whether a project keeps something under a name in its own folder; beside its database SQLite
/// has files of its own.
bool isKeptName(std::string_view name)
{
    static constexpr std::array<std::string_view, 4> names{"photos", "documents", "backups",
                                                           "records.lock"};
    return name.starts_with("records.db") || std::ranges::find(names, name) != names.end();
}

/// Whether a file that is there is a project's database, an earlier state of one, or lies in a
/// project's folder among what the project keeps.
bool isKept(const fs::path &file)
{
    std::error_code failure;
    const fs::path place = fs::canonical(file, failure);
    if (failure || !fs::is_regular_file(place, failure))
        return false;
    if (storage::isProjectDatabase(place))
        return true;
    fs::path within = place.filename();
    for (fs::path folder = place.parent_path(); folder != folder.parent_path();
         folder = folder.parent_path()) {
        if (isKeptName(within.begin()->string()) &&
            storage::isProjectDatabase(folder / "records.db"))
            return true;
        within = folder.filename() / within;
    }
    return false;
}

} // namespace

fs::path fileBehind(const fs::path &named)
{
    std::error_code failure;
    const bool isLink = fs::is_symlink(fs::symlink_status(named, failure));
    if (fs::is_other(fs::status(named, failure)))
        throw NotSaved(
            Message{"{0} is no file but a device or a pipe; nothing was written. Name a file.",
                    {named.string()}});
    if (isKept(named))
        throw NotSaved(Message{"{0} is what a Lastrivet project keeps; nothing was written. Choose "
                               "another name or folder.",
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
