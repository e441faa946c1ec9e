// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/ReadableName.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::evidence;

namespace {
Moment moment(std::string_view text)
{
    return Moment::parse(text).value();
}
} // namespace

TEST_CASE("A part's name becomes lower-case ASCII with single hyphens")
{
    CHECK(slug("Left Aileron") == "left-aileron");
    CHECK(slug("  Rib #3 / L.H. ") == "rib-3-l-h");
    CHECK(slug("Größe Höhenruder") == "grosse-hohenruder");
    CHECK(slug("Gouverne de direction à l'arrière") == "gouverne-de-direction-a-larriere");
    CHECK(slug("Žebro Łopatka Œil") == "zebro-lopatka-oeil");
    CHECK(slug("../../etc/passwd") == "etc-passwd");
    CHECK(slug("a\nb\"c") == "a-b-c");
}

TEST_CASE("A name that ASCII cannot tell gives no slug, and a long one is cut")
{
    CHECK(slug("左補助翼").empty());
    CHECK(slug("").empty());
    CHECK(slug("--").empty());
    CHECK(slug("\xff\xfe\xc3").empty());
    CHECK(slug(std::string(500, 'a')) == std::string(40, 'a'));
}

TEST_CASE("A file's name tells when, what and the beginning of its hash")
{
    const std::string hash = "4f2a91" + std::string(58, '0');
    CHECK(readableName(FileKind::Jpeg, moment("2026-03-14T15:23"), "left-aileron", hash, 6) ==
          "2026-03-14_1523_left-aileron_4f2a91.jpg");
    CHECK(readableName(FileKind::Pdf, moment("2026-03-14"), "", hash, 10) ==
          "2026-03-14_4f2a910000.pdf");
    CHECK(folderFor(FileKind::Heic, moment("2026-03-14T15:23")) == "photos/2026");
    CHECK(folderFor(FileKind::Mp4, moment("2025-12-31")) == "photos/2025");
    CHECK(folderFor(FileKind::Pdf, moment("2025-12-31")) == "documents");
}
