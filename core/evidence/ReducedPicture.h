// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/evidence/PictureCache.h"

#include <filesystem>

namespace lastrivet::evidence {

/// How small a picture is made: its longest edge in pixels, and the JPEG quality, 1 to 100.
struct Reduction {
    int longest_edge = 0;
    int quality = 0;
};

/// Writes a smaller copy of a copy as `place`; or says why the copy that is there gives none. A
/// picture that is smaller already is only written anew. Throws a `FileFault` when `place` cannot
/// be written. About 20 ms. Any thread.
Result<PictureCopy, Message> reducedPicture(const PictureCopy &copy, Reduction reduction,
                                            const std::filesystem::path &place);

} // namespace lastrivet::evidence
