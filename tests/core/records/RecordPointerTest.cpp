// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/RecordPointer.h"

#include <catch2/catch.hpp>

using namespace lastrivet;

TEST_CASE("A record's pointer is read back, whatever its case")
{
    const RecordRef lot{RecordType::MaterialLot, 12};
    CHECK(pointerTo(lot) == "lastrivet:material_lot:12");
    CHECK(readPointer("lastrivet:material_lot:12") == lot);
    CHECK(readPointer("LASTRIVET:MATERIAL_LOT:12") == lot);
}

// The greatest is 2^53 - 1: JSON readers keep no greater whole number (RFC 8259, 6).
TEST_CASE("A label may point at the greatest id that there can be")
{
    const RecordRef greatest{RecordType::Tool, 9007199254740991};
    CHECK(readPointer(pointerTo(greatest)) == greatest);
}

TEST_CASE("A text that is no record pointer points at nothing")
{
    for (const auto *text :
         {"", "lastrivet", "lastrivet:", "lastrivet:component",
          "lastrivet:component:", "lastrivet:component:0", "lastrivet:component:-1",
          "lastrivet:component:1x", "lastrivet:wing:1", "component:1",
          "lastrivet:component:99999999999999999999", "lastrivet:component:9007199254740992"})
        CHECK_FALSE(readPointer(text));
}
