// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/TestProject.h"

#include <catch2/catch.hpp>

using namespace lastrivet;

namespace {

std::vector<std::string> titles(Project &project, std::string_view text)
{
    std::vector<std::string> found;
    for (const auto &hit : project.search(text))
        found.push_back(hit.title);
    return found;
}

using Titles = std::vector<std::string>;

} // namespace

TEST_CASE("Search finds all words, the last one as a beginning, newest first")
{
    test::TestProject project;
    project.part("Left wing spar");
    project.part("Right wing spar");
    project.part("Wing tip");
    CHECK(titles(*project, "wing") == Titles{"Wing tip", "Right wing spar", "Left wing spar"});
    CHECK(titles(*project, "wing sp") == Titles{"Right wing spar", "Left wing spar"});
    CHECK(titles(*project, "spar LEFT") == Titles{"Left wing spar"});
    CHECK(titles(*project, "win spar").empty());
    CHECK(titles(*project, "").empty());
    CHECK(titles(*project, "  \n ").empty());
    CHECK(project->search("wing", 1).size() == 1);
}

TEST_CASE("What is built is found by its title before notes that only mention it")
{
    test::TestProject project;
    const auto tip = project.part("Tip of the wing");
    const auto wing = project.part("Wing");
    project.change("Work", [&](Edit &edit) {
        Step step;
        step.component_id = tip;
        step.title = "Fit the wing";
        edit.put(step);
        Squawk squawk;
        squawk.component_id = wing;
        squawk.number = "1";
        squawk.title = "Scratch";
        squawk.detail = "On the wing";
        squawk.found_on = edit.today();
        edit.put(squawk);
        Squawk named;
        named.component_id = wing;
        named.number = "2";
        named.title = "Wing walk is loose";
        named.found_on = edit.today();
        edit.put(named);
        WorkSession work;
        work.began = edit.today();
        work.minutes = Minutes{60};
        work.note = "Wing, mostly";
        edit.put(work);
    });
    const Titles expected{"Wing",         "Tip of the wing", "Wing walk is loose",
                          "Fit the wing", "Wing, mostly",    "Scratch"};
    CHECK(titles(*project, "wing") == expected);
    for (std::size_t limit = 0; limit <= expected.size(); ++limit)
        CHECK(project->search("wing", limit).size() == limit);
}

TEST_CASE("A part is found by its name before any number of newer steps of the same words")
{
    test::TestProject project;
    const auto gauge = project.part("Rivet gauge");
    project.change("Steps", [&](Edit &edit) {
        for (int i = 0; i < 2'500; ++i) {
            Step step;
            step.component_id = gauge;
            step.title = "Rivet the rib";
            edit.put(step);
        }
    });
    CHECK(project->search("rivet", 2).front().title == "Rivet gauge");
    CHECK(project->search("rivet", 2).back().title == "Rivet the rib");
}

TEST_CASE("What is called by the words as they are typed comes before what begins with them")
{
    test::TestProject project;
    for (const auto *name : {"Rib 1", "Rib 10", "Rib 11", "Rib 12", "Rib 1 doubler"})
        project.part(name);
    CHECK(titles(*project, "rib 1 ") ==
          Titles{"Rib 1", "Rib 1 doubler", "Rib 12", "Rib 11", "Rib 10"});
    REQUIRE(project->search("Rib 1", 1).size() == 1);
    CHECK(project->search("Rib 1", 1).front().title == "Rib 1");
}

TEST_CASE("One word may stand in the title and another in the note, and a long title is all found")
{
    test::TestProject project;
    const std::string name = std::string(90, 'x') + " longeron";
    project.change("Parts", [&](Edit &edit) {
        Component part;
        part.name = "Firewall";
        part.note = "Stainless, from the second sheet";
        edit.put(part);
        part.name = name;
        part.note.clear();
        edit.put(part);
    });
    CHECK(titles(*project, "sheet firewall") == Titles{"Firewall"});
    CHECK(project->search("longeron").size() == 1);
}

TEST_CASE("Search takes every character as it is, never as an operator")
{
    test::TestProject project;
    project.part("Bolt AN-3 (short)");
    project.part("Élan rib");
    for (const auto *text : {"AN-3", "\"AN-3", "(short)", "AN-3 (sh", "bolt:AN"})
        CHECK(titles(*project, text) == Titles{"Bolt AN-3 (short)"});
    CHECK(titles(*project, "elan") == Titles{"Élan rib"});
    for (const auto *text : {"AND", "bolt AND", "NEAR(bolt", "bolt OR rib", "*", "\"", "title:",
                             "-bolt", "^", "{", "bolt NOT rib", "'; DROP TABLE search; --"})
        CHECK_NOTHROW(project->search(text));
    CHECK(titles(*project, "bolt OR rib").empty());
    CHECK(titles(*project, "title:rib").empty());
}

TEST_CASE("Search follows changes, undo, and what stands in lists")
{
    test::TestProject project;
    const auto wing = project.part("Wing");
    project.change("Closing", [&](Edit &edit) {
        Closing closing;
        closing.component_id = wing;
        closing.title = "Bottom skin";
        closing.encloses = {wing};
        closing.events = {{Moment::parse("2026-03-01"), {}, {}, "before the frost", false}};
        edit.put(closing);
    });
    REQUIRE(titles(*project, "frost") == Titles{"Bottom skin"});
    const auto hit = project->search("frost").front();
    CHECK(hit.record.type == RecordType::Closing);
    CHECK_THAT(hit.snippet, Catch::Contains("before the frost"));
    REQUIRE(project->undo());
    CHECK(titles(*project, "frost").empty());
    project.change("Rename",
                   [&](Edit &edit) { edit.update(wing, [](Component &c) { c.name = "Tail"; }); });
    CHECK(titles(*project, "wing").empty());
    CHECK(titles(*project, "tail") == Titles{"Tail"});
    project.reopen();
    CHECK(titles(*project, "tail") == Titles{"Tail"});
}

TEST_CASE("What the code on a label says finds its record, and no other")
{
    test::TestProject project;
    project.part("Left wing");
    const auto rib = project.part("Rib 3");
    const auto pointer = "lastrivet:component:" + std::to_string(rib.value());
    CHECK(titles(*project, pointer) == Titles{"Rib 3"});
    CHECK(titles(*project, " " + pointer + "\r\n") == Titles{"Rib 3"});
    CHECK(titles(*project, "lastrivet:component:4711").empty());
}
