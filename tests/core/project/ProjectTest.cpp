// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Tongue.h"
#include "core/verify/Verification.h"
#include "tests/support/TestProject.h"

#include <catch2/catch.hpp>

#include <map>
#include <stdexcept>

using namespace lastrivet;
using namespace std::chrono_literals;

TEST_CASE("A change is one journal row, told to subscribers, and there after opening again")
{
    test::TestProject project;
    std::vector<ChangeNotice> notices;
    const int subscription =
        project->subscribe([&](const ChangeNotice &notice) { notices.push_back(notice); });
    const auto before = project->records();
    const auto wing = project.part("Wing");
    REQUIRE(notices.size() == 1);
    CHECK(notices[0].label == "Part Wing");
    CHECK(notices[0].before == before);
    CHECK(notices[0].after == project->records());
    CHECK(notices[0].touched == std::vector<RecordRef>{{RecordType::Component, wing.value()}});
    CHECK_FALSE(before->components.find(wing));
    const auto journal = project->journal();
    REQUIRE(journal.size() == 2);
    CHECK(journal[1].kind == ChangeKind::Change);
    CHECK(journal[1].label == "Part Wing");
    CHECK(journal[1].who == "Robin");
    CHECK(journal[1].previous_hash == journal[0].hash);
    CHECK(project->journalHash() == journal[1].hash);
    project->unsubscribe(subscription);
    project.part("Tail");
    CHECK(notices.size() == 1);
    const auto after = project->records();
    project.reopen();
    CHECK(*project->records() == *after);
}

TEST_CASE("Who was unsubscribed by another while a change is told does not hear of it")
{
    test::TestProject project;
    int second = 0;
    int told = 0;
    project->subscribe([&](const ChangeNotice &) { project->unsubscribe(second); });
    second = project->subscribe([&](const ChangeNotice &) { ++told; });
    project.part("Wing");
    CHECK(told == 0);
}

TEST_CASE("The journal is in UTF-8, whatever a label or a name was made of")
{
    test::TestProject project;
    project.change("Imported d\xff.json", [](Edit &edit) {
        Component part;
        part.name = "Wing";
        edit.put(part);
    });
    CHECK(project->journal().back().label == "Imported d\uFFFD.json");
    project.close();
    auto options = project.options();
    options.who = "Ren\xe9";
    const auto again = Project::open(project.folder(), options);
    REQUIRE(again->undo());
    CHECK(again->journal().back().who == "Ren\uFFFD");
    CHECK(verify(project.folder()).findings.empty());
}

TEST_CASE("A refused change says why and leaves everything as it was")
{
    test::TestProject project;
    const auto before = project->records();
    const auto result = project->change("Log", [](Edit &edit) {
        WorkSession session;
        session.began = edit.now();
        session.component_id = Id<Component>{404};
        edit.put(session);
    });
    REQUIRE_FALSE(result);
    REQUIRE(result.reason().violations.size() == 1);
    CHECK_FALSE(english(result.reason()).empty());
    CHECK(project->records() == before);
    CHECK(project->journal().size() == 1);
}

TEST_CASE("A required field without a value is a refusal, not a fault")
{
    test::TestProject project;
    CHECK_FALSE(project->change("Part", [](Edit &edit) { edit.put(Component{}); }));
    CHECK_FALSE(project->change("Log", [](Edit &edit) { edit.put(WorkSession{}); }));
}

TEST_CASE("An exception in a change passes through and changes nothing")
{
    test::TestProject project;
    const auto before = project->records();
    CHECK_THROWS_AS(project->change("Part",
                                    [](Edit &edit) {
                                        Component part;
                                        part.name = "Wing";
                                        edit.put(part);
                                        throw std::range_error("no");
                                    }),
                    std::range_error);
    CHECK(project->records() == before);
    project.reopen();
    CHECK(*project->records() == *before);
}

TEST_CASE("A change that nets to nothing writes no row and tells nobody")
{
    test::TestProject project;
    const auto wing = project.part("Wing");
    const auto rows = project->journal().size();
    bool told = false;
    project->subscribe([&](const ChangeNotice &) { told = true; });
    const auto notice = project.change("Nothing", [&](Edit &edit) {
        edit.update(wing, [](Component &c) { c.name = "Left wing"; });
        edit.update(wing, [](Component &c) { c.name = "Wing"; });
    });
    CHECK(notice.touched.empty());
    CHECK(project->journal().size() == rows);
    CHECK_FALSE(told);
}

TEST_CASE("The order of the journal survives a clock that is set back")
{
    test::TestProject project;
    project.part("Wing");
    project.clock().advance(-48h);
    project.part("Tail");
    project.clock().advance(72h);
    project.part("Fin");
    const auto rows = project->journal();
    CHECK(rows[2].stamp == rows[1].stamp + 1);
    CHECK(rows[3].stamp == project.clock().now().time_since_epoch().count());
}

TEST_CASE("Ids rise with time, one after another, and find room when an import took the largest")
{
    test::TestProject project;
    const auto first = project.part("One");
    const auto elapsed = std::chrono::floor<std::chrono::seconds>(project.clock().now()) -
                         std::chrono::sys_days{std::chrono::year{2025} / 1 / 1};
    CHECK(first.value() / 100'000 == elapsed.count());
    const auto second = project.part("Two");
    CHECK(second > first);
    project.clock().advance(1h);
    CHECK(project.part("Three").value() / 100'000 == elapsed.count() + 3600);
    Component huge;
    huge.id = Id<Component>{largestId};
    huge.name = "Largest";
    project.change(
        "Import", [&](Edit &edit) { edit.put(huge); }, ChangeKind::Import);
    const auto later = project.part("Four");
    CHECK(later.value() > 0);
    CHECK(later.value() < largestId);
}

TEST_CASE("Numbers go on from the greatest ever given")
{
    test::TestProject project;
    CHECK(nextNumber<Squawk>(*project->records()) == "1");
    for (const auto *number : {"7", "12b", "3"}) {
        project.change("Squawk", [&](Edit &edit) {
            Squawk squawk;
            squawk.number = number;
            squawk.title = "Dent";
            squawk.found_on = edit.today();
            const auto id = edit.put(squawk);
            edit.withdraw(id, "a shadow");
        });
    }
    CHECK(nextNumber<Squawk>(*project->records()) == "13");
    CHECK(nextNumber<Deviation>(*project->records()) == "1");
}

TEST_CASE("The project's builder signs changes when nobody is named")
{
    test::TestProject project;
    const auto sam = project.person("Sam");
    project.change("Builder", [&](Edit &edit) {
        auto facts = edit.records().project;
        facts.builder_id = sam;
        edit.put(facts);
    });
    project.close();
    auto opened = Project::open(project.folder(), {&project.clock(), {}, false});
    REQUIRE(opened->undo());
    REQUIRE(opened->redo());
    CHECK(opened->journal().back().who == "Sam");
}

TEST_CASE("Local state is kept with the project, but in no journal")
{
    test::TestProject project;
    CHECK_FALSE(project->localState("timer"));
    project->setLocalState("timer", "2026-03-14T09:00");
    project.reopen();
    CHECK(project->localState("timer") == "2026-03-14T09:00");
    project->setLocalState("timer", std::nullopt);
    CHECK_FALSE(project->localState("timer"));
    CHECK(project->journal().size() == 1);
}

TEST_CASE("A journal row tells rows of a list in the order of their position")
{
    test::TestProject project;
    const auto wing = project.part("Wing");
    Id<Squawk> squawk;
    project.change("Squawk", [&](Edit &edit) {
        Squawk made;
        made.number = "1";
        made.title = "Dent";
        made.component_id = wing;
        made.found_on = Moment::parse("2026-03-01");
        for (int i = 0; i < 12; ++i)
            made.repair_options.push_back({.title = "Option " + std::to_string(i)});
        squawk = edit.put(made);
    });
    project.change("No options", [&](Edit &edit) {
        edit.update(squawk, [](Squawk &s) { s.repair_options.clear(); });
    });
    const auto itemsOf = [&](std::int64_t seq) {
        const auto changes = project->changesOf(seq);
        for (const auto &field : changes.front().fields) {
            if (field.name == "repair_options")
                return field.added.empty() ? field.removed : field.added;
        }
        return std::vector<std::string>{};
    };
    for (const std::int64_t seq : {3, 4}) {
        const auto items = itemsOf(seq);
        REQUIRE(items.size() == 12);
        for (std::size_t i = 0; i < items.size(); ++i)
            CHECK(items[i].find("\"Option " + std::to_string(i) + "\"") != std::string::npos);
    }
}

TEST_CASE("A journal row tells record by record and field by field what changed")
{
    test::TestProject project;
    const auto wing = project.part("Wing");
    const auto tail = project.part("Tail");
    Id<Squawk> squawk;
    project.change("Squawk", [&](Edit &edit) {
        Squawk made;
        made.number = "1";
        made.title = "Dent";
        made.component_id = wing;
        made.found_on = Moment::parse("2026-03-01");
        made.needs_access_to = {wing};
        squawk = edit.put(made);
    });
    project.change("Squawk again", [&](Edit &edit) {
        edit.update(squawk, [&](Squawk &s) {
            s.title = "Dent \"as big\"";
            s.needs_access_to = {tail};
            s.approximate = true;
        });
    });
    const auto made = project->changesOf(4);
    REQUIRE(made.size() == 1);
    CHECK(made[0].kind == RowChange::Insert);
    const auto changes = project->changesOf(5);
    REQUIRE(changes.size() == 1);
    CHECK(changes[0].record == RecordRef{RecordType::Squawk, squawk.value()});
    CHECK(changes[0].kind == RowChange::Update);
    std::map<std::string, FieldChange> fields;
    for (const auto &field : changes[0].fields)
        fields[field.name] = field;
    REQUIRE(fields.size() == 3);
    CHECK(fields["title"].from == R"("Dent")");
    CHECK(fields["title"].to == R"("Dent \"as big\"")");
    CHECK(fields["approximate"].from == "false");
    CHECK(fields["approximate"].to == "true");
    CHECK(fields["needs_access_to"].removed == std::vector{std::to_string(wing.value())});
    CHECK(fields["needs_access_to"].added == std::vector{std::to_string(tail.value())});
}

TEST_CASE("Why a change was not made is a sentence for each reason, in whichever language")
{
    const RecordRef step{RecordType::Step, 1};
    const Refusal refusal{{{step, {"{0} lacks {1}.", {"Step 1", nested({"title", {}})}}},
                           {step, {"{0} lacks {1}.", {"Step 2", nested({"title", {}})}}}},
                          {}};
    CHECK(english(messageOf(refusal)) == english(refusal));
    CHECK(english(refusal) == "Step 1 lacks title. Step 2 lacks title.");
    const Tongue german{[](std::string_view pattern) -> std::string {
                            return pattern == "{0} lacks {1}." ? "{0}: {1} fehlt."
                                   : pattern == "title"        ? "Titel"
                                                               : std::string(pattern);
                        },
                        {}};
    CHECK(said(messageOf(refusal), german) == "Step 1: Titel fehlt. Step 2: Titel fehlt.");
    CHECK(english(messageOf(Refusal{{}, {"Nothing to undo.", {}}})) == "Nothing to undo.");
}
