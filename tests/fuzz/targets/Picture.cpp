// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/pictures/Exif.h"
#include "core/evidence/pictures/JpegWriter.h"
#include "core/evidence/pictures/PictureReader.h"
#include "core/evidence/pictures/Transform.h"
#include "tests/fuzz/Targets.h"

namespace lastrivet::fuzz {

namespace {

/// Larger ones would only take time.
constexpr std::int64_t mostPixels = 1'000'000;
constexpr int edge = 64;

void makeCopy(const evidence::PictureFile &file, const evidence::Exif &exif)
{
    const auto pixels = evidence::decode(file, edge);
    if (!pixels)
        return;
    const auto wanted = evidence::fitted({pixels->width, pixels->height}, edge);
    const auto small = evidence::upright(evidence::resampled(*pixels, wanted), exif.orientation);
    promised(small.width <= edge && small.height <= edge);
    promised(!evidence::writeJpeg(small, 80, exif.colour_profile).empty());
}

} // namespace

/// A photo on its way in: its kind, its size, what the camera wrote, a small copy.
void picture(Input input)
{
    const auto kind = evidence::sniff(input);
    if (!kind || evidence::mediaKind(*kind) != MediaKind::Photo)
        return;
    const evidence::PictureFile file{input, *kind, "picture"};
    const evidence::Exif exif = evidence::readExif(input);
    promised(exif.orientation >= 1 && exif.orientation <= 8);
    const auto size = evidence::readSize(file);
    if (size && std::int64_t{size->width} * size->height <= mostPixels)
        makeCopy(file, exif);
}

} // namespace lastrivet::fuzz
