// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/journal/RecordHistory.h"

#include "core/base/Clock.h"
#include "core/storage/JournalSearch.h"
#include "core/storage/Opening.h"

namespace lastrivet::journal {

std::vector<std::int64_t> rowsTouching(const std::filesystem::path &folder,
                                       const std::set<RecordRef> &records)
{
    return storage::withFaults([&] {
        const auto opening =
            storage::openDatabase(storage::ProjectFolder(folder), true, SystemClock{}.now());
        return storage::rowsTouching(*opening.database, records);
    });
}

} // namespace lastrivet::journal
