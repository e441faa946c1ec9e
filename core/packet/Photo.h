// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/Region.h"

#include <optional>
#include <string>
#include <vector>

namespace lastrivet::packet {

/// A photograph to be printed: what it shows, when, and of which part.
struct Photo {
    Id<Media> id;
    /// Counted from 1 in printing order, so that other pages can name it.
    int number = 0;
    std::string file;
    std::string sha256;
    std::optional<Moment> taken_on;
    /// True when only the day on which it was taken in is known.
    bool is_day_of_intake = false;
    std::string part;
    std::string caption;
    WordSet<Shows> shows;
    std::vector<Media::Annotation> annotations;
    /// The records it belongs to; in a region, those of them that it holds.
    std::vector<RecordRef> subjects;
};

/// A photograph with the name of its part, without the records that it belongs to.
Photo plainPhoto(const Media &media, int number, std::string part);
/// A photograph on its own, with the first part and all records that it belongs to.
Photo photoOf(const Records &records, const Media &media, int number);
/// Photographs of the open structure of the region: by part in the order of the tree, then by date.
/// Those that show nothing but the outside, a receipt or a signed sheet are left out.
std::vector<Photo> photos(const Region &region);
/// Pictures of the sheets signed for the chosen closings, numbered on from `first`.
std::vector<Photo> signedSheets(const Region &region, int first);
/// The numbers of the photographs that belong to a record.
std::vector<int> numbersOf(const std::vector<Photo> &photos, RecordRef subject);
/// Videos of the region, which cannot be printed.
std::vector<Photo> videos(const Region &region);

} // namespace lastrivet::packet
