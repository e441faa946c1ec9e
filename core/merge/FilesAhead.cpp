// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/merge/FilesAhead.h"

#include "core/merge/CopyRead.h"
#include "core/merge/MergeHistories.h"

namespace lastrivet::merge {

FilesAhead::FilesAhead(std::filesystem::path project, std::filesystem::path other)
    : m_project(std::move(project))
    , m_place(std::move(other))
{
}

FilesAhead::~FilesAhead()
{
    takeBack(m_project, m_brought);
}

bool FilesAhead::bring(const OnFile &onFile)
{
    return storage::withFaults([&] {
        const CopyRead mine(m_project);
        const CopyRead other(m_place);
        const auto merged = mergeHistories(mine.state(), mine.history(), other.history());
        return merged.carried.empty() ||
               bringFiles(merged, mine.files(), other.files(), m_brought, onFile);
    });
}

} // namespace lastrivet::merge
