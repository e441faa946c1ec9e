// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Error.h"
#include "tests/support/TestProject.h"

#include <catch2/catch.hpp>

#include <string>

using namespace lastrivet;

namespace {

void rename(Project &project, Id<Component> part, std::string_view name,
            ChangeKind kind = ChangeKind::Change)
{
    const auto result = project.change(
        "Renamed to " + std::string(name),
        [&](Edit &edit) { edit.update(part, [&](Component &c) { c.name = name; }); }, kind);
    REQUIRE(result);
}

std::string nameOf(Project &project, Id<Component> part)
{
    return project.records()->components.find(part)->name;
}

} // namespace

TEST_CASE("Undo and redo walk back and forth, also after opening again")
{
    test::TestProject project;
    const auto wing = project.part("Wing");
    rename(*project, wing, "Left wing");
    CHECK(project->undoLabel() == "Renamed to Left wing");
    REQUIRE(project->undo());
    CHECK(nameOf(*project, wing) == "Wing");
    project.reopen();
    CHECK(project->undoLabel() == "Part Wing");
    CHECK(project->redoLabel() == "Renamed to Left wing");
    REQUIRE(project->undo());
    CHECK(project->records()->components.isEmpty());
    CHECK_FALSE(project->undoLabel());
    CHECK(english(project->undo().reason()) == "There is nothing to undo.");
    REQUIRE(project->redo());
    project.reopen();
    REQUIRE(project->redo());
    CHECK(nameOf(*project, wing) == "Left wing");
    CHECK(english(project->redo().reason()) == "There is nothing to redo.");
    REQUIRE(project->undo());
    CHECK(nameOf(*project, wing) == "Wing");
}

TEST_CASE("Changes of one act are undone and done again together, others by themselves")
{
    test::TestProject project;
    const auto wing = project.part("Wing");
    rename(*project, wing, "First");
    project->goOnWith(project->undoRow(), "Renamed twice");
    rename(*project, wing, "Second");
    CHECK(project->undoLabel() == "Renamed twice");
    CHECK(project->undoSize() == 1);
    const auto undone = project->undo();
    REQUIRE(undone);
    CHECK(undone->touched.size() == 1);
    CHECK(undone->before->components.find(wing)->name == "Second");
    CHECK(nameOf(*project, wing) == "Wing");
    CHECK(project->undoLabel() == "Part Wing");
    CHECK(project->redoLabel() == "Renamed twice");
    REQUIRE(project->redo());
    CHECK(nameOf(*project, wing) == "Second");
    CHECK_FALSE(project->redoLabel());
    REQUIRE(project->undo());
    CHECK(nameOf(*project, wing) == "Wing");

    rename(*project, wing, "Third");
    const auto third = project->undoRow();
    rename(*project, wing, "In between");
    project->goOnWith(third, "Not one act");
    rename(*project, wing, "Fourth");
    CHECK(project->undoLabel() == "Renamed to Fourth");
    REQUIRE(project->undo());
    CHECK(nameOf(*project, wing) == "In between");
}

TEST_CASE("Undo and redo rows name what they take back")
{
    test::TestProject project;
    project.part("Wing");
    REQUIRE(project->undo());
    REQUIRE(project->redo());
    REQUIRE(project->undo());
    const auto rows = project->journal();
    REQUIRE(rows.size() == 5);
    CHECK(rows[1].undoes.empty());
    CHECK(rows[2].undoes == rows[1].change_id);
    CHECK(rows[3].undoes == rows[2].change_id);
    CHECK(rows[4].undoes == rows[1].change_id);
}

TEST_CASE("The next change forgets what could be redone")
{
    test::TestProject project;
    project.part("Wing");
    REQUIRE(project->undo());
    project.part("Tail");
    CHECK_FALSE(project->redoLabel());
    CHECK_FALSE(project->redo());
}

TEST_CASE("Undo passes over automatic changes and stops at a printed document")
{
    test::TestProject project;
    project.part("Wing");
    const auto hash = project->notePrinted("Packet for the left wing");
    CHECK(hash == project->journalHash());
    CHECK_FALSE(project->undoLabel());
    REQUIRE(project->undoObstacle());
    CHECK_THAT(english(*project->undoObstacle()),
               Catch::StartsWith("“Packet for the left wing” was printed since"));
    const auto tail = project.part("Tail");
    CHECK_FALSE(project->undoObstacle());
    CHECK(project->undoSize() == 1);
    const auto robin = project.person("Robin", ChangeKind::Automatic);
    CHECK(project->undoLabel() == "Part Tail");
    REQUIRE(project->undo());
    CHECK_FALSE(project->records()->components.find(tail));
    CHECK(project->records()->people.find(robin));
    const auto refused = project->undo();
    REQUIRE_FALSE(refused);
    CHECK_THAT(english(refused.reason()), Catch::Contains("was printed since"));
    CHECK(project->undoSize() == 0);
    CHECK(project->records()->components.size() == 1);
}

TEST_CASE("A document is in the journal when it was made, and is not when making it failed")
{
    test::TestProject project;
    project.part("Wing");
    const auto before = project->journalHash();
    std::string given;
    CHECK_THROWS_WITH(project->notePrinted("Packet",
                                           [&](const std::string &hash) {
                                               given = hash;
                                               throw NotSaved("The disk is full.");
                                           }),
                      "The disk is full.");
    CHECK(given != before);
    CHECK(project->journalHash() == before);
    CHECK(project->undoLabel() == "Part Wing");
    const auto hash = project->notePrinted("Packet", [&](const std::string &row) { given = row; });
    CHECK(given == hash);
    CHECK(project->journalHash() == hash);
    CHECK(project->journalLines().back().kind == ChangeKind::Printed);
    project.part("Tail");
    CHECK(project->undoLabel() == "Part Tail");
}

TEST_CASE("Undo that would overwrite a later change names that change and does nothing")
{
    test::TestProject project;
    const auto wing = project.part("Wing");
    rename(*project, wing, "Left wing");
    rename(*project, wing, "Port wing", ChangeKind::Automatic);
    const auto before = project->records();
    const auto rows = project->journal().size();
    const auto refused = project->undo();
    REQUIRE_FALSE(refused);
    CHECK_THAT(english(refused.reason()),
               Catch::Contains("Renamed to Left wing") && Catch::Contains("Renamed to Port wing"));
    CHECK(project->records() == before);
    CHECK(project->journal().size() == rows);
}

TEST_CASE("Undo that would leave a reference without its record is refused by the records' rules")
{
    test::TestProject project;
    const auto wing = project.part("Wing");
    project.change(
        "Watched folder",
        [&](Edit &edit) {
            Step step;
            step.component_id = wing;
            step.title = "Drill";
            edit.put(step);
        },
        ChangeKind::Automatic);
    const auto before = project->records();
    const auto refused = project->undo();
    REQUIRE_FALSE(refused);
    CHECK_FALSE(refused.reason().violations.empty());
    CHECK(project->records() == before);
    project.reopen();
    CHECK(*project->records() == *before);
}

TEST_CASE("What an automatic change has hung on a record holds its creation in place")
{
    test::TestProject project;
    const auto wing = project.part("Wing");
    Closing lid;
    lid.title = "Lid";
    lid.component_id = wing;
    lid.encloses = {wing};
    project.change("Lid", [&](Edit &edit) { lid.id = edit.put(lid); });
    Bulletin bulletin;
    bulletin.number = "7";
    bulletin.title = "Check the hinge";
    bulletin.received_on = Moment::parse("2026-01-02");
    project.change("Bulletin", [&](Edit &edit) { bulletin.id = edit.put(bulletin); });
    project.change(
        "Seen elsewhere",
        [&](Edit &edit) {
            edit.update(bulletin.id, [&](Bulletin &b) { b.not_inside = {lid.id}; });
        },
        ChangeKind::Automatic);
    const auto undone = project->undo();
    REQUIRE_FALSE(undone);
    CHECK(english(undone.reason()) == "“Bulletin” cannot be taken back: “Seen elsewhere” (row 5 of "
                                      "the journal) changed the same record later.");
    CHECK(project->records()->find(bulletin.id));
    project.reopen();
    CHECK(project->records()->find(bulletin.id));
}

TEST_CASE("So it does when the change was one of very many records")
{
    test::TestProject project;
    const auto wing = project.part("Wing");
    Closing lid;
    lid.title = "Lid";
    lid.component_id = wing;
    lid.encloses = {wing};
    project.change("Lid", [&](Edit &edit) { lid.id = edit.put(lid); });
    Id<Bulletin> last;
    project.change("All bulletins", [&](Edit &edit) {
        for (int i = 1; i <= 501; ++i) {
            Bulletin bulletin;
            bulletin.number = std::to_string(i);
            bulletin.title = "Check the hinge";
            bulletin.received_on = Moment::parse("2026-01-02");
            last = edit.put(bulletin);
        }
    });
    project.change(
        "Seen elsewhere",
        [&](Edit &edit) { edit.update(last, [&](Bulletin &b) { b.not_inside = {lid.id}; }); },
        ChangeKind::Automatic);
    const auto before = project->records();
    const auto undone = project->undo();
    REQUIRE_FALSE(undone);
    CHECK(english(undone.reason()) == "“All bulletins” cannot be taken back: “Seen elsewhere” (row "
                                      "5 of the journal) changed the same record later.");
    CHECK(project->records() == before);
    project.reopen();
    CHECK(*project->records() == *before);
}
