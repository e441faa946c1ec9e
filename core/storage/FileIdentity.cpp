// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/FileIdentity.h"

#include <sys/stat.h>

namespace lastrivet::storage {

std::optional<FileIdentity> identityOf(const std::filesystem::path &file)
{
    struct stat status {};
    if (::stat(file.c_str(), &status) != 0)
        return std::nullopt;
    return FileIdentity{std::uint64_t(status.st_dev), std::uint64_t(status.st_ino)};
}

} // namespace lastrivet::storage
