// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/Packet.h"

#include "tests/support/WingProject.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace lastrivet;
using lastrivet::packet::Packet;
using lastrivet::test::WingProject;

namespace {

template <class Entries, class Member> auto column(const Entries &entries, Member member)
{
    std::vector<std::decay_t<decltype(entries.front().*member)>> values;
    for (const auto &entry : entries)
        values.push_back(entry.*member);
    return values;
}

using Texts = std::vector<std::string>;

} // namespace

TEST_CASE("A packet says what is to be closed and in which state")
{
    const WingProject project;
    const Packet packet = wingPacket(project);
    CHECK(english(packet.title) == "Inspection packet: Upper skin of the left wing");
    CHECK(packet.state == readiness::State::Hold);
    REQUIRE(packet.front.to_close.size() == 1);
    CHECK(packet.front.to_close[0].part == "Left wing");
    CHECK(packet.front.to_close[0].musts > 0);
    CHECK(packet.front.aircraft.registration == "X-TEST");
    CHECK(packet.front.aircraft.builder == "Berta Builder");
    CHECK(packet.front.aircraft.rules == "Rules of the test, 2026-01-01");
}

TEST_CASE("What waits for the inspector is asked of him, everything else is open")
{
    const WingProject project;
    const Packet packet = wingPacket(project);
    Texts asked;
    for (const auto &request : packet.front.asked) {
        CHECK(request.of == SignerRole::Inspector);
        asked.push_back(english(request.what));
    }
    CHECK(std::any_of(asked.begin(), asked.end(), [](const std::string &text) {
        return text.find("re-cover inspection") != std::string::npos;
    }));
    CHECK(std::any_of(asked.begin(), asked.end(), [](const std::string &text) {
        return text.find("1, Rivet set too deep") != std::string::npos;
    }));
    Texts open;
    for (const auto &row : packet.front.open)
        open.push_back(english(row.what));
    CHECK(std::any_of(open.begin(), open.end(), [](const std::string &text) {
        return text.find("Bell crank") != std::string::npos;
    }));
    CHECK(std::none_of(open.begin(), open.end(), [](const std::string &text) {
        return text.find("re-cover inspection") != std::string::npos;
    }));
}

TEST_CASE("The front pages name visits, waivers and what nobody wrote down")
{
    const WingProject project;
    const Packet packet = wingPacket(project);
    REQUIRE(packet.front.visits.size() == 1);
    CHECK(packet.front.visits[0].reference == "V-1");
    CHECK(packet.front.visits[0].inspector == "Ines Inspector");
    CHECK(packet.front.visits[0].is_for_these);
    REQUIRE(packet.front.waived.size() == 1);
    CHECK(packet.front.waived[0].by == "Berta Builder");
    CHECK(packet.front.waived[0].why == "seen by the inspector anyway");
    REQUIRE(packet.front.not_on_record.size() == 1);
    REQUIRE(packet.front.not_on_record[0].kinds.size() == 1);
    CHECK(english(packet.front.not_on_record[0].kinds[0]) == "packing lists");
    REQUIRE(packet.front.lacking.size() == 1);
    CHECK(english(packet.front.lacking[0].kind) == "packing lists");
    CHECK(packet.front.lacking[0].closings == Texts{packet.front.not_on_record[0].closing});
}

TEST_CASE("Closings with gaps follow into every packet, those of the region first")
{
    WingProject project;
    // The tail has an undone step when it is closed, and so has gaps too.
    project.records.steps.put({.id = Id<Step>{9},
                               .component_id = project.tail,
                               .title = "Tail hinge",
                               .planned_on = WingProject::at("2025-01-01")});
    const Packet packet = wingPacket(project);
    const auto &gaps = packet.front.closed_with_gaps;
    REQUIRE(gaps.size() == 2);
    CHECK(gaps[0].title == "Last baffle of the left tank");
    CHECK(gaps[0].in_region);
    CHECK(gaps[0].reason == "the sealant would not wait");
    const auto &missing = gaps[0].missing;
    CHECK(std::any_of(missing.begin(), missing.end(), [](const Message &message) {
        return english(message).find("Tank sealant") != std::string::npos;
    }));
    CHECK(gaps[1].title == "Tail skin");
    CHECK_FALSE(gaps[1].in_region);
    REQUIRE_FALSE(packet.front.asked.empty());
    CHECK(english(packet.front.asked.back().what) ==
          "decide whether it may stay closed or must be opened");
    CHECK(packet.front.asked.back().about ==
          std::vector<std::string>{"Last baffle of the left tank"});
}

TEST_CASE("A closing of an earlier builder says that the inspector decides")
{
    WingProject project;
    Closing baffle = *project.records.closings.find(project.tankBaffle);
    baffle.made_by = MadeBy::EarlierBuilder;
    project.records.closings.put(baffle);
    const Packet packet = wingPacket(project);
    REQUIRE_FALSE(packet.front.closed_with_gaps.empty());
    CHECK(english(packet.front.closed_with_gaps[0].missing[0]) ==
          "closed before these records began; the inspector decides");
}

TEST_CASE("Nothing from beyond the region is in a packet, but for squawks that need its access")
{
    const WingProject project;
    const Packet packet = wingPacket(project);
    CHECK(column(packet.squawks, &packet::SquawkEntry::number) == Texts{"1", "2"});
    CHECK(column(packet.fasteners, &packet::FastenerEntry::place) == Texts{"Rib 3 to spar"});
    CHECK(column(packet.tools, &packet::ToolEntry::name) == Texts{"Torque wrench"});
    CHECK(packet.bulletins.empty());
    CHECK(column(packet.work.sessions, &packet::WorkLog::Session::part) ==
          Texts{"LW-T Left tank", "LW-R3 Rib 3"});
    for (const packet::Photo &photo : packet.photos)
        CHECK(photo.part != "T Tail");
}

TEST_CASE("Photographs are in the order of the parts, then of the days, and numbered")
{
    const WingProject project;
    const Packet packet = wingPacket(project);
    CHECK(column(packet.photos, &packet::Photo::caption) ==
          Texts{"Rib 3 as found", "Rib 3 repaired", "Tank before closing"});
    CHECK(column(packet.photos, &packet::Photo::number) == std::vector<int>{1, 2, 3});
    CHECK(packet.squawks[0].photo_numbers == std::vector<int>{1, 2});
}

TEST_CASE("What happens after the day of the packet is not in it")
{
    WingProject project;
    project.as_of = WingProject::at("2026-02-05");
    const Packet packet = wingPacket(project);
    CHECK(column(packet.squawks, &packet::SquawkEntry::number) == Texts{"1", "2"});
    CHECK(packet.squawks[0].state == packet::SquawkEntry::State::Open);
    CHECK(packet.squawks[0].correction.empty());
    CHECK(packet.photos.empty());
    CHECK(packet.work.sessions.empty());
    REQUIRE(packet.fasteners.size() == 1);
    CHECK_FALSE(packet.fasteners[0].fitted_on);
    CHECK_FALSE(packet.fasteners[0].torque_value);
    REQUIRE(packet.measurements.size() == 1);
    CHECK_FALSE(packet.measurements[0].value);
    CHECK(packet.front.visits.empty());
}

TEST_CASE("Withdrawn records are not in a packet")
{
    WingProject project;
    Squawk squawk = *project.records.squawks.find(Id<Squawk>{2});
    squawk.withdrawn_on = WingProject::at("2026-03-01");
    project.records.squawks.put(squawk);
    CHECK(column(wingPacket(project).squawks, &packet::SquawkEntry::number) == Texts{"1"});
}

TEST_CASE("The work log says who did it, with the time of each and what nobody wrote down")
{
    const WingProject project;
    const Packet packet = wingPacket(project);
    REQUIRE(packet.work.people.size() == 2);
    const packet::WorkLog::Total &builder = packet.work.people[0];
    CHECK(builder.name == "Berta Builder");
    CHECK(builder.sessions == 2);
    CHECK(builder.minutes == Minutes{150});
    CHECK(builder.without_time == 1);
    const packet::WorkLog::Total &helper = packet.work.people[1];
    CHECK(helper.name == "Hans Helper");
    CHECK(helper.minutes == Minutes{60});
    CHECK(helper.paid);
}

TEST_CASE("A lot used after its date is told from one used in time")
{
    WingProject project;
    REQUIRE(wingPacket(project).materials.size() == 1);
    CHECK(wingPacket(project).materials[0].lots[0].was_expired);
    MaterialLot lot = *project.records.material_lots.find(Id<MaterialLot>{1});
    lot.expires_on = WingProject::at("2026-01-09");
    project.records.material_lots.put(lot);
    CHECK_FALSE(wingPacket(project).materials[0].lots[0].was_expired);
}

TEST_CASE("A torque counts without the drag of the nut, and names a wrench out of calibration")
{
    WingProject project;
    Fastener bolt = *project.records.find(Id<Fastener>{1});
    bolt.torque_value = 7.5;
    bolt.torque_drag = 1.5;
    project.records.fasteners.put(bolt);
    packet::FastenerEntry entry = wingPacket(project).fasteners.at(0);
    CHECK(entry.netTorque() == 6);
    CHECK_FALSE(entry.isOutOfLimits());
    CHECK_FALSE(entry.was_tool_uncalibrated);
    entry.torque_drag.reset();
    CHECK(entry.isOutOfLimits());
    Tool wrench = *project.records.find(Id<Tool>{1});
    // On its last day a calibration still holds.
    wrench.calibrations[0].due_on = WingProject::at("2026-02-21");
    project.records.tools.put(wrench);
    CHECK_FALSE(wingPacket(project).fasteners.at(0).was_tool_uncalibrated);
    wrench.calibrations[0].due_on = WingProject::at("2026-02-20");
    project.records.tools.put(wrench);
    CHECK(wingPacket(project).fasteners.at(0).was_tool_uncalibrated);
}

TEST_CASE("The inspector's list is the closing's own, or the profile's where it has none")
{
    WingProject project;
    REQUIRE(wingPacket(project).check_lists.size() == 1);
    const packet::CheckList own = wingPacket(project).check_lists[0];
    CHECK_FALSE(own.is_from_profile);
    CHECK(column(own.lines, &packet::CheckList::Line::item) ==
          Texts{"Drains are open", "Tools are counted"});
    CHECK(own.lines[0].done_by == "Berta Builder");
    CHECK_FALSE(own.lines[1].done_on);

    project.records.checks = {};
    Profile::Checklist metalWing;
    metalWing.constructions = {Construction::Metal};
    metalWing.items.push_back({.item = "Rivets are sound"});
    Profile::Checklist wood;
    wood.constructions = {Construction::Wood};
    wood.items.push_back({.item = "Glue lines are closed"});
    Profile::Checklist fuelTank;
    fuelTank.component_kinds = {ComponentKind::FuelTank};
    fuelTank.items.push_back({.item = "Vents are open"});
    project.profile.checklists = {metalWing, wood, fuelTank};
    const packet::CheckList offered = wingPacket(project).check_lists[0];
    CHECK(offered.is_from_profile);
    CHECK(column(offered.lines, &packet::CheckList::Line::item) ==
          Texts{"Rivets are sound", "Vents are open"});
}

TEST_CASE("The sheet to sign carries findings that nobody verified, and every hold point")
{
    WingProject project;
    REQUIRE(wingPacket(project).sheets.size() == 1);
    const packet::SheetToSign sheet = wingPacket(project).sheets[0];
    REQUIRE(sheet.deficiencies.size() == 1);
    CHECK(sheet.deficiencies[0].number == "F1");
    CHECK(sheet.deficiencies[0].correction == "Drilled out and replaced");
    CHECK(sheet.hold_points.size() == 2);

    Squawk squawk = *project.records.squawks.find(Id<Squawk>{1});
    squawk.verified_on = WingProject::at("2026-03-01");
    squawk.verified_by = project.inspector;
    project.records.squawks.put(squawk);
    CHECK(wingPacket(project).sheets[0].deficiencies.empty());
}

TEST_CASE("What was closed with gaps has a sheet that asks for late acceptance")
{
    const WingProject project;
    const Packet packet = packetOf(project, {project.tankBaffle});
    CHECK(packet.state == readiness::State::ClosedEarly);
    REQUIRE(packet.sheets.size() == 1);
    CHECK(packet.sheets[0].asks_late_acceptance);
    CHECK_FALSE(wingPacket(project).sheets[0].asks_late_acceptance);
}

TEST_CASE("Of several signatures the latest counts, and a rejected one stays to be signed")
{
    WingProject project;
    project.records.sign_offs.put({.id = Id<SignOff>{1},
                                   .hold_point_id = project.preCover,
                                   .person_id = project.inspector,
                                   .signed_on = WingProject::at("2026-03-05"),
                                   .result = SignOffResult::Rejected});
    project.records.sign_offs.put({.id = Id<SignOff>{2},
                                   .hold_point_id = project.preCover,
                                   .person_id = project.inspector,
                                   .signed_on = WingProject::at("2026-03-04"),
                                   .result = SignOffResult::Accepted});
    const Packet packet = wingPacket(project);
    const auto &points = packet.standings[0].hold_points;
    const auto preCover = std::find_if(points.begin(), points.end(), [&](const auto &point) {
        return point.id == project.preCover;
    });
    REQUIRE(preCover != points.end());
    REQUIRE(preCover->signature);
    CHECK(preCover->signature->result == SignOffResult::Rejected);
    CHECK(preCover->signature->credential == "No. 77");
    REQUIRE(preCover->before.size() == 1);
    CHECK(preCover->before[0].result == SignOffResult::Accepted);
}

TEST_CASE("A packet says who signed the boxes inside, and when they were closed")
{
    WingProject project;
    project.records.hold_points.put({.id = Id<HoldPoint>{5},
                                     .closing_id = project.tankBaffle,
                                     .kind = HoldPointKind::PreCover,
                                     .signer_role = SignerRole::Inspector});
    project.records.sign_offs.put({.id = Id<SignOff>{5},
                                   .hold_point_id = Id<HoldPoint>{5},
                                   .person_id = project.inspector,
                                   .signed_on = WingProject::at("2026-01-09"),
                                   .result = SignOffResult::Accepted});
    const Packet packet = wingPacket(project);
    REQUIRE(packet.within.size() == 1);
    const packet::Standing &tank = packet.within[0];
    CHECK(tank.title == "Last baffle of the left tank");
    CHECK(tank.rules.empty());
    REQUIRE(tank.events.size() == 1);
    CHECK(tank.events[0].closed_on == WingProject::at("2026-01-10"));
    REQUIRE(tank.hold_points.size() == 1);
    REQUIRE(tank.hold_points[0].signature);
    CHECK(tank.hold_points[0].signature->by == "Ines Inspector");
    CHECK_FALSE(tank.hold_points[0].signature->has_sheet);
    const auto withinOf = [&](const IdSet<Closing> &closings) {
        return packetOf(project, closings).within.size();
    };
    CHECK(withinOf({project.tankBaffle}) == 0);
    CHECK(withinOf({project.wingSkin, project.tankBaffle}) == 0);
}

TEST_CASE("A packet of the whole aircraft holds every part and what names no part")
{
    WingProject project;
    project.records.closings.put({.id = Id<Closing>{9},
                                  .component_id = project.wing,
                                  .title = "Finished",
                                  .scope = ClosingScope::Aircraft});
    project.records.squawks.put({.id = Id<Squawk>{9},
                                 .number = "9",
                                 .title = "Name on the plate",
                                 .found_on = WingProject::at("2026-02-03"),
                                 .inspection_id = Id<Inspection>{1},
                                 .finding_number = "F9"});
    project.records.media.put({.id = Id<Media>{9},
                               .file = "photos/9.jpg",
                               .taken_on = WingProject::at("2026-02-03"),
                               .links = {{RecordType::Squawk, 9}}});
    project.records.hold_points.put({.id = Id<HoldPoint>{9},
                                     .closing_id = Id<Closing>{9},
                                     .kind = HoldPointKind::PreCover,
                                     .signer_role = SignerRole::Inspector});
    const Packet packet = packetOf(project, {Id<Closing>{9}});
    Texts numbers = column(packet.squawks, &packet::SquawkEntry::number);
    std::sort(numbers.begin(), numbers.end());
    CHECK(numbers == Texts{"1", "2", "3", "9"});
    CHECK(packet.bulletins.size() == 1);
    CHECK(packet.fasteners.size() == 2);
    const auto plate = std::find_if(packet.squawks.begin(), packet.squawks.end(),
                                    [](const auto &squawk) { return squawk.number == "9"; });
    CHECK(plate->photo_numbers.size() == 1);
    REQUIRE(packet.sheets.size() == 1);
    const Texts found =
        column(packet.sheets[0].deficiencies, &packet::SheetToSign::Deficiency::number);
    CHECK(found == Texts{"F1", "F9"});
}
