// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/pictures/Exif.h"
#include "core/evidence/pictures/ExifTime.h"

#include "tests/support/TemporaryFolder.h"
#include "tests/support/TestPictures.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::evidence;
using namespace lastrivet::test;

namespace {

/// What exiftool reads, a line a picture, in the words of `Exif`: ISO minute, offset, orientation.
std::string toldByExiftool(const std::vector<std::filesystem::path> &pictures)
{
    std::string command = "exiftool -q -f -d %Y-%m-%dT%H:%M "
                          "-p '$DateTimeOriginal $OffsetTimeOriginal $Orientation#'";
    for (const auto &picture : pictures)
        command += " " + picture.string();
    return outputOf(command);
}

std::string toldByUs(const std::filesystem::path &picture)
{
    const Exif exif = readExif(readBytes(picture));
    std::string offset = "-";
    if (exif.offset_minutes) {
        const int hours = std::abs(*exif.offset_minutes) / 60;
        offset = (*exif.offset_minutes < 0 ? "-0" : "+0") + std::to_string(hours) + ":00";
    }
    return (exif.taken ? exif.taken->text() : "-") + " " + offset + " " +
           (exif.orientation == 1 ? "-" : std::to_string(exif.orientation));
}

std::string taken(std::string_view picture, std::string_view zone)
{
    const auto moment = takenOn(readExif(readBytes(testPicture(picture))), zone);
    return moment ? moment->text() : "none";
}

} // namespace

TEST_CASE("Time, offset and orientation are read as exiftool reads them")
{
    const TemporaryFolder folder;
    writeHeic(folder / "phone.heic", 128, 96);
    std::vector<std::filesystem::path> pictures{folder / "phone.heic"};
    for (const char *name : {"naive.jpg", "offset.jpg", "midnight.jpg", "turned3.jpg",
                             "turned8.jpg", "plain.jpg", "plain.png"})
        pictures.push_back(testPicture(name));
    std::string told;
    for (const auto &picture : pictures)
        told += (told.empty() ? "" : "\n") + toldByUs(picture);
    CHECK(told == toldByExiftool(pictures));
    CHECK(told.starts_with("2026-05-02T09:41 -04:00 -\n2026-03-14T15:23 - -\n"));
}

TEST_CASE("A time with offset is turned into the project's zone, one without is taken as it is")
{
    CHECK(taken("offset.jpg", "America/Toronto") == "2026-07-15T08:00");
    CHECK(taken("offset.jpg", "Europe/Berlin") == "2026-07-15T14:00");
    CHECK(taken("midnight.jpg", "America/Toronto") == "2026-07-14T23:30");
    CHECK(taken("naive.jpg", "America/Toronto") == "2026-03-14T15:23");
    CHECK(taken("oddoffset.jpg", "America/Toronto") == "2026-03-14T15:23");
}

TEST_CASE("A blank, zero or missing time is no time")
{
    CHECK(taken("blank.jpg", "America/Toronto") == "none");
    CHECK(taken("zero.jpg", "America/Toronto") == "none");
    CHECK(taken("plain.jpg", "America/Toronto") == "none");
    for (const char *text :
         {"", "2026:02:30 10:00:00", "2026-03-14 10:00:00", "2026:03:14 24:00:00", "2026:03:14",
          "1826:03:14 10:00:00", "2026:03:14 10:60:00"})
        CHECK_FALSE(parseExifTime(text));
    CHECK(parseExifTime("2026:03:14 10:59:60")->text() == "2026-03-14T10:59");
}

TEST_CASE("Offsets are read with sign and minutes")
{
    CHECK(parseExifOffset("+05:45") == 345);
    CHECK(parseExifOffset("-03:30") == -210);
    CHECK(parseExifOffset("+00:00") == 0);
    for (const char *text : {"", "Z", "05:45", "+5:45", "+15:00", "+05:60", "+-5:45", "+05:-5"})
        CHECK_FALSE(parseExifOffset(text));
}

TEST_CASE("Bytes that are no picture have no metadata, and no complaint")
{
    const std::string text = "not a picture at all";
    const Exif exif = readExif({reinterpret_cast<const std::uint8_t *>(text.data()), text.size()});
    CHECK_FALSE(exif.taken);
    CHECK(exif.orientation == 1);
    auto cut = readBytes(testPicture("naive.jpg"));
    for (std::size_t size = 0; size < 300; size += 7)
        readExif(std::span(cut).first(size));
}
