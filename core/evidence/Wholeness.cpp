// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/Wholeness.h"

#include <algorithm>
#include <array>
#include <string_view>
#include <vector>

namespace lastrivet::evidence {

namespace {

std::uint64_t bigEndian(std::span<const std::uint8_t> bytes)
{
    std::uint64_t number = 0;
    for (const std::uint8_t byte : bytes)
        number = number << 8 | byte;
    return number;
}

/// The bytes at `offset`, or fewer at the end of the file.
template <std::size_t count>
std::span<const std::uint8_t> bytesAt(const ReadAt &readAt, std::uint64_t offset,
                                      std::array<std::uint8_t, count> &store)
{
    return std::span(store).first(readAt(offset, store));
}

/// PNG 1.2, section 3: length, type, content, checksum; ends with the chunk IEND.
bool chunksAreWhole(const ReadAt &readAt, std::uint64_t size)
{
    std::array<std::uint8_t, 8> store{};
    for (std::uint64_t place = 8; place + 12 <= size;) {
        const auto header = bytesAt(readAt, place, store);
        if (header.size() < store.size())
            return false;
        place += 12 + bigEndian(header.first(4));
        if (std::equal(header.begin() + 4, header.end(), "IEND"))
            return place <= size;
    }
    return false;
}

/// ISO/IEC 14496-12, section 4.2: size and type; size 1 means a 64-bit size after the type, 0 that
/// the box runs to the end of the file.
bool boxesAreWhole(const ReadAt &readAt, std::uint64_t size)
{
    std::array<std::uint8_t, 16> store{};
    std::uint64_t place = 0;
    while (place < size) {
        const auto header = bytesAt(readAt, place, store);
        if (header.size() < 8)
            return false;
        std::uint64_t length = bigEndian(header.first(4));
        if (length == 0)
            return true;
        if (length == 1 && header.size() == store.size())
            length = bigEndian(header.subspan(8));
        if (length < 8 || length > size - place)
            return false;
        place += length;
    }
    return true;
}

/// A PDF ends with %%EOF; what mail and scanners add behind it is a matter of some kilobytes.
bool hasPdfEnd(const ReadAt &readAt, std::uint64_t size)
{
    std::vector<std::uint8_t> tail(std::min<std::uint64_t>(size, 32 * 1024));
    const std::size_t got = readAt(size - tail.size(), tail);
    const std::string_view text(reinterpret_cast<const char *>(tail.data()), got);
    return text.find("%%EOF") != std::string_view::npos;
}

} // namespace

bool isWhole(FileKind kind, const ReadAt &readAt, std::uint64_t size)
{
    switch (kind) {
    case FileKind::Png:
        return chunksAreWhole(readAt, size);
    case FileKind::Heic:
    case FileKind::Mp4:
    case FileKind::QuickTime:
        return boxesAreWhole(readAt, size);
    case FileKind::Pdf:
        return hasPdfEnd(readAt, size);
    case FileKind::Jpeg: // its frame tells, see JpegLayout
    case FileKind::Matroska:
    case FileKind::Avi:
        return true;
    }
    return true;
}

} // namespace lastrivet::evidence
