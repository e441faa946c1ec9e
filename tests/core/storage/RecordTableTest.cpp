// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/RecordTable.h"

#include "core/records/FieldOf.h"
#include "core/records/Flight.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using storage::RecordTable;

TEST_CASE("The column of a field that came later is the last, wherever the field stands")
{
    static const Field fields[] = {
        idField<&Flight::id>(),
        field<&Flight::flown_on>("flown_on", true),
        field<&Flight::landings>("landings").addedIn(3),
        field<&Flight::minutes>("minutes", true).addedIn(2),
        field<&Flight::note>("note"),
        field<&Flight::withdrawn_on>("withdrawn_on"),
    };
    const auto description = describeRecord<Flight>(fields);
    const RecordTable table(description);
    CHECK(table.columnList() == R"("id","flown_on","note","withdrawn_on","minutes","landings")");
    CHECK(columnOf(table, "note") == 2);
    CHECK(columnOf(table, "nothing") == 6);
    Flight flight;
    flight.id = Id<Flight>{7};
    flight.landings = 12;
    flight.note = "smooth";
    const auto row = table.rowsOf(&flight).front();
    CHECK(std::get<std::int64_t>(row[0]) == 7);
    CHECK(std::get<std::string>(row[2]) == "smooth");
    CHECK(std::get<std::int64_t>(row[5]) == 12);
}
