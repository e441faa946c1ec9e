// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/ReducedPicture.h"

#include "core/base/Sha256.h"
#include "core/evidence/MediaFile.h"
#include "core/evidence/files/FileFault.h"
#include "core/evidence/files/NewFile.h"
#include "core/evidence/files/SourceFile.h"
#include "core/evidence/pictures/Exif.h"
#include "core/evidence/pictures/JpegWriter.h"
#include "core/evidence/pictures/PictureReader.h"
#include "core/evidence/pictures/Transform.h"

#include <cstdint>
#include <span>
#include <string>

namespace lastrivet::evidence {

namespace {

struct Jpeg {
    PixelSize size;
    std::string bytes;
};

Result<Jpeg, Message> reduced(const PictureCopy &copy, Reduction reduction)
{
    try {
        const Bytes bytes = SourceFile(copy.file).readAll();
        const auto pixels =
            decode({bytes, FileKind::Jpeg, shownName(copy.file)}, reduction.longest_edge);
        if (!pixels)
            return pixels.reason();
        const PixelSize size = fitted({pixels->width, pixels->height}, reduction.longest_edge);
        return Jpeg{size, writeJpeg(resampled(*pixels, size), reduction.quality,
                                    readExif(bytes).colour_profile)};
    } catch (const FileFault &fault) {
        return fault.message();
    }
}

} // namespace

Result<PictureCopy, Message> reducedPicture(const PictureCopy &copy, Reduction reduction,
                                            const std::filesystem::path &place)
{
    const auto jpeg = reduced(copy, reduction);
    if (!jpeg)
        return jpeg.reason();
    const std::span<const std::uint8_t> written{
        reinterpret_cast<const std::uint8_t *>(jpeg->bytes.data()), jpeg->bytes.size()};
    NewFile file(place.parent_path(), shownName(place));
    file.write(written);
    file.publishOver(place.filename().string());
    return PictureCopy{place, jpeg->size.width, jpeg->size.height, sha256(written)};
}

} // namespace lastrivet::evidence
