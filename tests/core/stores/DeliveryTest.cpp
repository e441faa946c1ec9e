// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stores/Delivery.h"
#include "core/base/Tongue.h"

#include "core/stores/Claim.h"
#include "tests/support/ProjectBuilder.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::stores;
using test::on;

namespace {

PartLine line(std::string_view shipment, std::string_view name, std::int64_t quantity)
{
    PartLine made;
    made.shipment = shipment;
    made.name = name;
    made.quantity = quantity;
    return made;
}

PartLine counted(std::string_view name, std::int64_t quantity, std::int64_t received,
                 std::int64_t damaged = 0)
{
    auto made = line("Crate 2", name, quantity);
    made.received_quantity = received;
    made.damaged_quantity = damaged;
    made.received_on = on("2026-03-01");
    return made;
}

std::string text(const std::vector<Message> &letter)
{
    std::string all;
    for (const Message &part : letter)
        all += english(part) + '\n';
    return all;
}

} // namespace

TEST_CASE("A line stands by what was counted, and by the day on which it was expected")
{
    const auto day = on("2026-03-14");
    auto awaited = line("Crate 2", "Rib", 4);
    awaited.expected_on = day;
    CHECK(standingOf(awaited, day).state == LineState::Awaited);
    CHECK(standingOf(awaited, on("2026-03-15")).state == LineState::Late);
    CHECK(standingOf(awaited, on("2026-03-20")).days_late == 6);
    CHECK(standingOf(awaited, day).wanted == 4);

    const auto few = standingOf(counted("Bolts", 80, 60, 5), day);
    CHECK(few.state == LineState::Missing);
    CHECK(few.missing == 20);
    CHECK(few.damaged == 5);
    CHECK(few.wanted == 25);

    CHECK(standingOf(counted("Tank", 1, 1, 1), day).state == LineState::Damaged);
    CHECK(standingOf(counted("Skins", 3, 4, 1), day).state == LineState::Complete);
    CHECK(standingOf(counted("Skins", 3, 4), day).state == LineState::Surplus);
    CHECK(standingOf(counted("Skins", 3, 3), day).state == LineState::Complete);
    // Before it was counted nothing was here.
    CHECK(standingOf(counted("Skins", 3, 3), on("2026-02-28")).state == LineState::Awaited);

    auto cameLate = counted("Rib", 1, 1);
    cameLate.expected_on = on("2026-02-19");
    CHECK(standingOf(cameLate, day).days_late == 10);
    CHECK(standingOf(cameLate, day).state == LineState::Complete);
}

TEST_CASE("Counts from strangers that make no sense do no harm")
{
    auto odd = counted("Rib", -3, -4, 9);
    CHECK(standingOf(odd, on("2026-03-14")).wanted == 0);
    odd.quantity = largestId;
    odd.received_quantity = 5;
    odd.damaged_quantity = largestId;
    CHECK(standingOf(odd, on("2026-03-14")).wanted == largestId);
}

TEST_CASE("Shipments with something left to come or to claim stand first")
{
    test::ProjectBuilder project;
    auto whole = counted("Fin kit", 1, 1);
    whole.shipment = "Crate 1";
    project.add(whole);
    auto bolts = counted("Bolts", 80, 60);
    bolts.expected_on = on("2026-02-01");
    project.add(bolts);
    project.add(counted("Tank", 1, 1, 1));
    auto late = line("Crate 2", "Rib 6", 1);
    late.expected_on = on("2026-02-01");
    project.add(late);
    project.add(line({}, "Loose washers", 100));
    const auto all = shipments(project.records, on("2026-03-14"));
    REQUIRE(all.size() == 3);
    CHECK(all[0].name == "Crate 2");
    CHECK(all[0].lines.size() == 3);
    CHECK(all[0].to_count == 1);
    // The bolts that did not come are as overdue as the rib that nobody counted yet.
    CHECK(all[0].late == 2);
    CHECK(all[0].missing == 1);
    CHECK(all[0].damaged == 1);
    CHECK(all[1].name.empty());
    CHECK(all[2].name == "Crate 1");
    CHECK(all[2].isSettled());
}

TEST_CASE("What waits for a line is its step, else the open steps of its part")
{
    test::ProjectBuilder project;
    const auto wing = project.part("Wing");
    Step open;
    open.component_id = wing;
    open.title = "Rivet the ribs";
    const auto rivet = project.add(open);
    open.title = "Prime";
    const auto prime = project.add(open);
    open.title = "Jig";
    open.done_on = on("2026-02-01");
    project.add(open);
    auto ofPart = line("Crate 2", "Ribs", 4);
    ofPart.component_id = wing;
    const auto ribs = project.add(ofPart);
    ofPart.name = "Primer";
    ofPart.step_id = prime;
    ofPart.expected_on = on("2026-03-01");
    const auto primer = project.add(ofPart);
    project.add(counted("Bolts", 80, 80));
    const auto found = waits(project.records, on("2026-03-14"));
    REQUIRE(found.size() == 2);
    CHECK(found[0].line == primer);
    CHECK(found[0].steps == std::vector{prime});
    CHECK(found[1].line == ribs);
    CHECK(found[1].steps == std::vector{rivet, prime});
}

TEST_CASE("A claim names what is missing, damaged and late, and its price in each currency")
{
    test::ProjectBuilder project;
    project.records.project.aircraft_type = "Two-seater";
    project.records.project.kit_number = "K-77";
    auto bolts = counted("Bolts AN3-5A", 80, 60);
    bolts.part_number = "AN3-5A";
    bolts.unit_price = 95;
    bolts.currency = "CAD";
    bolts.note = "One bag was AN3-4A.";
    project.add(bolts);
    auto tank = counted("Header tank", 1, 1, 1);
    tank.part_number = "M2-T20";
    tank.unit_price = 39000;
    tank.currency = "EUR";
    const auto dented = project.add(tank);
    auto late = line("Crate 2", "Rib 6", 1);
    late.expected_on = on("2026-02-01");
    project.add(late);
    project.add(counted("Skins", 3, 4, 1));
    Media photo;
    photo.file = "photos/2026/2026-03-01_tank.jpg";
    photo.links = {{RecordType::PartLine, dented.value()}};
    project.add(photo);

    const auto claim = claimFor(project.records, "Crate 2", on("2026-03-14"));
    CHECK(claim.missing.size() == 1);
    CHECK(claim.damaged == std::vector{dented});
    CHECK(claim.late.size() == 1);
    CHECK(claim.value.amounts() == std::vector<Money>{{1900, "CAD"}, {39000, "EUR"}});
    const auto words = text(letter(project.records, claim, on("2026-03-14")));
    for (const std::string_view expected :
         {"Shipment: Crate 2\n", "Aircraft: Two-seater\n", "Kit number: K-77\n",
          "  20 × Bolts AN3-5A: listed 80, received 60\n    One bag was AN3-4A.\n",
          "  1 × Header tank (M2-T20): received 1, of these damaged 1\n"
          "    Photographs: 2026-03-01_tank.jpg\n",
          "  1 × Rib 6: expected on 2026-02-01\n", "priced at 19.00 CAD in all.\n",
          "priced at 390.00 EUR in all.\n"}) {
        INFO(expected);
        CHECK(words.find(expected) != std::string::npos);
    }
    CHECK(words.find("Skins") == std::string::npos);
    const Tongue comma{[](std::string_view pattern) -> std::string {
                           return pattern == "{0}.{1}" ? "{0},{1}" : std::string(pattern);
                       },
                       {}};
    std::string german;
    for (const Message &message : letter(project.records, claim, on("2026-03-14")))
        german += said(message, comma) + '\n';
    CHECK(german.find("priced at 19,00 CAD in all.\n") != std::string::npos);
    CHECK(claimFor(project.records, "Crate 9", on("2026-03-14")).isEmpty());
}
