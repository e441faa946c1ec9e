// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/WriteFailure.h"

#include <cerrno>

namespace lastrivet {

std::string_view usualWriteFailure(int error)
{
    switch (error) {
    case ENOSPC:
    case EDQUOT:
        return "the disk is full";
    case EACCES:
    case EPERM:
    case EROFS:
        return "the folder cannot be written";
    case ENOENT:
    case ENOTDIR:
        return "there is no such folder";
    case EISDIR:
        return "a folder has that name";
    default:
        return {};
    }
}

} // namespace lastrivet
