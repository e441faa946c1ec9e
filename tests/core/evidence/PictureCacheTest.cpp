// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/PictureCache.h"

#include "core/base/Sha256.h"
#include "core/evidence/pictures/Exif.h"

#include "tests/support/TemporaryFolder.h"
#include "tests/support/TestPictures.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::evidence;
using namespace lastrivet::test;

namespace fs = std::filesystem;

namespace {

/// A project folder with one photo.
struct Album {
    explicit Album(std::string_view picture)
        : cache(folder.path())
    {
        fs::create_directories(folder / "photos");
        fs::copy_file(testPicture(picture), folder / "photos/one.jpg");
        media.id = Id<Media>{1};
        media.file = "photos/one.jpg";
        media.sha256 = sha256(readBytes(testPicture(picture)));
    }

    TemporaryFolder folder;
    PictureCache cache;
    Media media;
};

std::string sizeByExiftool(const fs::path &file)
{
    return outputOf("exiftool -s3 -ImageSize " + file.string());
}

} // namespace

TEST_CASE("Both copies are made upright, fitted and told with size and hash")
{
    Album album("large.jpg"); // 3000 × 2000, to be turned by a quarter
    CHECK_FALSE(album.cache.path(album.media, PictureSize::Small));
    CHECK_FALSE(album.cache.make(album.media));
    const auto small = album.cache.path(album.media, PictureSize::Small);
    const auto large = album.cache.copy(album.media, PictureSize::Large);
    REQUIRE(small);
    REQUIRE(large);
    CHECK(sizeByExiftool(*small) == "171x256");
    CHECK(sizeByExiftool(large->file) == "1067x1600");
    CHECK(large->width == 1067);
    CHECK(large->height == 1600);
    CHECK(large->sha256 == outputOf("sha256sum " + large->file.string()).substr(0, 64));
    CHECK(outputOf("exiftool -s3 -YCbCrSubSampling " + large->file.string()) == "YCbCr4:2:0 (2 2)");
}

TEST_CASE("Wiping the cache loses nothing, and a torn copy is made again")
{
    Album album("plain.jpg");
    const auto first = album.cache.copy(album.media, PictureSize::Large);
    REQUIRE(first);
    album.cache.wipe();
    CHECK_FALSE(album.cache.path(album.media, PictureSize::Large));
    const auto second = album.cache.copy(album.media, PictureSize::Large);
    REQUIRE(second);
    CHECK(second->sha256 == first->sha256);
    fs::resize_file(second->file, fs::file_size(second->file) / 2);
    CHECK_FALSE(album.cache.path(album.media, PictureSize::Large));
    CHECK(album.cache.copy(album.media, PictureSize::Large)->sha256 == first->sha256);
}

TEST_CASE("A copy keeps the colour profile of its original")
{
    Album album("profile.jpg");
    const auto copy = album.cache.copy(album.media, PictureSize::Large);
    REQUIRE(copy);
    CHECK(outputOf("exiftool -q -q -b -ICC_Profile " + copy->file.string() + " | sha256sum") ==
          outputOf("sha256sum < " + testPicture("profile.icc").string()));
}

TEST_CASE("A photo that changed, vanished or lies elsewhere costs one sentence")
{
    Album album("plain.jpg");
    writeText(album.folder / "photos/one.jpg", readText(testPicture("grey.jpg")));
    CHECK(english(*album.cache.make(album.media)) ==
          "one.jpg is not the file that was taken in: it has changed since.");
    fs::remove(album.folder / "photos/one.jpg");
    CHECK(english(*album.cache.make(album.media)) == "one.jpg could not be read: it is not there.");
    album.media.file = "../photos/one.jpg";
    CHECK(english(*album.cache.make(album.media)) ==
          "one.jpg is not a photo in the project folder.");
    album.media.sha256 = "../../etc/passwd";
    CHECK_FALSE(album.cache.path(album.media, PictureSize::Small));
    CHECK(album.cache.make(album.media));
    album.media.file = "photos/one.jpg";
    album.media.sha256.clear();
    CHECK(english(*album.cache.make(album.media)) ==
          "one.jpg was not there when its record came; take the file in as a photo.");
}

TEST_CASE("What is missing is made by several workers, each photo told once, until stopped")
{
    Album album("plain.jpg");
    Media missing = album.media;
    missing.file = "photos/two.jpg";
    missing.sha256 = std::string(64, '0');
    int good = 0;
    int bad = 0;
    const auto count = [&](const Media &, const std::optional<Message> &failure) {
        ++(failure ? bad : good);
    };
    album.cache.makeMissing({album.media, missing, album.media}, 2, count);
    CHECK(good == 2);
    CHECK(bad == 1);
    std::stop_source stop;
    stop.request_stop();
    album.cache.makeMissing({album.media, missing}, 0, count, stop.get_token());
    CHECK(good + bad == 3);
}
