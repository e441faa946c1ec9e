// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Sha256.h"
#include "tests/support/TwoCopies.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <fstream>

using namespace lastrivet;
using test::ProjectCopy;
using test::TwoCopies;

namespace {

/// The same photograph, taken in by a copy.
void takeIn(TwoCopies &two, ProjectCopy &copy, std::string_view note = {})
{
    const std::string content = "of both";
    std::filesystem::create_directories(copy.folder() / "photos");
    std::ofstream(copy.folder() / "photos/rib.jpg", std::ios::binary) << content;
    two.later(copy);
    copy.change("Photo", [&](Edit &edit) {
        Media media;
        media.kind = MediaKind::Photo;
        media.file = "photos/rib.jpg";
        media.note = note;
        media.sha256 =
            sha256({reinterpret_cast<const std::uint8_t *>(content.data()), content.size()});
        edit.put(media);
    });
}

} // namespace

TEST_CASE("A photograph that both took in goes when both took that back, not when one did")
{
    TwoCopies two;
    takeIn(two, two.robin);
    takeIn(two, two.kim());
    two.later(two.kim());
    REQUIRE(two.kim()->undo());
    const bool isUndoneByBoth = GENERATE(false, true);
    if (isUndoneByBoth) {
        two.later(two.robin);
        REQUIRE(two.robin->undo());
    }
    two.mergeBoth();
    CHECK(two.robin->records()->media.size() == (isUndoneByBoth ? 0 : 1));
    CHECK(two.robin->conflicts().empty());
}

TEST_CASE("A record that both made alike, as by one import, keeps what one went on to")
{
    TwoCopies two;
    Component rib;
    rib.id = Id<Component>{777};
    rib.name = "Rib";
    for (auto *copy : {&two.robin, &two.kim()}) {
        if (copy == &two.kim()) {
            two.later(two.robin);
            two.robin.change("Renamed", [&](Edit &edit) {
                edit.update(rib.id, [](Component &part) { part.name = "Rib 3"; });
            });
        }
        two.later(*copy);
        copy->change("Import", [&](Edit &edit) { edit.putAny(Component::type, &rib); });
    }
    two.mergeBoth();
    REQUIRE(two.robin->records()->find(rib.id));
    CHECK(two.robin->records()->find(rib.id)->name == "Rib 3");
    CHECK(two.robin->conflicts().empty());
}

TEST_CASE("Who changed a number that a merge made free anew has nothing to decide")
{
    TwoCopies two;
    const auto first = two.find(two.robin, "Gouge in the spar cap");
    const auto second = two.find(two.kim(), "Short bolt");
    REQUIRE(two.kim()->records()->find(second)->number == "2");
    two.later(two.kim());
    two.kim().change("Number", [&](Edit &edit) {
        edit.update(second, [](Squawk &squawk) { squawk.number = "7"; });
    });
    two.mergeBoth();
    CHECK(two.robin->records()->find(first)->number == "2");
    CHECK(two.robin->records()->find(second)->number == "7");
    CHECK(two.robin->conflicts().empty());
}

TEST_CASE("Who went on from his own change that was set aside has that alone to decide")
{
    TwoCopies two;
    two.part(two.robin, "Rib three", "R3");
    for (const std::string code : {"R3", "W9"}) {
        two.later(two.kim());
        two.kim().change("Code " + code, [&](Edit &edit) {
            edit.update(two.wing, [&](Component &part) { part.code = code; });
        });
    }
    two.mergeBoth();
    CHECK(two.wingOf(two.robin).code == "W9");
    const auto conflicts = two.robin->conflicts();
    REQUIRE(conflicts.size() == 1);
    CHECK(conflicts.front().kind == ConflictKind::SetAside);
}

TEST_CASE("A worker whose minutes one copy changed stays when the other takes him out")
{
    TwoCopies two;
    Id<Person> bo;
    Id<WorkSession> session;
    two.later(two.robin);
    two.robin.change("Work", [&](Edit &edit) {
        Person person;
        person.name = "Bo";
        person.roles = {Role::Helper};
        bo = edit.put(person);
        WorkSession work;
        work.began = edit.today();
        work.minutes = Minutes{60};
        work.component_id = two.wing;
        work.workers = {{edit.records().people.begin()->id, Minutes{60}}, {bo, Minutes{60}}};
        session = edit.put(work);
    });
    ProjectCopy sascha(two.robin, "Sascha");
    two.later(sascha);
    sascha.change("Minutes", [&](Edit &edit) {
        edit.update(session, [&](WorkSession &work) {
            for (auto &worker : work.workers) {
                if (worker.person_id == bo)
                    worker.minutes = Minutes{20};
            }
        });
    });
    two.later(two.robin);
    two.robin.change("Without Bo", [&](Edit &edit) {
        edit.update(session, [&](WorkSession &work) {
            std::erase_if(work.workers, [&](const auto &worker) { return worker.person_id == bo; });
        });
    });
    two.robin.merge(sascha);
    const auto &workers = two.robin->records()->find(session)->workers;
    REQUIRE(workers.size() == 2);
    for (const auto &worker : workers)
        CHECK(worker.minutes == Minutes{worker.person_id == bo ? 20 : 60});
}

TEST_CASE("Of a photograph that both took in and wrote about, both notes are told")
{
    TwoCopies two;
    takeIn(two, two.robin, "Primed");
    takeIn(two, two.kim(), "Etched");
    two.mergeBoth();
    REQUIRE(two.robin->records()->media.size() == 1);
    CHECK(two.robin->records()->media.begin()->note == "Primed");
    const auto conflicts = two.robin->conflicts();
    REQUIRE(conflicts.size() == 1);
    CHECK(conflicts.front().field == "note");
    CHECK(conflicts.front().lost == "\"Etched\"");
}

TEST_CASE("A photograph that was withdrawn and taken in again counts after a merge as before it")
{
    TwoCopies two;
    takeIn(two, two.robin, "Primed");
    two.later(two.robin);
    two.robin.change(
        "Blurred", [](Edit &edit) { edit.withdraw(edit.records().media.begin()->id, "blurred"); });
    const bool isByBoth = GENERATE(false, true);
    takeIn(two, isByBoth ? two.kim() : two.robin, "Sharp after all");
    two.note(two.kim(), "Etched");
    two.mergeBoth();
    std::vector<std::string> live;
    for (const Media &media : two.robin->records()->media) {
        if (!media.withdrawn_on)
            live.push_back(media.note);
    }
    CHECK(live == std::vector<std::string>{"Sharp after all"});
}

TEST_CASE("A line of a list is found where another copy's removal of a line before it moved it")
{
    TwoCopies two;
    Id<Tool> wrench;
    two.later(two.robin);
    two.robin.change("Wrench", [&](Edit &edit) {
        Tool tool;
        tool.name = "Torque wrench";
        for (const auto *day : {"2024-01-10", "2025-01-10", "2026-01-10"}) {
            const auto calibrated = *Moment::parse(day);
            tool.calibrations.push_back({calibrated, calibrated.plusDays(365), {}});
        }
        wrench = edit.put(tool);
    });
    ProjectCopy sascha(two.robin, "Sascha");
    two.later(two.robin);
    two.robin.change("Without the first", [&](Edit &edit) {
        edit.update(wrench, [](Tool &tool) { tool.calibrations.erase(tool.calibrations.begin()); });
    });
    const auto due = *Moment::parse("2025-07-10");
    two.later(sascha);
    sascha.change("Due earlier", [&](Edit &edit) {
        edit.update(wrench, [&](Tool &tool) { tool.calibrations[1].due_on = due; });
    });
    two.robin.merge(sascha);
    const auto &calibrations = two.robin->records()->find(wrench)->calibrations;
    REQUIRE(calibrations.size() == 2);
    CHECK(calibrations[0].calibrated_on == Moment::parse("2025-01-10"));
    CHECK(calibrations[0].due_on == due);
    CHECK(calibrations[1].calibrated_on == Moment::parse("2026-01-10"));
    CHECK(calibrations[1].due_on == Moment::parse("2027-01-10"));
}

TEST_CASE("What was decided stays decided when somebody went on from what lost")
{
    TwoCopies two;
    two.rename(two.robin, "Port wing");
    ProjectCopy alex(two.robin, "Alex");
    two.rename(two.kim(), "Left wing");
    two.mergeBoth();
    const auto id = two.robin->conflicts().front().id;
    two.later(two.robin);
    REQUIRE(two.robin->decide(id, ConflictDecision::Kept));
    two.rename(alex, "Starboard wing");
    two.robin.merge(alex);
    CHECK(two.wingOf(two.robin).name == "Starboard wing");
    const auto conflicts = two.robin->conflicts();
    const auto decided = std::find_if(conflicts.begin(), conflicts.end(),
                                      [id](const auto &conflict) { return conflict.id == id; });
    REQUIRE(decided != conflicts.end());
    CHECK(decided->decision == ConflictDecision::Kept);
}
