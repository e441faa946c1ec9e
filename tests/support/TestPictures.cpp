// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/TestPictures.h"

#include "tests/support/TemporaryFolder.h"

#include <libheif/heif.h>

#include <cstdio>
#include <fstream>
#include <memory>
#include <sstream>
#include <stdexcept>

namespace lastrivet::test {

namespace fs = std::filesystem;

namespace {

void require(heif_error error)
{
    if (error.code != heif_error_Ok)
        throw std::runtime_error(error.message);
}

using Image = std::unique_ptr<heif_image, decltype(&heif_image_release)>;

Image halfRed(int width, int height)
{
    heif_image *image = nullptr;
    require(
        heif_image_create(width, height, heif_colorspace_RGB, heif_chroma_interleaved_RGB, &image));
    require(heif_image_add_plane(image, heif_channel_interleaved, width, height, 8));
    int stride = 0;
    std::uint8_t *rows = heif_image_get_plane(image, heif_channel_interleaved, &stride);
    for (int y = 0; y < height; ++y) {
        for (int x = 0; x < width; ++x) {
            rows[y * stride + 3 * x] = 220;
            rows[y * stride + 3 * x + 1] = x < width / 2 ? 30 : 220;
            rows[y * stride + 3 * x + 2] = x < width / 2 ? 30 : 220;
        }
    }
    return {image, heif_image_release};
}

} // namespace

fs::path testPicture(std::string_view name)
{
    static const TemporaryFolder folder;
    static const std::string made =
        outputOf(LASTRIVET_PYTHON " " LASTRIVET_SOURCE "/tests/support/make_pictures.py " +
                 folder.path().string());
    return folder / name;
}

std::string readText(const fs::path &file)
{
    std::ostringstream content;
    content << std::ifstream(file, std::ios::binary).rdbuf();
    return content.str();
}

std::vector<std::uint8_t> readBytes(const fs::path &file)
{
    const std::string text = readText(file);
    return {text.begin(), text.end()};
}

void writeText(const fs::path &file, std::string_view content)
{
    std::ofstream stream(file, std::ios::binary);
    stream.write(content.data(), std::streamsize(content.size()));
}

std::string outputOf(const std::string &command)
{
    std::string output;
    FILE *pipe = ::popen(command.c_str(), "r");
    if (!pipe)
        throw std::runtime_error("cannot run " + command);
    char block[4096];
    while (const std::size_t got = std::fread(block, 1, sizeof block, pipe))
        output.append(block, got);
    if (::pclose(pipe) != 0)
        throw std::runtime_error("failed: " + command);
    if (output.ends_with('\n'))
        output.pop_back();
    return output;
}

void writeHeic(const fs::path &file, int width, int height)
{
    const std::unique_ptr<heif_context, decltype(&heif_context_free)> context(heif_context_alloc(),
                                                                              heif_context_free);
    heif_encoder *encoder = nullptr;
    require(heif_context_get_encoder_for_format(context.get(), heif_compression_HEVC, &encoder));
    const std::unique_ptr<heif_encoder, decltype(&heif_encoder_release)> owned(
        encoder, heif_encoder_release);
    require(heif_encoder_set_lossy_quality(encoder, 90));
    heif_image_handle *handle = nullptr;
    require(heif_context_encode_image(context.get(), halfRed(width, height).get(), encoder, nullptr,
                                      &handle));
    const std::unique_ptr<heif_image_handle, decltype(&heif_image_handle_release)> picture(
        handle, heif_image_handle_release);
    const auto exif = readBytes(testPicture("exif.bin"));
    require(heif_context_add_exif_metadata(context.get(), handle, exif.data(), int(exif.size())));
    require(heif_context_write_to_file(context.get(), file.c_str()));
}

} // namespace lastrivet::test
