// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/pictures/PictureReader.h"
#include "core/evidence/pictures/Exif.h"
#include "core/evidence/pictures/Transform.h"

#include "tests/support/TemporaryFolder.h"
#include "tests/support/TestPictures.h"

#include <catch2/catch.hpp>

#include <cstdlib>

using namespace lastrivet;
using namespace lastrivet::evidence;
using namespace lastrivet::test;

namespace {

using Content = std::vector<std::uint8_t>;

Result<Pixels, Message> decoded(const Content &bytes, int edge = 1600)
{
    return decode({bytes, sniff(bytes).value(), "picture"}, edge);
}

std::string refusal(const Content &bytes)
{
    const auto pixels = decoded(bytes);
    return pixels ? "shown" : english(pixels.reason());
}

std::array<int, 3> pixelAt(const Pixels &pixels, int x, int y)
{
    const auto *rgb = std::span<const std::uint8_t>(pixels.rgb).data() +
                      3 * (std::ptrdiff_t(y) * pixels.width + x);
    return {rgb[0], rgb[1], rgb[2]};
}

int greatestDifference(const Pixels &pixels, const Content &rgb)
{
    const std::span<const std::uint8_t> ours(pixels.rgb);
    if (ours.size() != rgb.size())
        return 255;
    int greatest = 0;
    for (std::size_t i = 0; i < rgb.size(); ++i)
        greatest = std::max(greatest, std::abs(int(ours[i]) - int(rgb[i])));
    return greatest;
}

/// Bytes 5 to 8 behind the marker of the baseline frame are height and width.
void claimSize(Content &jpeg, int width, int height)
{
    const Content frame{0xff, 0xc0};
    const auto place = std::search(jpeg.begin(), jpeg.end(), frame.begin(), frame.end()) + 5;
    place[0] = std::uint8_t(height >> 8);
    place[1] = std::uint8_t(height & 255);
    place[2] = std::uint8_t(width >> 8);
    place[3] = std::uint8_t(width & 255);
}

} // namespace

TEST_CASE("A picture of any of the eight orientations is shown as Pillow turns it upright")
{
    for (int orientation = 1; orientation <= 8; ++orientation) {
        INFO("orientation " << orientation);
        const std::string number = std::to_string(orientation);
        const auto bytes = readBytes(testPicture("turned" + number + ".jpg"));
        auto pixels = decoded(bytes);
        REQUIRE(pixels);
        const Pixels turned = upright(std::move(*pixels), readExif(bytes).orientation);
        CHECK(turned.width == (turnsSideways(orientation) ? 64 : 96));
        CHECK(greatestDifference(turned, readBytes(testPicture("upright" + number + ".rgb"))) <= 3);
    }
}

TEST_CASE("JPEG, PNG and HEIC of every colour kind come out as eight-bit RGB")
{
    for (const char *name : {"plain.jpg", "progressive.jpg", "plain.png", "palette.png"}) {
        INFO(name);
        const auto pixels = decoded(readBytes(testPicture(name)));
        REQUIRE(pixels);
        const auto [red, green, blue] = pixelAt(*pixels, 5, 25);
        CHECK(std::abs(red - 220) < 12);
        CHECK(std::abs(green - 40) < 12);
        CHECK(std::abs(blue - 40) < 12);
    }
    const auto grey = decoded(readBytes(testPicture("grey.jpg")));
    REQUIRE(grey);
    CHECK(pixelAt(*grey, 5, 25)[0] == pixelAt(*grey, 5, 25)[2]);
    const auto glass = decoded(readBytes(testPicture("glass.png")));
    REQUIRE(glass);
    CHECK(pixelAt(*glass, 5, 25) == std::array{255, 255, 255});
    const TemporaryFolder folder;
    writeHeic(folder / "phone.heic", 128, 96);
    const auto heic = decoded(readBytes(folder / "phone.heic"));
    REQUIRE(heic);
    CHECK(pixelAt(*heic, 100, 40)[1] > 200);
    CHECK(pixelAt(*heic, 20, 40)[1] < 60);
}

TEST_CASE("A JPEG is decoded no larger than is needed")
{
    const auto large = readBytes(testPicture("large.jpg"));
    const auto pixels = decoded(large, 1600);
    REQUIRE(pixels);
    CHECK(pixels->width >= 1600);
    CHECK(pixels->width < 2400);
    CHECK(decoded(large, 256)->width < 400);
    CHECK(decoded(large, 5000)->width == 3000);
}

TEST_CASE("A JPEG of 300 megapixels is shown from a reduced decode")
{
    const auto pixels = decoded(readBytes(testPicture("huge.jpg")));
    REQUIRE(pixels);
    CHECK(pixels->width == 3750);
    CHECK(pixels->height == 1250);
    CHECK(std::abs(pixelAt(*pixels, 3749, 1249)[1] - 90) <= 2);
}

TEST_CASE("A picture that is cut short is told, wherever it was cut")
{
    for (const char *name : {"plain.jpg", "progressive.jpg", "naive.jpg", "plain.png"}) {
        const auto whole = readBytes(testPicture(name));
        for (const double part : {0.5, 0.8, 0.99}) {
            INFO(name << " " << part);
            Content cut(whole.begin(), whole.begin() + std::ptrdiff_t(double(whole.size()) * part));
            CHECK(refusal(cut).find("cut short") != std::string::npos);
        }
    }
    const TemporaryFolder folder;
    writeHeic(folder / "phone.heic", 128, 96);
    auto heic = readBytes(folder / "phone.heic");
    heic.resize(heic.size() - 20);
    CHECK(refusal(heic).find("cut short") != std::string::npos);
}

TEST_CASE("What stands behind the end of a JPEG does not make it cut short")
{
    auto bytes = readBytes(testPicture("plain.jpg"));
    const std::string film = "ftypmp42 a short film that a phone hangs on";
    bytes.insert(bytes.end(), film.begin(), film.end());
    CHECK(decoded(bytes));
}

TEST_CASE("A picture with less in it than its header claims costs one sentence")
{
    auto bytes = readBytes(testPicture("plain.jpg"));
    claimSize(bytes, 30000, 10000);
    CHECK(refusal(bytes) == "picture is cut short: its end is missing. Copy it from the camera "
                            "again.");
    claimSize(bytes, 65000, 65000);
    CHECK(refusal(bytes) == "picture claims 65000 × 65000 pixels, more than can be shown.");
    claimSize(bytes, 0, 10);
    CHECK(refusal(bytes) == "picture is damaged and cannot be shown as a picture.");
    CHECK(refusal(readBytes(testPicture("bomb.png"))) ==
          "picture claims 60000 × 60000 pixels, more than can be shown.");
}

TEST_CASE("Printing colours are refused by name, damage is told, and nothing crashes")
{
    CHECK(refusal(readBytes(testPicture("cmyk.jpg"))).find("CMYK") != std::string::npos);
    auto png = readBytes(testPicture("palette.png"));
    png[png.size() / 2] ^= 0xff;
    CHECK(refusal(png).find("damaged") != std::string::npos);
    CHECK(refusal({0xff, 0xd8, 0xff, 0xd9}).find("damaged") != std::string::npos);
    const auto whole = readBytes(testPicture("progressive.jpg"));
    for (std::size_t place = 3; place < whole.size(); place += 11) {
        auto bytes = whole;
        bytes[place] ^= 0xff;
        refusal(bytes);
    }
}

TEST_CASE("Sizes are brought down to an edge and never up")
{
    CHECK(fitted({4032, 3024}, 1600) == PixelSize{1600, 1200});
    CHECK(fitted({3024, 4032}, 256) == PixelSize{192, 256});
    CHECK(fitted({800, 600}, 1600) == PixelSize{800, 600});
    CHECK(fitted({50000, 10}, 256) == PixelSize{256, 1});
}
