// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/base/Result.h"
#include "core/records/Media.h"

#include <filesystem>
#include <functional>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

namespace lastrivet::evidence {

enum class PictureSize {
    Small, ///< longest edge at most 256 pixels
    Large, ///< longest edge at most 1600 pixels
};

/// A copy of a photo: upright JPEG, 8 bits, without metadata but its colour profile.
struct PictureCopy {
    std::filesystem::path file;
    int width = 0;
    int height = 0;
    std::string sha256; ///< of the copy, 64 hex digits
};

/// Small and large copies of photos, named by the hash of their original: a cache that may be wiped
/// at any time.
///
/// All functions may be called on any thread, several at a time.
class PictureCache {
public:
    explicit PictureCache(std::filesystem::path projectFolder);
    /// With the copies elsewhere, for a project folder that cannot be written.
    PictureCache(std::filesystem::path projectFolder, std::filesystem::path cacheFolder);

    /// The copy, or empty when there is none yet.
    std::optional<std::filesystem::path> path(const Media &media, PictureSize size) const;

    /// Makes both copies from one decode of the original, which must still have the hash on record.
    /// Answers null, or the sentence why there is none. About 50 ms for 12 megapixels.
    std::optional<Message> make(const Media &media) const;
    /// Makes what is missing with `workers` threads (0: on the calling thread). `made` is told of
    /// each photo, on a worker thread, one call at a time.
    using Made = std::function<void(const Media &media, const std::optional<Message> &failure)>;
    void makeMissing(const std::vector<Media> &media, unsigned workers, const Made &made,
                     std::stop_token stop = {}) const;

    /// The copy with its size and hash, made when it is missing.
    Result<PictureCopy, Message> copy(const Media &media, PictureSize size) const;

    /// Removes all copies.
    void wipe() const;

private:
    std::filesystem::path nameFor(const Media &media, PictureSize size) const;

    std::filesystem::path m_projectFolder;
    std::filesystem::path m_cacheFolder;
};

} // namespace lastrivet::evidence
