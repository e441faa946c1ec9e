// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/WingProject.h"

#include "core/readiness/Readiness.h"
#include "core/readiness/SquawkOrder.h"

namespace lastrivet::test {

WingProject::WingProject()
{
    records.project = {.name = "Larkspur",
                       .aircraft_type = "Larkspur 2",
                       .designer = "Designer of the test",
                       .registration = "X-TEST",
                       .serial_number = "0042",
                       .origin = Origin::Kit,
                       .profile = "test",
                       .builder_id = builder,
                       .started_on = at("2024-01-05")};
    profile.id = "test";
    profile.name = "Rules of the test";
    profile.edition = "2026-01-01";
    profile.interior_photos = 2;
    profile.one_open_request = true;
    profile.cautions = {{"first", "A caution of the profile."}};
    addPeople();
    addParts();
    addClosings();
    addFindings();
    addHardware();
    addMaterials();
    addWork();
    addPhotos();
}

void WingProject::addPeople()
{
    records.people.put({.id = builder, .name = "Berta Builder", .roles = {Role::Builder}});
    records.people.put({.id = helper, .name = "Hans Helper", .roles = {Role::Helper}});
    records.people.put({.id = inspector,
                        .name = "Ines Inspector",
                        .roles = {Role::Inspector},
                        .credential = "No. 77"});
}

void WingProject::addParts()
{
    records.components.put({.id = wing,
                            .code = "LW",
                            .name = "Left wing",
                            .kind = ComponentKind::LiftingSurface,
                            .construction = Construction::Metal});
    records.components.put({.id = rib, .parent_id = wing, .code = "LW-R3", .name = "Rib 3"});
    records.components.put({.id = tank,
                            .parent_id = wing,
                            .code = "LW-T",
                            .name = "Left tank",
                            .kind = ComponentKind::FuelTank});
    records.components.put({.id = tail, .code = "T", .name = "Tail"});
}

void WingProject::addClosings()
{
    records.closings.put({.id = wingSkin,
                          .component_id = wing,
                          .title = "Upper skin of the left wing",
                          .encloses = {rib, tank}});
    records.closings.put({.id = tankBaffle,
                          .component_id = tank,
                          .title = "Last baffle of the left tank",
                          .encloses = {tank},
                          .events = {{.closed_on = at("2026-01-10"),
                                      .by = builder,
                                      .reason = "the sealant would not wait"}}});
    records.closings.put({.id = tailSkin,
                          .component_id = tail,
                          .title = "Tail skin",
                          .encloses = {tail},
                          .events = {{.closed_on = at("2025-06-01"), .by = builder}}});
    records.hold_points.put({.id = preCover,
                             .closing_id = wingSkin,
                             .kind = HoldPointKind::PreCover,
                             .signer_role = SignerRole::Inspector,
                             .source = "Rule 7 of the test"});
    records.hold_points.put({.id = Id<HoldPoint>{2},
                             .closing_id = wingSkin,
                             .kind = HoldPointKind::OwnCheck,
                             .waived_on = at("2026-03-01"),
                             .waived_by = builder,
                             .waived_why = "seen by the inspector anyway"});
    records.checks.put({.id = Id<Check>{1},
                        .closing_id = wingSkin,
                        .item = "Drains are open",
                        .done_on = at("2026-03-10"),
                        .done_by = builder});
    records.checks.put({.id = Id<Check>{2}, .closing_id = wingSkin, .item = "Tools are counted"});
    records.inspections.put({.id = Id<Inspection>{1},
                             .kind = InspectionKind::PreCover,
                             .reference = "V-1",
                             .asked_on = at("2026-03-02"),
                             .planned_for = at("2026-03-20"),
                             .inspector_id = inspector,
                             .hold_point_ids = {preCover}});
}

void WingProject::addFindings()
{
    records.squawks.put({.id = Id<Squawk>{1},
                         .number = "1",
                         .component_id = rib,
                         .title = "Rivet set too deep in rib 3",
                         .severity = Severity::Airworthiness,
                         .found_on = at("2026-02-01"),
                         .found_by = inspector,
                         .inspection_id = Id<Inspection>{1},
                         .finding_number = "F1",
                         .verify_by = SignerRole::Inspector,
                         .correction = "Drilled out and replaced",
                         .fixed_on = at("2026-02-10"),
                         .fixed_by = builder});
    records.squawks.put({.id = Id<Squawk>{2},
                         .number = "2",
                         .component_id = tail,
                         .title = "Bell crank of the tail reached through the wing root",
                         .found_on = at("2026-02-02"),
                         .needs_access_to = {tank}});
    records.squawks.put({.id = Id<Squawk>{3},
                         .number = "3",
                         .component_id = tail,
                         .title = "Scratch on the tail",
                         .found_on = at("2026-02-03")});
    records.squawks.put({.id = Id<Squawk>{4},
                         .number = "4",
                         .component_id = rib,
                         .title = "Found the day after",
                         .found_on = at("2026-03-15")});
    records.deviations.put({.id = Id<Deviation>{1},
                            .number = "1",
                            .component_ids = {rib},
                            .title = "Thicker doubler",
                            .built_as = "0.8 mm in place of 0.6 mm",
                            .raised_on = at("2026-01-05"),
                            .decided_on = at("2026-01-20"),
                            .decided_by = inspector,
                            .decision = Decision::Approved,
                            .basis = "letter of the designer"});
    records.bulletins.put({.id = Id<Bulletin>{1},
                           .number = "B-1",
                           .title = "Check the tail hinges",
                           .received_on = at("2026-01-02"),
                           .component_ids = {tail}});
}

void WingProject::addHardware()
{
    records.tools.put({.id = Id<Tool>{1},
                       .name = "Torque wrench",
                       .serial_number = "W-9",
                       .needs_calibration = true,
                       .calibrations = {{at("2025-09-01"), at("2026-09-01"), {}}}});
    records.tools.put({.id = Id<Tool>{2}, .name = "Scale for the tail"});
    records.fasteners.put({.id = Id<Fastener>{1},
                           .component_id = rib,
                           .place = "Rib 3 to spar",
                           .hardware = "bolt M5",
                           .quantity = 4,
                           .torque_min = 5,
                           .torque_max = 6.5,
                           .torque_unit = TorqueUnit::NewtonMetres,
                           .fitted_on = at("2026-02-20"),
                           .torqued_on = at("2026-02-21"),
                           .torque_value = 6,
                           .tool_id = Id<Tool>{1},
                           .marked_on = at("2026-02-21")});
    records.fasteners.put({.id = Id<Fastener>{2},
                           .component_id = tail,
                           .place = "Tail spar",
                           .fitted_on = at("2026-02-20"),
                           .tool_id = Id<Tool>{2}});
    records.measurements.put({.id = Id<Measurement>{1},
                              .component_id = tank,
                              .what = "Leak test, pressure kept",
                              .unit = "kPa",
                              .minimum = 20,
                              .value = 18,
                              .measured_on = at("2026-02-25")});
}

void WingProject::addMaterials()
{
    records.material_lots.put({.id = Id<MaterialLot>{1},
                               .name = "Tank sealant",
                               .lot_number = "L-5",
                               .cures = true,
                               .expires_on = at("2026-01-01")});
    records.material_uses.put({.id = Id<MaterialUse>{1},
                               .lot_ids = {Id<MaterialLot>{1}},
                               .component_id = tank,
                               .used_on = at("2026-01-09"),
                               .cure_minutes = Minutes{2880}});
}

void WingProject::addWork()
{
    records.steps.put({.id = Id<Step>{1},
                       .component_id = rib,
                       .title = "Rivet rib 3",
                       .done_on = at("2026-02-28")});
    records.work_sessions.put(
        {.id = Id<WorkSession>{1},
         .began = at("2026-02-28T18:00"),
         .minutes = Minutes{150},
         .component_id = rib,
         .step_id = Id<Step>{1},
         .kind = WorkKind::Assembly,
         .workers = {{builder, std::nullopt, false}, {helper, Minutes{60}, true}}});
    records.work_sessions.put({.id = Id<WorkSession>{2},
                               .began = at("2026-02-27"),
                               .component_id = tank,
                               .kind = WorkKind::Fabrication});
    records.work_sessions.put({.id = Id<WorkSession>{3},
                               .began = at("2026-02-26"),
                               .minutes = Minutes{45},
                               .component_id = tail});
}

void WingProject::addPhotos()
{
    const auto photo = [&](std::int64_t id, std::string_view day, std::string caption,
                           WordSet<Shows> shows, Media::Link link) {
        records.media.put({.id = Id<Media>{id},
                           .file = "photos/" + std::to_string(id) + ".jpg",
                           .taken_on = at(day),
                           .shows = shows,
                           .caption = std::move(caption),
                           .links = {link}});
    };
    photo(1, "2026-02-12", "Tank before closing", {Shows::Interior}, {RecordType::Component, 3});
    photo(2, "2026-02-11", "Rib 3 repaired", {Shows::Repair}, {RecordType::Squawk, 1});
    photo(3, "2026-02-10", "Rib 3 as found", {}, {RecordType::Squawk, 1});
    photo(4, "2026-02-09", "Wing from outside", {Shows::Exterior}, {RecordType::Component, 1});
    photo(5, "2026-02-08", "Tail inside", {Shows::Interior}, {RecordType::Component, 4});
    photo(6, "2026-03-15", "A day too late", {Shows::Interior}, {RecordType::Component, 3});
}

packet::Packet packetOf(const WingProject &project, const IdSet<Closing> &closings)
{
    const readiness::Answer answer =
        readiness::readiness(project.records, project.profile, project.as_of);
    return packet::packetFor(project.records, project.profile, answer, closings);
}

packet::Packet wingPacket(const WingProject &project)
{
    return packetOf(project, {project.wingSkin});
}

packet::SquawkList squawkListOf(const WingProject &project)
{
    const auto answer = readiness::readiness(project.records, project.profile, project.as_of);
    return packet::squawkList(project.records, project.profile, answer,
                              readiness::squawkOrder(project.records, answer, project.as_of), {});
}

} // namespace lastrivet::test
