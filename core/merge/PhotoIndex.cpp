// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/merge/PhotoIndex.h"

namespace lastrivet::merge {

void PhotoIndex::note(const Media &media)
{
    m_bySum[media.sha256].insert(media.id.value());
    m_byFile[media.file].insert(media.id.value());
}

const Media *PhotoIndex::withSum(const Records &records, const std::string &sum,
                                 std::int64_t except) const
{
    const auto ids = m_bySum.find(sum);
    if (ids == m_bySum.end())
        return nullptr;
    for (const std::int64_t id : ids->second) {
        const Media *media = id == except ? nullptr : records.find(Id<Media>{id});
        if (media && media->sha256 == sum && !media->withdrawn_on)
            return media;
    }
    return nullptr;
}

const Media *PhotoIndex::withFile(const Records &records, const std::string &file) const
{
    const auto ids = m_byFile.find(file);
    if (ids == m_byFile.end())
        return nullptr;
    for (const std::int64_t id : ids->second) {
        const Media *media = records.find(Id<Media>{id});
        if (media && media->file == file)
            return media;
    }
    return nullptr;
}

} // namespace lastrivet::merge
