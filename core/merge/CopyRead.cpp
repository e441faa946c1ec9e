// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/merge/CopyRead.h"

#include "core/storage/RecordReader.h"

namespace lastrivet::merge {

namespace fs = std::filesystem;

CopyRead::CopyRead(const fs::path &place)
    : m_folder(fs::is_regular_file(place) ? place.parent_path() : place)
{
    // Of two that are to become one, it has to be said which cannot be read.
    storage::withFaultsAt(place, [&] {
        const storage::Opening opening = storage::openCopyOf(
            fs::is_regular_file(place) ? place : storage::ProjectFolder(place).database());
        const auto &sql = opening.database->sql();
        m_state = {storage::RecordReader(sql).readAll(), storage::readConflicts(sql)};
        m_history = storage::Journal(*opening.database).rows();
    });
}

} // namespace lastrivet::merge
