// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/PictureCache.h"

#include "core/base/Sha256.h"
#include "core/evidence/MediaFile.h"
#include "core/evidence/Workers.h"
#include "core/evidence/files/FileFault.h"
#include "core/evidence/files/NewFile.h"
#include "core/evidence/files/SourceFile.h"
#include "core/evidence/pictures/Exif.h"
#include "core/evidence/pictures/JpegLayout.h"
#include "core/evidence/pictures/JpegWriter.h"
#include "core/evidence/pictures/PictureReader.h"
#include "core/evidence/pictures/Transform.h"

#include <array>
#include <mutex>
#include <system_error>

namespace lastrivet::evidence {

namespace fs = std::filesystem;

namespace {

constexpr int smallEdge = 256;
constexpr int largeEdge = 1600;
constexpr int smallQuality = 80;
constexpr int largeQuality = 85;

/// A power cut leaves a file that was just written without its end.
bool hasEnd(const fs::path &jpeg)
{
    try {
        const SourceFile file(jpeg);
        std::array<std::uint8_t, 2> end{};
        return file.size() > 2 && file.readAt(file.size() - 2, end) == 2 && end[0] == 0xff &&
               end[1] == 0xd9;
    } catch (const FileFault &) {
        return false;
    }
}

/// The original's bytes, only if they are still those that were taken in.
Bytes readOriginal(const fs::path &projectFolder, const Media &media)
{
    const auto file = locate(projectFolder, media);
    if (media.kind == MediaKind::Photo && file && media.sha256.empty())
        throw FileFault({"{0} was not there when its record came; take the file in as a photo.",
                         {shownName(media.file)}});
    if (media.kind != MediaKind::Photo || !file || !isSha256(media.sha256))
        throw FileFault({"{0} is not a photo in the project folder.", {shownName(media.file)}});
    const SourceFile source(*file);
    if (source.size() > longestPictureFile)
        throw FileFault({"{0} is larger than any photo.", {source.name()}});
    Bytes bytes = source.readAll();
    if (sha256(bytes) != media.sha256)
        throw FileFault(
            {"{0} is not the file that was taken in: it has changed since.", {source.name()}});
    return bytes;
}

struct Original {
    Pixels pixels; ///< upright, at most `largeEdge` long
    std::vector<std::uint8_t> colour_profile;
};

Original readUpright(std::span<const std::uint8_t> bytes, const std::string &name)
{
    const auto kind = sniff(bytes);
    if (!kind || mediaKind(*kind) != MediaKind::Photo)
        throw FileFault({"{0} is not a photo (JPEG, PNG, HEIC).", {name}});
    Exif exif = readExif(bytes);
    auto pixels = decode({bytes, *kind, name}, largeEdge);
    if (!pixels)
        throw FileFault(pixels.reason());
    const PixelSize size{pixels->width, pixels->height};
    const PixelSize wanted = fitted(size, largeEdge);
    Pixels large = wanted == size ? std::move(*pixels) : resampled(*pixels, wanted);
    const int orientation = *kind == FileKind::Heic ? 1 : exif.orientation;
    return {upright(std::move(large), orientation), std::move(exif.colour_profile)};
}

void writeCopy(const fs::path &file, const std::string &jpeg)
{
    NewFile copy(file.parent_path(), shownName(file));
    copy.write({reinterpret_cast<const std::uint8_t *>(jpeg.data()), jpeg.size()});
    copy.publishOver(file.filename().string());
}

} // namespace

PictureCache::PictureCache(fs::path projectFolder)
    : PictureCache(projectFolder, projectFolder / "cache")
{
}

PictureCache::PictureCache(fs::path projectFolder, fs::path cacheFolder)
    : m_projectFolder(std::move(projectFolder))
    , m_cacheFolder(std::move(cacheFolder))
{
}

fs::path PictureCache::nameFor(const Media &media, PictureSize size) const
{
    const std::string_view end = size == PictureSize::Small ? "-256.jpg" : "-1600.jpg";
    return m_cacheFolder / media.sha256.substr(0, 2) / (media.sha256 + std::string(end));
}

std::optional<fs::path> PictureCache::path(const Media &media, PictureSize size) const
{
    if (!isSha256(media.sha256))
        return std::nullopt;
    fs::path name = nameFor(media, size);
    return hasEnd(name) ? std::optional(std::move(name)) : std::nullopt;
}

std::optional<Message> PictureCache::make(const Media &media) const
{
    try {
        const Bytes bytes = readOriginal(m_projectFolder, media);
        const Original original = readUpright(bytes, shownName(media.file));
        const PixelSize size{original.pixels.width, original.pixels.height};
        const Pixels small = resampled(original.pixels, fitted(size, smallEdge));
        const fs::path large = nameFor(media, PictureSize::Large);
        fs::create_directories(large.parent_path());
        writeCopy(large, writeJpeg(original.pixels, largeQuality, original.colour_profile));
        writeCopy(nameFor(media, PictureSize::Small),
                  writeJpeg(small, smallQuality, original.colour_profile));
    } catch (const FileFault &fault) {
        return fault.message();
    } catch (const std::exception &error) {
        return Message{"No copy of {0} could be made: {1}.", {shownName(media.file), error.what()}};
    }
    return std::nullopt;
}

void PictureCache::makeMissing(const std::vector<Media> &media, unsigned workers, const Made &made,
                               std::stop_token stop) const
{
    std::mutex telling;
    forEachIndex(
        media.size(), workers,
        [&](std::size_t i) {
            const bool isThere =
                path(media[i], PictureSize::Small) && path(media[i], PictureSize::Large);
            const auto failure = isThere ? std::nullopt : make(media[i]);
            const std::scoped_lock lock(telling);
            if (made)
                made(media[i], failure);
        },
        stop);
}

Result<PictureCopy, Message> PictureCache::copy(const Media &media, PictureSize size) const
{
    if (!path(media, size)) {
        if (const auto failure = make(media))
            return *failure;
    }
    try {
        const fs::path name = nameFor(media, size);
        const Bytes bytes = SourceFile(name).readAll();
        const JpegLayout layout = layOut(bytes);
        return PictureCopy{name, layout.width, layout.height, sha256(bytes)};
    } catch (const FileFault &fault) {
        return fault.message();
    }
}

void PictureCache::wipe() const
{
    std::error_code ignored;
    fs::remove_all(m_cacheFolder, ignored);
}

} // namespace lastrivet::evidence
