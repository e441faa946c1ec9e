// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/pictures/PictureReader.h"

#include "core/evidence/Wholeness.h"
#include "core/evidence/pictures/Formats.h"
#include "core/evidence/pictures/JpegLayout.h"

#include <fmt/format.h>

#include <algorithm>

namespace lastrivet::evidence {

namespace {

PixelSize storedSize(const PictureFile &file)
{
    switch (file.kind) {
    case FileKind::Jpeg:
        return readJpegSize(file);
    case FileKind::Png:
        return readPngSize(file);
    case FileKind::Heic:
        return readHeicSize(file);
    default:
        return {};
    }
}

bool hasEnd(const PictureFile &file)
{
    if (file.kind == FileKind::Jpeg)
        return layOut(file.bytes).is_whole;
    const ReadAt readAt = [&](std::uint64_t offset, std::span<std::uint8_t> bytes) {
        const auto rest = file.bytes.subspan(std::min<std::size_t>(offset, file.bytes.size()));
        const std::size_t count = std::min(rest.size(), bytes.size());
        std::copy_n(rest.begin(), count, bytes.begin());
        return count;
    };
    return isWhole(file.kind, readAt, file.bytes.size());
}

bool isTooLarge(const PictureFile &file, PixelSize size)
{
    const std::int64_t pixels = std::int64_t{size.width} * size.height;
    const bool byRows = file.kind == FileKind::Jpeg && !layOut(file.bytes).is_progressive;
    return pixels > (byRows ? largestScaled : largestWhole);
}

} // namespace

Message cutShort(const std::string &name)
{
    return {"{0} is cut short: its end is missing. Copy it from the camera again.", {name}};
}

Message damaged(const std::string &name)
{
    return {"{0} is damaged and cannot be shown as a picture.", {name}};
}

Result<PixelSize, Message> readSize(const PictureFile &file)
{
    if (!hasEnd(file))
        return cutShort(file.name);
    const PixelSize size = storedSize(file);
    if (size.width < 1 || size.height < 1)
        return damaged(file.name);
    if (isTooLarge(file, size))
        return Message{"{0} claims {1} × {2} pixels, more than can be shown.",
                       {file.name, fmt::format("{}", size.width), fmt::format("{}", size.height)}};
    return size;
}

Result<Pixels, Message> decode(const PictureFile &file, int edge)
{
    const auto size = readSize(file);
    if (!size)
        return size.reason();
    if (file.kind == FileKind::Jpeg)
        return decodeJpeg(file, edge);
    return file.kind == FileKind::Png ? decodePng(file) : decodeHeic(file);
}

} // namespace lastrivet::evidence
