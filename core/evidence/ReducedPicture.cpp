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

namespace lastrivet::evidence {

Result<PictureCopy, Message> reducedPicture(const PictureCopy &copy, Reduction reduction,
                                            const std::filesystem::path &place)
{
    try {
        const Bytes bytes = SourceFile(copy.file).readAll();
        auto pixels = decode({bytes, FileKind::Jpeg, shownName(copy.file)}, reduction.longest_edge);
        if (!pixels)
            return pixels.reason();
        const PixelSize size = fitted({pixels->width, pixels->height}, reduction.longest_edge);
        const std::string jpeg =
            writeJpeg(resampled(*pixels, size), reduction.quality, readExif(bytes).colour_profile);
        const std::span<const std::uint8_t> written{
            reinterpret_cast<const std::uint8_t *>(jpeg.data()), jpeg.size()};
        NewFile file(place.parent_path(), shownName(place));
        file.write(written);
        file.publishOver(place.filename().string());
        return PictureCopy{place, size.width, size.height, sha256(written)};
    } catch (const FileFault &fault) {
        return fault.message();
    }
}

} // namespace lastrivet::evidence
