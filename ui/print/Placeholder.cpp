// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/Placeholder.h"

#include <array>

namespace lastrivet::print {

namespace {

constexpr std::array<unsigned char, 2> sign{0xA5, 0x5A};

} // namespace

QImage placeholder(int index)
{
    QImage image(32, 1, QImage::Format_Mono);
    image.setColorTable({qRgb(0, 0, 0), qRgb(255, 255, 255)});
    uchar *row = image.scanLine(0);
    row[0] = sign[0];
    row[1] = sign[1];
    row[2] = uchar(index >> 8);
    row[3] = uchar(index & 0xFF);
    return image;
}

std::optional<int> indexOf(std::string_view imageBytes)
{
    if (imageBytes.size() != 4)
        return std::nullopt;
    const auto byte = [&](std::size_t i) { return int(static_cast<unsigned char>(imageBytes[i])); };
    // Qt writes the bits of some images turned over.
    const bool isPlain = byte(0) == sign[0] && byte(1) == sign[1];
    const bool isTurned = (byte(0) ^ 0xFF) == sign[0] && (byte(1) ^ 0xFF) == sign[1];
    if (!isPlain && !isTurned)
        return std::nullopt;
    const int value = byte(2) * 256 + byte(3);
    return isPlain ? value : value ^ 0xFFFF;
}

} // namespace lastrivet::print
