// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/profiles/ProfileLibrary.h"
#include "core/project/acts/RulesActs.h"
#include "tests/support/ProjectCopies.h"
#include "tests/support/TestProject.h"
#include "tests/support/TwoCopies.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <chrono>
#include <string>
#include <vector>

using namespace lastrivet;

namespace {

const std::string label = "Taken back";

void name(test::TestProject &project, Id<Component> part, std::string_view name)
{
    project.change("Named " + std::string(name),
                   [&](Edit &edit) { edit.update(part, [&](Component &c) { c.name = name; }); });
}

std::int64_t newestRow(test::TestProject &project)
{
    return project->journal().back().seq;
}

const Component &partOf(test::TestProject &project, Id<Component> part)
{
    return *project->records()->components.find(part);
}

std::string refusal(test::TestProject &project, std::int64_t row)
{
    const auto before = project->records();
    const auto rows = project->journal().size();
    const auto result = project->reverse(row, label);
    REQUIRE_FALSE(result);
    CHECK(project->records() == before);
    CHECK(project->journal().size() == rows);
    return english(result.reason());
}

} // namespace

TEST_CASE("An older change is taken back by one of its own, and what came later stays")
{
    test::TestProject project;
    const auto wing = project.part("Wing");
    const auto tail = project.part("Tail");
    name(project, wing, "Left wing");
    const auto row = newestRow(project);
    name(project, tail, "Tailplane");
    project.change(
        "Zone", [&](Edit &edit) { edit.update(wing, [](Component &c) { c.zone = "left-wing"; }); });
    project->notePrinted("Packet");
    const auto taken = project->reverse(row, label);
    REQUIRE(taken);
    CHECK(taken->label == label);
    CHECK(taken->touched == std::vector{RecordRef{RecordType::Component, wing.value()}});
    CHECK(partOf(project, wing).name == "Wing");
    CHECK(partOf(project, wing).zone == "left-wing");
    CHECK(partOf(project, tail).name == "Tailplane");
    CHECK(project->journal().back().kind == ChangeKind::Change);

    CHECK(project->undoLabel() == label);
    REQUIRE(project->undo());
    CHECK(partOf(project, wing).name == "Left wing");
}

TEST_CASE("What an older change made is withdrawn, and why is said")
{
    test::TestProject project;
    const auto wing = project.part("Wing");
    const auto row = newestRow(project);
    project.part("Tail");
    REQUIRE(project->reverse(row, label));
    CHECK(partOf(project, wing).name == "Wing");
    CHECK(partOf(project, wing).withdrawn_on == project->now());
    CHECK(partOf(project, wing).withdrawn_why == label);
    CHECK(refusal(project, row) == "“Part Wing” cannot be taken back: “Taken back” (row 4 of the "
                                   "journal) changed the same record later.");
}

TEST_CASE("What an older change withdrew counts again")
{
    test::TestProject project;
    const auto wing = project.part("Wing");
    project.change("Withdrawn", [&](Edit &edit) { edit.withdraw(wing, "double"); });
    const auto row = newestRow(project);
    project.part("Tail");
    REQUIRE(project->reverse(row, label));
    CHECK_FALSE(partOf(project, wing).withdrawn_on);
    CHECK(partOf(project, wing).withdrawn_why.empty());
}

TEST_CASE("Items of sets and rows of lists go and come back, each by itself")
{
    test::TestProject project;
    const auto wing = project.part("Wing");
    const auto tail = project.part("Tail");
    Squawk squawk;
    squawk.number = "1";
    squawk.title = "Dent";
    squawk.component_id = wing;
    squawk.found_on = Moment::parse("2026-01-02");
    squawk.repair_options = {{"Fill", "", "", false}, {"Patch", "", "", false}};
    project.change("Squawk", [&](Edit &edit) { squawk.id = edit.put(squawk); });
    const auto change = [&](std::string_view what, auto body) {
        project.change(what, [&](Edit &edit) { edit.update(squawk.id, body); });
        return newestRow(project);
    };
    const auto reached = change("Reached", [&](Squawk &s) { s.needs_access_to = {tail}; });
    const auto chosen = change("Chosen", [](Squawk &s) {
        s.repair_options[1].chosen = true;
        s.repair_options.push_back({"New skin", "", "", false});
    });
    change("Titled", [](Squawk &s) { s.title = "Deep dent"; });

    REQUIRE(project->reverse(reached, label));
    REQUIRE(project->reverse(chosen, label));
    const Squawk now = *project->records()->squawks.find(squawk.id);
    CHECK(now.needs_access_to.empty());
    CHECK(now.repair_options == squawk.repair_options);
    CHECK(now.title == "Deep dent");
    project.reopen();
    CHECK(*project->records()->squawks.find(squawk.id) == now);
}

TEST_CASE("Where something changed since, nothing is taken back and the later change is named")
{
    test::TestProject project;
    const auto wing = project.part("Wing");
    const auto tail = project.part("Tail");
    project.change("Both renamed", [&](Edit &edit) {
        edit.update(tail, [](Component &c) { c.name = "Tailplane"; });
        edit.update(wing, [](Component &c) { c.name = "Left wing"; });
    });
    const auto row = newestRow(project);
    name(project, wing, "Port wing");
    project.change("Tail's zone",
                   [&](Edit &edit) { edit.update(tail, [](Component &c) { c.zone = "tail"; }); });
    CHECK(refusal(project, row) == "“Both renamed” cannot be taken back: “Named Port wing” (row 5 "
                                   "of the journal) changed the same record later.");
    CHECK(partOf(project, tail).name == "Tailplane");
}

TEST_CASE("What others name since is not taken away from under them")
{
    test::TestProject project;
    const auto wing = project.part("Wing");
    const auto row = newestRow(project);
    project.change("Rib",
                   [&](Edit &edit) { edit.put(Component{.parent_id = wing, .name = "Rib"}); });
    const auto result = project->reverse(row, label);
    REQUIRE_FALSE(result);
    CHECK_FALSE(result.reason().violations.empty());
    CHECK_FALSE(partOf(project, wing).withdrawn_on);
}

TEST_CASE("The newest change is undone, and one that was undone is not taken back again")
{
    test::TestProject project;
    const auto wing = project.part("Wing");
    name(project, wing, "Left wing");
    const auto row = newestRow(project);
    REQUIRE(project->reverse(row, label));
    CHECK(project->journal().back().kind == ChangeKind::Undo);
    CHECK(project->redoLabel() == "Named Left wing");
    CHECK(refusal(project, row) == "“Named Left wing” was taken back already.");

    REQUIRE(project->redo());
    const auto again = newestRow(project);
    project.part("Tail");
    CHECK(refusal(project, again - 1) ==
          "This row undid “Named Left wing”; to have that again, make the change again.");
    REQUIRE(project->reverse(again, label));
    CHECK(partOf(project, wing).name == "Wing");
}

TEST_CASE("After a redo the change is there again, and the row that made it can be taken back")
{
    test::TestProject project;
    const auto wing = project.part("Wing");
    name(project, wing, "Left wing");
    const auto row = newestRow(project);
    REQUIRE(project->undo());
    REQUIRE(project->redo());
    project.part("Tail");
    REQUIRE(project->reverse(row, label));
    CHECK(partOf(project, wing).name == "Wing");
}

TEST_CASE("Rows that change no records of the builder's are not taken back")
{
    test::TestProject project;
    project.part("Wing");
    project->notePrinted("Packet");
    const auto rows = project->journal();
    CHECK(refusal(project, rows.front().seq) ==
          "“" + rows.front().label + "” changed nothing that could be taken back.");
    CHECK(refusal(project, rows.back().seq) ==
          "“Packet” changed nothing that could be taken back.");
    CHECK(refusal(project, 99) == "The journal has no row 99.");
    CHECK(project->reverse(rows.front().seq, label).reason().has_nothing);
    CHECK(project->reverse(rows.back().seq, label).reason().has_nothing);
    CHECK_FALSE(project->reverse(99, label).reason().has_nothing);
}

TEST_CASE("What another copy printed changed nothing here that could be taken back")
{
    test::TwoCopies two;
    two.note(two.kim(), "Skins on order");
    two.kim()->notePrinted("Packet");
    two.mergeBoth();
    const auto lines = two.robin->journalLines();
    const auto printed = std::find_if(
        lines.begin(), lines.end(), [](const JournalLine &line) { return line.label == "Packet"; });
    REQUIRE(printed != lines.end());
    CHECK(printed->kind == ChangeKind::Carried);
    const auto result = two.robin->reverse(printed->seq, label);
    REQUIRE_FALSE(result);
    CHECK(english(result.reason()) == "“Packet” changed nothing that could be taken back.");
    CHECK(two.robin->journalLines().size() == lines.size());
}

TEST_CASE("Rules that were changed long ago are as before again")
{
    test::TestProject project;
    const std::string before = project->records()->profile_copy;
    Profile rules = project->profile();
    rules.late_entry_days += 5;
    project.change("Rules", [&](Edit &edit) { acts::useRules(edit, rules); });
    const auto row = newestRow(project);
    project.part("Wing");
    REQUIRE(project->reverse(row, label));
    CHECK(project->records()->profile_copy == before);
    CHECK(project->profile().late_entry_days == rules.late_entry_days - 5);
}

TEST_CASE("An import of very many records is taken back in one go")
{
    test::TestProject project;
    const auto wing = project.part("Wing");
    project.change(
        "Imported a list",
        [&](Edit &edit) {
            for (int i = 0; i < 600; ++i)
                edit.put(Component{.parent_id = wing, .name = "Rib " + std::to_string(i)});
        },
        ChangeKind::Import);
    const auto row = newestRow(project);
    project.part("Tail");
    REQUIRE(project->reverse(row, label));
    for (const Component &part : project->records()->components)
        CHECK(part.withdrawn_on.has_value() == part.name.starts_with("Rib"));
    project.reopen();
    CHECK(project->records()->components.size() == 602);
}

TEST_CASE("A copy that is only read takes nothing back")
{
    test::TestProject project;
    project.part("Wing");
    project.part("Tail");
    const auto other = project.openAgain(true);
    CHECK_FALSE(other->reverse(2, label));
}

TEST_CASE(
    "What a merge brought can be taken back, and so it is in the other copy after the next one")
{
    test::ProjectCopy robin("Robin");
    Id<Component> wing;
    robin.change("Part", [&](Edit &edit) { wing = edit.put(Component{.name = "Wing"}); });
    test::ProjectCopy kim(robin, "Kim");
    kim.clock().advance(std::chrono::hours{1});
    kim.change("Renamed",
               [&](Edit &edit) { edit.update(wing, [](Component &part) { part.name = "Wyng"; }); });
    robin.clock().advance(std::chrono::hours{2});
    robin.merge(kim);
    const auto lines = robin->journalLines();
    const auto carried = std::ranges::find(lines, ChangeKind::Carried, &JournalLine::kind);
    REQUIRE(carried != lines.end());
    CHECK(english(robin->reverse(lines.back().seq, label).reason()) ==
          "A merge is not taken back as one; take back the changes that it brought.");
    REQUIRE(robin->reverse(carried->seq, label));
    CHECK(robin->records()->components.find(wing)->name == "Wing");
    kim.clock().advance(std::chrono::hours{3});
    kim.merge(robin);
    CHECK(kim->records()->components.find(wing)->name == "Wing");
    CHECK(kim->conflicts().empty());
}
