// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/WriteFailure.h"

#include "core/base/Tongue.h"

#include <cerrno>
#include <system_error>

namespace lastrivet {

namespace {

/// What is usual whether something is read or written.
std::string_view usualDiskFailure(int error)
{
    switch (error) {
    case ENOSPC:
    case EDQUOT:
        return "the disk is full";
    case EFBIG:
        return "the disk takes no file so large";
    case EIO:
        return "the disk reports an error";
    case ENAMETOOLONG:
        return "the name is too long";
    default:
        return {};
    }
}

std::string_view usualReadFailure(int error)
{
    switch (error) {
    case EACCES:
    case EPERM:
        return "its permissions forbid it";
    case ENOENT:
    case ENOTDIR:
        return "it is not there";
    case EISDIR:
        return "it is a folder, not a file";
    default:
        return usualDiskFailure(error);
    }
}

std::string inWordsOr(std::string_view usual, int error)
{
    return usual.empty() ? std::generic_category().message(error) : nested({usual, {}});
}

} // namespace

std::string_view usualWriteFailure(int error)
{
    switch (error) {
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
        return usualDiskFailure(error);
    }
}

std::string whyNotWritten(int error)
{
    return inWordsOr(usualWriteFailure(error), error);
}

std::string whyNotRead(int error)
{
    return inWordsOr(usualReadFailure(error), error);
}

std::string whyDiskFailed(int error)
{
    return inWordsOr(usualDiskFailure(error), error);
}

} // namespace lastrivet
