// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Hyphens.h"

#include <catch2/catch.hpp>

#include <string>

using namespace lastrivet;

TEST_CASE("Whatever stands for a hyphen within a part number is one, and dashes elsewhere stay")
{
    for (const std::string_view hyphen : hyphens) {
        const std::string sign(hyphen);
        CHECK(withPlainHyphens("AN4" + sign + "7A") == "AN4-7A");
        CHECK(withPlainHyphens("MS" + sign + "20470" + sign + "AD4") == "MS-20470-AD4");
        CHECK(withPlainHyphens("a" + sign + "b" + sign + "c") == "a-b-c");
        for (const auto &text : {"hinge " + sign + " left", sign + "7", "7" + sign, sign,
                                 "A" + sign + sign + "B", "gr\u00FC" + sign + "n"})
            CHECK(withPlainHyphens(text) == text);
    }
    CHECK(withPlainHyphens("").empty());
    CHECK(withPlainHyphens("Rib 3") == "Rib 3");
}
