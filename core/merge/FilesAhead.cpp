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
    for (const auto &file : m_copied) {
        std::error_code stays;
        std::filesystem::remove(file, stays);
    }
}

bool FilesAhead::bring(const OnFile &onFile)
{
    return storage::withFaults([&] {
        const CopyRead mine(m_project);
        const CopyRead other(m_place);
        const auto merged = mergeHistories(mine.state(), mine.history(), other.history());
        BroughtFiles brought;
        return merged.carried.empty() ||
               bringFiles(merged.state.records, mine.files(), other.files(), brought,
                          [&](std::size_t done, std::size_t total) {
                              m_copied = brought.copied;
                              return !onFile || onFile(done, total);
                          });
    });
}

} // namespace lastrivet::merge
