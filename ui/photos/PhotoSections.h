// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"

#include <QString>

#include <functional>
#include <vector>

namespace lastrivet::ui {

/// Photos that stand together under one heading, the newest first.
struct PhotoSection {
    /// The year times 100 and the month, or the id of the part; 0 for what has neither.
    std::int64_t key = 0;
    QString title;
    /// The part that this part belongs to: many parts of an aircraft have the same name.
    QString within;
    std::vector<Id<Media>> photos;

    friend bool operator==(const PhotoSection &, const PhotoSection &) = default;
};

/// By months, or by parts: then a photo stands under each part that it is about.
enum class PhotoOrder { ByDate, ByPart };

using PhotoFilter = std::function<bool(const Records &records, const Media &media)>;

/// The live files that the filter lets through, under their headings: the newest month first, parts
/// in the order of the tree.
std::vector<PhotoSection> photoSections(const Records &records, PhotoOrder order,
                                        const PhotoFilter &filter);

} // namespace lastrivet::ui
