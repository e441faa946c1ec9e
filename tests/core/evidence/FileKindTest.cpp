// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/FileKind.h"

#include <catch2/catch.hpp>

#include <string>

using namespace lastrivet;
using namespace lastrivet::evidence;
using namespace std::string_literals;

namespace {
std::optional<FileKind> sniffed(const std::string &beginning)
{
    return sniff({reinterpret_cast<const std::uint8_t *>(beginning.data()), beginning.size()});
}
} // namespace

TEST_CASE("The kind of a file is known by its first bytes")
{
    // Signatures: ITU-T T.81 B.1.1.3, PNG 1.2 section 3.1, ISO/IEC 14496-12 section 4.3,
    // ISO 32000-1 section 7.5.2, RFC 8794 section 11.2.1.
    CHECK(sniffed("\xff\xd8\xff\xe1") == FileKind::Jpeg);
    CHECK(sniffed("\x89PNG\r\n\x1a\n....") == FileKind::Png);
    CHECK(sniffed("\0\0\0\x18"s + "ftypheic") == FileKind::Heic);
    CHECK(sniffed("\0\0\0\x18"s + "ftypmif1") == FileKind::Heic);
    CHECK(sniffed("\0\0\0\x14"s + "ftypqt  ") == FileKind::QuickTime);
    CHECK(sniffed("\0\0\0\x14"s + "ftypisom") == FileKind::Mp4);
    CHECK(sniffed("\0\0\0\x14"s + "ftyp3gp5") == FileKind::Mp4);
    CHECK(sniffed("\x1a\x45\xdf\xa3") == FileKind::Matroska);
    CHECK(sniffed("%PDF-1.7") == FileKind::Pdf);
    CHECK(sniffed(std::string(1000, ' ') + "%PDF-1.4") == FileKind::Pdf);
}

TEST_CASE("What is neither photo, video nor paper is told apart")
{
    for (const auto &other :
         {""s, "x"s, "\xff\xd8"s, "hello"s, "GIF89a"s, "PK\x03\x04"s, "\0\0\0\x14"s + "ftypcrx "s,
          "\0\0\0\x14"s + "ftyp"s, "RIFF....WAVE...."s, "\x89PNG"s, std::string(2000, '\0')})
        CHECK_FALSE(sniffed(other));
}

TEST_CASE("Photos and videos are media of their kind, a PDF is a document")
{
    CHECK(mediaKind(FileKind::Heic) == MediaKind::Photo);
    CHECK(mediaKind(FileKind::Avi) == MediaKind::Video);
    CHECK(mediaKind(FileKind::Pdf) == MediaKind::Document);
    CHECK(suffix(FileKind::QuickTime) == "mov");
    CHECK(suffix(FileKind::Pdf) == "pdf");
}
