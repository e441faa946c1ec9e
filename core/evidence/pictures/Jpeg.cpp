// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/pictures/Formats.h"
#include "core/evidence/pictures/JpegLayout.h"
#include "core/evidence/pictures/JpegWriter.h"

#include <turbojpeg.h>

#include <algorithm>
#include <memory>
#include <new>
#include <optional>
#include <string>
#include <string_view>

namespace lastrivet::evidence {

namespace {

struct Ends {
    void operator()(void *codec) const { tjDestroy(codec); }
};
using Codec = std::unique_ptr<void, Ends>;

struct Frees {
    void operator()(unsigned char *jpeg) const { tjFree(jpeg); }
};
using Encoded = std::unique_ptr<unsigned char, Frees>;

/// The smallest size the decoder can scale to on its way that is still at least `edge` long.
PixelSize scaledSize(PixelSize size, int edge)
{
    int count = 0;
    const tjscalingfactor *factors = tjGetScalingFactors(&count);
    PixelSize best = size;
    for (int i = 0; i < count; ++i) {
        const PixelSize scaled{TJSCALED(size.width, factors[i]), TJSCALED(size.height, factors[i])};
        const int longest = std::max(scaled.width, scaled.height);
        if (longest >= edge && longest < std::max(best.width, best.height))
            best = scaled;
    }
    return best;
}

/// Some cameras leave stray bytes between segments; every other warning means that something of the
/// picture is missing.
std::optional<Message> trouble(void *codec, const std::string &name)
{
    const std::string_view said = tjGetErrorStr2(codec);
    if (tjGetErrorCode(codec) == TJERR_WARNING && said.find("extraneous") != said.npos)
        return std::nullopt;
    return said.find("premature end") != said.npos ? cutShort(name) : damaged(name);
}

/// ICC.1:2010, annex B.4: the profile in numbered APP2 segments.
std::string colourSegments(std::span<const std::uint8_t> profile)
{
    constexpr std::size_t largestPiece = 65519;
    const std::size_t count = (profile.size() + largestPiece - 1) / largestPiece;
    std::string segments;
    for (std::size_t i = 0; i < count && count < 256; ++i) {
        const auto rest = profile.subspan(i * largestPiece);
        const std::size_t size = std::min(rest.size(), largestPiece);
        const std::size_t length = size + 16;
        segments += {'\xff', '\xe2', char(length >> 8), char(length & 0xff)};
        segments += std::string_view("ICC_PROFILE\0", 12);
        segments += {char(i + 1), char(count)};
        segments.append(reinterpret_cast<const char *>(rest.data()), size);
    }
    return segments;
}

} // namespace

PixelSize readJpegSize(const PictureFile &file)
{
    const JpegLayout layout = layOut(file.bytes);
    return {layout.width, layout.height};
}

Result<Pixels, Message> decodeJpeg(const PictureFile &file, int edge)
{
    const JpegLayout layout = layOut(file.bytes);
    if (layout.components == 4)
        return Message{"{0} is in printing colours (CMYK); save it as an RGB picture first.",
                       {file.name}};
    const Codec codec(tjInitDecompress());
    const PixelSize size = scaledSize({layout.width, layout.height}, edge);
    Pixels pixels(size.width, size.height);
    if (!codec)
        throw std::bad_alloc();
    const int failed =
        tjDecompress2(codec.get(), file.bytes.data(), file.bytes.size(), pixels.rgb.data(),
                      size.width, 0, size.height, TJPF_RGB, TJFLAG_LIMITSCANS);
    if (failed) {
        if (const auto message = trouble(codec.get(), file.name))
            return *message;
    }
    return pixels;
}

std::string writeJpeg(const Pixels &pixels, int quality, std::span<const std::uint8_t> profile)
{
    const Codec codec(tjInitCompress());
    unsigned char *buffer = nullptr;
    unsigned long size = 0;
    const auto *rgb = std::span<const std::uint8_t>(pixels.rgb).data();
    const int failed = codec ? tjCompress2(codec.get(), rgb, pixels.width, 0, pixels.height,
                                           TJPF_RGB, &buffer, &size, TJSAMP_420, quality, 0)
                             : -1;
    const Encoded encoded(buffer);
    if (failed)
        throw std::bad_alloc();
    std::string jpeg(reinterpret_cast<const char *>(buffer), size);
    // Behind the JFIF segment of 18 bytes and the start of image of two.
    constexpr std::size_t behindHeader = 20;
    jpeg.insert(behindHeader, colourSegments(profile));
    return jpeg;
}

} // namespace lastrivet::evidence
