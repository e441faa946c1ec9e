// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Edit.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace lastrivet::acts {

/// What becomes of the times of pictures that a camera with a wrong clock took, when all are moved
/// by the same length. The files stay as they are, with what the camera wrote into them.
struct TimeShift {
    struct Moved {
        Id<Media> media;
        Moment was;
        Moment becomes;
    };
    /// The earliest first.
    std::vector<Moved> moved;
    /// Those whose time is not known: no day, or a day alone that is moved by other than whole
    /// days.
    std::vector<Id<Media>> left;
    /// Those that would lie outside the years that records know; they are left, too.
    std::vector<Id<Media>> beyond;
};

/// Later by so many minutes, or earlier where these are less than nothing.
TimeShift timeShift(const Records &records, const std::vector<Id<Media>> &media,
                    std::int64_t minutes);

/// The live one among them that was taken first, by what is on record; with `timed`, of those whose
/// time of day is known. Null when there is none.
const Media *takenFirst(const Records &records, const std::vector<Id<Media>> &media, bool timed);

/// By how many minutes all are moved when the first of them was taken at `first` in truth: a day
/// alone moves them by whole days. Empty when none of them says when it was taken.
std::optional<std::int64_t> minutesUntil(const Records &records,
                                         const std::vector<Id<Media>> &media, Moment first);

/// Moves the times, as far as `timeShift` says.
void shiftTimes(Edit &edit, const std::vector<Id<Media>> &media, std::int64_t minutes);

} // namespace lastrivet::acts
