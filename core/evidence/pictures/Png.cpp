// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/pictures/Formats.h"

#include <png.h>

namespace lastrivet::evidence {

namespace {

/// libpng's picture, opened from memory and freed at the end.
class PngImage {
public:
    explicit PngImage(std::span<const std::uint8_t> bytes)
    {
        m_image.version = PNG_IMAGE_VERSION;
        png_image_begin_read_from_memory(&m_image, bytes.data(), bytes.size());
        m_image.format = PNG_FORMAT_RGB;
    }
    ~PngImage() { png_image_free(&m_image); }
    PngImage(const PngImage &) = delete;
    PngImage &operator=(const PngImage &) = delete;

    bool failed() const { return PNG_IMAGE_FAILED(m_image); }
    /// 0 × 0 when the header could not be read.
    PixelSize size() const
    {
        return failed() ? PixelSize{} : PixelSize{int(m_image.width), int(m_image.height)};
    }
    /// What is transparent becomes white.
    bool readInto(std::uint8_t *rgb)
    {
        const png_color white{255, 255, 255};
        return png_image_finish_read(&m_image, &white, rgb, 0, nullptr) != 0;
    }

private:
    png_image m_image{};
};

} // namespace

PixelSize readPngSize(const PictureFile &file)
{
    return PngImage(file.bytes).size();
}

Result<Pixels, Message> decodePng(const PictureFile &file)
{
    PngImage image(file.bytes);
    if (image.failed())
        return damaged(file.name);
    const PixelSize size = image.size();
    Pixels pixels(size.width, size.height);
    if (!image.readInto(pixels.rgb.data()))
        return damaged(file.name);
    return pixels;
}

} // namespace lastrivet::evidence
