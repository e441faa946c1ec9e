// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/PartsOf.h"

#include <catch2/catch.hpp>

using namespace lastrivet;

TEST_CASE("A photo is about the parts it is linked to and those that linked records name")
{
    Records records;
    const auto part = [&](int id) {
        Component added;
        added.id = Id<Component>{id};
        added.name = "Part";
        records.components.put(added);
        return added.id;
    };
    const auto rib = part(5);
    const auto skin = part(4);
    const auto gone = part(6);
    Component withdrawn = *records.find(gone);
    withdrawn.withdrawn_on = Moment::parse("2026-01-01");
    records.components.put(withdrawn);
    Squawk squawk;
    squawk.id = Id<Squawk>{9};
    squawk.component_id = skin;
    records.squawks.put(squawk);
    Deviation deviation;
    deviation.id = Id<Deviation>{10};
    deviation.component_ids = {skin, rib, gone};
    records.deviations.put(deviation);
    Closing closing;
    closing.id = Id<Closing>{11};
    closing.component_id = skin;
    records.closings.put(closing);

    Media media;
    CHECK(evidence::isUnassigned(records, media));
    media.links = {{RecordType::Component, rib.value()}, {RecordType::Component, gone.value()}};
    CHECK(evidence::partsOf(records, media) == std::vector{rib});
    media.links.push_back({RecordType::Squawk, 9});
    media.links.push_back({RecordType::Deviation, 10});
    CHECK(evidence::partsOf(records, media) == std::vector{skin, rib});
    CHECK_FALSE(evidence::isUnassigned(records, media));
    media.links = {{RecordType::Component, gone.value()}};
    CHECK(evidence::isUnassigned(records, media));
    media.shows = {Shows::SignedSheet};
    CHECK_FALSE(evidence::isUnassigned(records, media));
    media.shows = {Shows::SignedSheet, Shows::Defect};
    CHECK(evidence::isUnassigned(records, media));
    media.kind = MediaKind::Document;
    CHECK_FALSE(evidence::isUnassigned(records, media));
}
