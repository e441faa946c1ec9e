// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/invariants/Ancestors.h"
#include "tests/support/Violations.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

namespace {

using Said = std::vector<std::string>;

} // namespace

TEST_CASE("Steps wait for each other without a cycle")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto drill = project.step(wing, "Drill");
    const auto deburr = project.step(wing, "Deburr", {drill});
    const auto rivet = project.step(wing, "Rivet", {drill, deburr});
    CHECK(wrongs(project).empty());

    project.change(drill, [&](Step &s) { s.after = {rivet}; });
    const auto said = wrongs(project);
    REQUIRE_FALSE(said.empty());
    CHECK(said.front() ==
          "Step 3 “Drill” is to come after step 5 “Rivet”, which in turn has to wait for it.");
    CHECK(wrongs(project, drill) == said);

    project.change(drill, [&](Step &s) { s.after = {drill}; });
    CHECK(wrongs(project) == Said{"Step 3 “Drill” is to come after itself."});
}

TEST_CASE("A cycle through a withdrawn step is one, since its own predecessors stand in for it")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto drill = project.step(wing, "Drill");
    const auto deburr = project.step(wing, "Deburr", {drill});
    project.change(drill, [&](Step &s) { s.after = {deburr}; });
    project.withdraw(deburr);
    CHECK(wrongs(project, drill).size() == 1);
    project.withdraw(drill);
    CHECK(wrongs(project).empty());
}

TEST_CASE("What follows a closing step inside of what it closes says that it may")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto rib = project.part("Rib", wing);
    const auto tail = project.part("Tail");
    const auto closing = project.closing(wing);
    const auto close = project.step(wing, "Rivet the skin");
    project.change(close, [&](Step &s) { s.closes = closing; });
    const auto fill = project.step(tail, "Fill", {close});
    const auto leakTest = project.step(rib, "Leak test", {fill});
    const Said silent{
        "Step 8 “Leak test” lies inside closing 5 “Skin on Wing” and comes after a step "
        "that closes it, but does not say in may_follow that it can be done then."};
    CHECK(wrongs(project) == silent);
    CHECK(wrongs(project, leakTest) == silent);
    CHECK(wrongs(project, closing) == silent);
    CHECK(wrongs(project, rib) == silent);

    SECTION("saying so is enough")
    {
        project.change(leakTest, [&](Step &s) { s.may_follow = {closing}; });
        CHECK(wrongs(project).empty());
    }
    SECTION("a withdrawn step between does not hide it")
    {
        project.withdraw(fill);
        CHECK(wrongs(project) == silent);
    }
    SECTION("a withdrawn closing step closes nothing")
    {
        project.withdraw(close);
        CHECK(wrongs(project).empty());
    }
    SECTION("outside of the reach nothing has to be said")
    {
        project.change(rib, [&](Component &c) { c.parent_id = tail; });
        CHECK(wrongs(project).empty());
    }
}

TEST_CASE("Everything lies inside the closing of the whole aircraft")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto tail = project.part("Tail");
    const auto closing = project.add(
        Closing{.component_id = wing, .title = "Finished", .scope = ClosingScope::Aircraft});
    const auto finish = project.step(wing, "Finish");
    project.change(finish, [&](Step &s) { s.closes = closing; });
    project.step(tail, "Polish", {finish});
    CHECK(wrongs(project).size() == 1);
}

TEST_CASE("Among many changes the order of steps is looked at for those that bear on it")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto drill = project.step(wing, "Drill");
    const auto deburr = project.step(wing, "Deburr", {drill});
    project.change(drill, [&](Step &s) { s.after = {deburr}; });
    const auto found = [&](const Records &before, RecordRef touched) {
        return violations(project.records, project.profile, {&touched, 1}, before).size();
    };
    const RecordRef step{RecordType::Step, deburr.value()};
    const RecordRef part{RecordType::Component, wing.value()};
    auto before = project.records;

    SECTION("words, days and names do not")
    {
        project.change(deburr, [&](Step &s) { s.done_on = on("2026-05-01"); });
        project.change(wing, [&](Component &c) { c.name = "Left wing"; });
        CHECK(found(before, step) == 0);
        CHECK(found(before, part) == 0);
        CHECK(wrongs(project, deburr).size() == 1);
    }
    SECTION("what it comes after does")
    {
        auto without = *before.find(deburr);
        without.after = {};
        before.put(RecordType::Step, &without);
        CHECK(found(before, step) == 1);
    }
    SECTION("a step that is new does when it comes after another")
    {
        before.steps.erase(deburr.value());
        CHECK(found(before, step) == 1);
    }
    SECTION("a step that is in force again does")
    {
        auto withdrawn = *before.find(deburr);
        withdrawn.withdrawn_on = on("2026-05-01");
        before.put(RecordType::Step, &withdrawn);
        CHECK(found(before, step) == 1);
    }
}

TEST_CASE("Moving a part, and what a closing encloses, bear on the order of steps")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto rib = project.part("Rib", wing);
    const auto tail = project.part("Tail");
    const auto closing = project.closing(wing);
    const auto close = project.step(wing, "Rivet the skin");
    project.change(close, [&](Step &s) { s.closes = closing; });
    project.step(rib, "Leak test", {close});
    const auto found = [&](const Records &before, RecordRef touched) {
        return violations(project.records, project.profile, {&touched, 1}, before).size();
    };
    auto before = project.records;
    CHECK(found(before, {RecordType::Component, rib.value()}) == 0);
    CHECK(found(before, {RecordType::Closing, closing.value()}) == 0);

    auto elsewhere = *before.find(rib);
    elsewhere.parent_id = tail;
    before.put(RecordType::Component, &elsewhere);
    CHECK(found(before, {RecordType::Component, rib.value()}) == 1);

    auto other = *before.find(closing);
    other.encloses = {tail};
    before.put(RecordType::Closing, &other);
    CHECK(found(before, {RecordType::Closing, closing.value()}) == 1);
}

TEST_CASE("What lies in reach of a closing is the same asked once or of many parts")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto rib = project.part("Rib", wing);
    const auto nut = project.part("Nut", rib);
    const auto tail = project.part("Tail");
    const auto fin = project.part("Fin", tail);
    project.change(tail, [&](Component &c) { c.parent_id = fin; });
    for (const auto &encloses : {IdSet<Component>{rib}, IdSet<Component>{wing, fin}}) {
        const Closing &closing = *project.records.find(project.closing(wing, encloses));
        invariants::Reach reach{project.records, closing};
        for (const auto part :
             {nut, wing, tail, rib, fin, nut, Id<Component>{}, Id<Component>{77}}) {
            INFO(part.value());
            CHECK(reach.holds(part) == invariants::isInReach(project.records, part, closing));
        }
    }
}
