// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/ReadOnlyReason.h"

#include "core/base/Clock.h"

#include <string>
#include <utility>
#include <vector>

namespace lastrivet {

namespace {

Message openElsewhere(const std::optional<storage::WriterLock::Holder> &holder,
                      std::string_view zone)
{
    if (!holder)
        return {"Another program has the project open for writing.", {}};
    std::vector<std::string> arguments{std::to_string(holder->process), holder->host,
                                       localMoment(holder->since, zone).text()};
    if (holder->user.empty())
        return {"Process {0} on {1} has the project open for writing since {2}.",
                std::move(arguments)};
    arguments.push_back(holder->user);
    return {"{3} has the project open for writing since {2} (process {0} on {1}).",
            std::move(arguments)};
}

} // namespace

std::optional<Message> readOnlyReason(const storage::Opening &opening, std::string_view zone)
{
    if (!opening.readOnly)
        return std::nullopt;
    switch (*opening.readOnly) {
    case storage::ReadOnlyCause::Asked:
        return Message{"The project was opened for reading only.", {}};
    case storage::ReadOnlyCause::FolderNotWritable:
        return Message{"The project's folder cannot be written.", {}};
    case storage::ReadOnlyCause::NoLocks:
        return Message{
            "The disk that the project's folder is on keeps no locks, so that two programs "
            "could write at once; copy the folder to another disk to go on with it.",
            {}};
    case storage::ReadOnlyCause::OpenElsewhere:
        break;
    }
    return openElsewhere(opening.holder, zone);
}

} // namespace lastrivet
