// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/pictures/Formats.h"

#include <libheif/heif.h>

#include <cstring>
#include <memory>

namespace lastrivet::evidence {

namespace {

using Context = std::unique_ptr<heif_context, decltype(&heif_context_free)>;
using Handle = std::unique_ptr<heif_image_handle, decltype(&heif_image_handle_release)>;
using Image = std::unique_ptr<heif_image, decltype(&heif_image_release)>;

bool isGood(heif_error error)
{
    return error.code == heif_error_Ok;
}

/// The file's main picture; empty when there is none.
class MainPicture {
public:
    explicit MainPicture(std::span<const std::uint8_t> bytes)
        : m_context(heif_context_alloc(), heif_context_free)
        , m_handle(nullptr, heif_image_handle_release)
    {
        heif_image_handle *handle = nullptr;
        heif_context_set_max_decoding_threads(m_context.get(), 0); // our workers are threads
        if (isGood(heif_context_read_from_memory_without_copy(m_context.get(), bytes.data(),
                                                              bytes.size(), nullptr)) &&
            isGood(heif_context_get_primary_image_handle(m_context.get(), &handle)))
            m_handle.reset(handle);
    }

    PixelSize size() const
    {
        if (!m_handle)
            return {};
        return {heif_image_handle_get_width(m_handle.get()),
                heif_image_handle_get_height(m_handle.get())};
    }

    Image decoded() const
    {
        heif_image *image = nullptr;
        if (m_handle)
            heif_decode_image(m_handle.get(), &image, heif_colorspace_RGB,
                              heif_chroma_interleaved_RGB, nullptr);
        return {image, heif_image_release};
    }

private:
    Context m_context;
    Handle m_handle;
};

} // namespace

PixelSize readHeicSize(const PictureFile &file)
{
    return MainPicture(file.bytes).size();
}

Result<Pixels, Message> decodeHeic(const PictureFile &file)
{
    const MainPicture picture(file.bytes);
    const Image image = picture.decoded();
    int stride = 0;
    const std::uint8_t *rows =
        image ? heif_image_get_plane_readonly(image.get(), heif_channel_interleaved, &stride)
              : nullptr;
    if (!rows)
        return damaged(file.name);
    Pixels pixels(heif_image_get_width(image.get(), heif_channel_interleaved),
                  heif_image_get_height(image.get(), heif_channel_interleaved));
    const std::size_t row = std::size_t(pixels.width) * 3;
    for (int y = 0; y < pixels.height; ++y)
        std::memcpy(pixels.rgb.data() + std::size_t(y) * row, rows + std::ptrdiff_t(y) * stride,
                    row);
    return pixels;
}

} // namespace lastrivet::evidence
