// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/merge/ReplayMemory.h"

#include <algorithm>

namespace lastrivet::merge {

const std::string &ReplayMemory::writerOf(RecordRef record, const std::string &field) const
{
    static const std::string nobody;
    auto found = writers.find({record, field});
    if (found == writers.end())
        found = writers.find({record, {}});
    return found == writers.end() ? nobody : found->second;
}

bool ReplayMemory::isOfLeftOut(const std::string &file, RecordRef photo) const
{
    const auto found = leftOutFiles.find(file);
    return found != leftOutFiles.end() && found->second != photo;
}

bool ReplayMemory::wasSeen(RecordRef record, const std::string &field,
                           const storage::Cell &value) const
{
    const auto found = seen.find({record, field});
    return found != seen.end() &&
           std::find(found->second.begin(), found->second.end(), value) != found->second.end();
}

} // namespace lastrivet::merge
