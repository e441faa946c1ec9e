// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/RecordNames.h"

#include "ui/convert/QtText.h"

#include <QString>

#include <catch2/catch.hpp>

namespace lastrivet::ui {

TEST_CASE("What no number was given to by people is named without the one that the program gave it")
{
    Records records;
    PartLine line;
    line.id = Id<PartLine>{6003945344407};
    line.part_number = "K-1042";
    line.name = "Hinge bracket";
    records.part_lines.put(line);
    Flight flight;
    flight.id = Id<Flight>{6003945344408};
    flight.flown_on = Moment::parse("2026-03-10");
    records.flights.put(flight);
    MaterialLot lot;
    lot.id = Id<MaterialLot>{6003945344409};
    lot.name = "Resin";
    lot.lot_number = "R-7";
    records.material_lots.put(lot);
    Closing closing;
    closing.id = Id<Closing>{6003945344410};
    closing.title = "Left wing, upper skin";
    records.closings.put(closing);
    const RecordRef theLine{RecordType::PartLine, line.id.value()};
    const RecordRef theFlight{RecordType::Flight, flight.id.value()};
    const RecordRef theLot{RecordType::MaterialLot, lot.id.value()};
    CHECK(toStd(shortName(records, theLine)) == "K-1042 Hinge bracket");
    CHECK(shortName(records, theFlight).startsWith(QStringLiteral("flight of ")));
    CHECK(toStd(shortName(records, theLot)) == "Resin, lot R-7");
    const QString several =
        namesOf(records, {theLine, theLot, {RecordType::Closing, closing.id.value()}});
    CHECK_FALSE(several.contains(QStringLiteral("600394534")));
    CHECK(several.contains(QStringLiteral("“Left wing, upper skin”")));
}

} // namespace lastrivet::ui
