// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/RecordNames.h"

#include "ui/convert/QtText.h"
#include "ui/widgets/MediaModel.h"

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

TEST_CASE("The day on which a photo was taken in is not called the one on which it was taken")
{
    Media photo;
    photo.file = "photos/2026/2026-03-14_4f2a91.jpg";
    CHECK(toStd(mediaTitle(photo)) == photo.file);
    photo.imported_on = Moment::parse("2026-03-14T16:10");
    const QString day = dayText(*photo.imported_on);
    CHECK(mediaTitle(photo) == day + QStringLiteral(" (taken in)"));
    CHECK(mediaFacts(photo) == day + QStringLiteral(" (taken in)"));
    photo.taken_on = Moment::parse("2026-03-13T08:15");
    CHECK(mediaTitle(photo) == dateText(photo.taken_on));
    photo.shows.insert(Shows::Interior);
    CHECK(mediaFacts(photo) == dateText(photo.taken_on) + QStringLiteral(" · interior"));
}

TEST_CASE("A caption of several lines is a name on one")
{
    Records records;
    Media photo;
    photo.id = Id<Media>{7};
    photo.file = "photos/2026/2026-03-14_4f2a91.jpg";
    photo.caption = "Rib 3\nfrom the left";
    records.media.put(photo);
    CHECK(mediaTitle(photo) == QStringLiteral("Rib 3 from the left"));
    CHECK(shortName(records, {RecordType::Media, 7}) == QStringLiteral("Rib 3 from the left"));
}

} // namespace lastrivet::ui
