// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/pictures/JpegLayout.h"

#include <cstring>

namespace lastrivet::evidence {

namespace {

constexpr int endOfImage = 0xd9;
constexpr int startOfScan = 0xda;

bool isFrame(int marker)
{
    return marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 && marker != 0xcc;
}

bool isStandalone(int marker)
{
    return marker == 0x01 || (marker >= 0xd0 && marker <= 0xd8);
}

/// Walks from marker to marker.
class Markers {
public:
    explicit Markers(std::span<const std::uint8_t> jpeg)
        : m_jpeg(jpeg)
    {
    }

    /// The next marker, over compressed data and stuffing; -1 at the end.
    int next()
    {
        while (m_place + 1 < m_jpeg.size()) {
            const auto *found = static_cast<const std::uint8_t *>(
                std::memchr(m_jpeg.data() + m_place, 0xff, m_jpeg.size() - m_place - 1));
            if (!found)
                return -1;
            m_place = std::size_t(found - m_jpeg.data()) + 1;
            const int marker = m_jpeg[m_place];
            if (marker != 0 && marker != 0xff) {
                ++m_place;
                return marker;
            }
        }
        return -1;
    }

    /// The segment behind the marker, without its length; empty when it does not fit.
    std::span<const std::uint8_t> segment()
    {
        const auto rest = m_jpeg.subspan(m_place);
        const std::size_t length = rest.size() < 2 ? 0 : std::size_t(rest[0]) << 8 | rest[1];
        if (length < 2 || length > rest.size()) {
            m_place = m_jpeg.size();
            return {};
        }
        m_place += length;
        return rest.subspan(2, length - 2);
    }

private:
    std::span<const std::uint8_t> m_jpeg;
    std::size_t m_place = 0;
};

void readFrame(std::span<const std::uint8_t> segment, int marker, JpegLayout &layout)
{
    if (segment.size() < 6)
        return;
    layout.height = segment[1] << 8 | segment[2];
    layout.width = segment[3] << 8 | segment[4];
    layout.components = segment[5];
    // All frames but baseline and extended sequential ones.
    layout.is_progressive = marker != 0xc0 && marker != 0xc1;
}

/// Nearly every file ends with the marker itself, which saves walking through its scans: inside
/// compressed data the two bytes cannot stand.
bool endsWithMarker(std::span<const std::uint8_t> jpeg)
{
    const std::size_t size = jpeg.size();
    return size >= 4 && jpeg[size - 2] == 0xff && jpeg[size - 1] == endOfImage;
}

} // namespace

JpegLayout layOut(std::span<const std::uint8_t> jpeg)
{
    JpegLayout layout;
    Markers markers(jpeg);
    for (int marker = markers.next(); marker >= 0; marker = markers.next()) {
        if (isStandalone(marker))
            continue;
        if (marker == endOfImage) {
            layout.is_whole = true;
            return layout;
        }
        const auto segment = markers.segment();
        if (isFrame(marker))
            readFrame(segment, marker, layout);
        if (marker == startOfScan && endsWithMarker(jpeg)) {
            layout.is_whole = true;
            return layout;
        }
    }
    return layout;
}

} // namespace lastrivet::evidence
