// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/JpegHeader.h"

#include <array>
#include <cstdint>
#include <fstream>

namespace lastrivet::print {

namespace {

// Markers of ITU-T T.81, table B.1.
constexpr int startOfImage = 0xD8;
constexpr int endOfImage = 0xD9;
constexpr int startOfScan = 0xDA;

bool isStartOfFrame(int marker)
{
    const bool isOtherTable = marker == 0xC4 || marker == 0xC8 || marker == 0xCC;
    return marker >= 0xC0 && marker <= 0xCF && !isOtherTable;
}

/// The code of the next marker; -1 when there is none here.
int nextMarker(std::istream &stream)
{
    if (stream.get() != 0xFF)
        return -1;
    int code = stream.get();
    while (code == 0xFF)
        code = stream.get();
    return stream ? code : -1;
}

int word16(std::istream &stream)
{
    const int high = stream.get();
    return high * 256 + stream.get();
}

std::optional<JpegHeader> readFrame(std::istream &stream)
{
    constexpr int bitsPerSample = 8;
    word16(stream);
    if (stream.get() != bitsPerSample)
        return std::nullopt;
    JpegHeader header;
    header.height = word16(stream);
    header.width = word16(stream);
    header.components = stream.get();
    const bool isKnown = header.components == 1 || header.components == 3 || header.components == 4;
    if (!stream || header.width <= 0 || header.height <= 0 || !isKnown)
        return std::nullopt;
    return header;
}

bool endsWithEndOfImage(std::istream &stream)
{
    stream.clear();
    stream.seekg(-2, std::ios::end);
    return stream.get() == 0xFF && stream.get() == endOfImage;
}

} // namespace

std::optional<JpegHeader> readJpegHeader(const std::filesystem::path &file)
{
    std::ifstream stream(file, std::ios::binary);
    if (nextMarker(stream) != startOfImage)
        return std::nullopt;
    for (int marker = nextMarker(stream); marker > 0; marker = nextMarker(stream)) {
        if (isStartOfFrame(marker)) {
            const std::optional<JpegHeader> header = readFrame(stream);
            return header && endsWithEndOfImage(stream) ? header : std::nullopt;
        }
        if (marker == startOfScan || marker == endOfImage)
            return std::nullopt;
        stream.seekg(word16(stream) - 2, std::ios::cur);
    }
    return std::nullopt;
}

} // namespace lastrivet::print
