// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/ImportPlan.h"
#include "core/exchange/DocumentWriter.h"
#include "core/profiles/ProfileJson.h"
#include "core/profiles/ProfileLibrary.h"
#include "tests/support/ProjectBuilder.h"

#include <catch2/catch.hpp>

#include <sstream>

using namespace lastrivet;
using namespace lastrivet::exchange;
using namespace lastrivet::test;

namespace {

using Said = std::vector<std::string>;

DocumentReading readingOf(const Records &records)
{
    std::ostringstream out;
    writeDocument(records, out);
    return readDocument(out.str());
}

Said sentences(const ImportPlan &plan)
{
    Said all;
    for (const auto &error : plan.errors)
        all.push_back(english(error, "f"));
    return all;
}

} // namespace

TEST_CASE("Known records with the same content are skipped, new ones are added")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const Records before = project.records;
    const auto squawk = project.squawk(wing, "2026-01-02");
    const auto plan = planImport(readingOf(project.records), before, project.profile);
    CHECK(sentences(plan).empty());
    CHECK(plan.skipped == 2);
    CHECK(plan.added == std::vector<RecordRef>{{RecordType::Squawk, squawk.value()}});
    CHECK(plan.merged == project.records);
}

TEST_CASE("A known record with other content is an error, and so is another project")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const Records before = project.records;
    project.change(wing, [](Component &c) { c.code = "W"; });
    project.records.project.note = "Changed";
    const auto plan = planImport(readingOf(project.records), before, project.profile);
    CHECK(
        sentences(plan) ==
        Said{
            "f: /components/0: part W “Wing”: The project has this record with other content; they "
            "differ in code first.",
            "f: /project: The project on record is another one; they differ in note first."});
}

TEST_CASE("The project's own currency that nobody knows is told where it comes, not with each list")
{
    ProjectBuilder project;
    project.records.project.currency = "XYZ";
    const Records before = project.records;
    project.part("Wing");
    const auto own = planImport(readingOf(project.records), project.profile);
    CHECK(unknownCurrencies(own) == Said{"XYZ"});
    const auto parts = planImport(readingOf(project.records), before, project.profile);
    CHECK(parts.added.size() == 1);
    CHECK(unknownCurrencies(parts).empty());
    Expense rent;
    rent.id = Id<Expense>{1};
    rent.spent_on = *Moment::parse("2026-01-02");
    rent.what = "Rent";
    rent.amount = 500;
    rent.currency = "XYZ";
    project.records.expenses.put(rent);
    const auto money = planImport(readingOf(project.records), before, project.profile);
    CHECK(unknownCurrencies(money) == Said{"XYZ"});
}

TEST_CASE("A log entry gets the part of its step, else of its squawk")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto tail = project.part("Tail");
    const auto step = project.step(wing, "Drill");
    const auto squawk = project.squawk(tail, "2026-01-02");
    const auto byStep = project.session({}, "2026-01-02", 60);
    const auto bySquawk = project.session({}, "2026-01-02", 60);
    const auto alone = project.session({}, "2026-01-02", 60);
    project.change(byStep, [&](WorkSession &s) {
        s.step_id = step;
        s.squawk_id = squawk;
    });
    project.change(bySquawk, [&](WorkSession &s) { s.squawk_id = squawk; });
    const auto plan = planImport(readingOf(project.records), project.profile);
    CHECK(sentences(plan).empty());
    CHECK(plan.merged.find(byStep)->component_id == wing);
    CHECK(plan.merged.find(bySquawk)->component_id == tail);
    CHECK_FALSE(plan.merged.find(alone)->component_id);

    SECTION("taking the same document in again skips them")
    {
        const auto again = planImport(readingOf(project.records), plan.merged, project.profile);
        CHECK(sentences(again).empty());
        CHECK(again.added.empty());
    }
}

TEST_CASE("Broken invariants are errors at their record's place")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto rib = project.part("Rib", wing);
    project.change(wing, [&](Component &c) { c.parent_id = rib; });
    CHECK(sentences(planImport(readingOf(project.records), project.profile)) ==
          Said{"f: /components/0: Part 2 “Wing” lies inside part 3 “Rib”, which lies inside it in "
               "turn."});
}

TEST_CASE("What the project lacks is said once")
{
    const auto reading = readDocument(R"({"format": "lastrivet-records", "version": 1,
        "project": {"profile": "plain"}})");
    CHECK(sentences(planImport(reading, Profile{})) ==
          Said{"f: /project: The field name is missing."});
}

TEST_CASE("Of a project that is missing, or no object, nothing else is said")
{
    const std::string start = R"({"format": "lastrivet-records", "version": 1)";
    const ProjectBuilder project;
    const auto said = [&](std::string_view rest) {
        const auto reading = readDocument(start + std::string(rest));
        const Said alone = sentences(planImport(reading, Profile{}));
        CHECK(sentences(planImport(reading, project.records, project.profile)) == alone);
        return alone;
    };
    CHECK(said("}") == Said{"f: The project is missing."});
    CHECK(said(R"(, "project": []})") ==
          Said{"f: /project: This is a list, which does not belong here."});
    CHECK(said(R"(, "project": 7})") == Said{"f: /project: 7 is no object."});
}

TEST_CASE("A profile copy of another profile is told beside what else is wrong with it")
{
    const auto reading = readDocument(R"({"format": "lastrivet-records", "version": 1,
        "profile_copy": {"id": "gb", "name": 1}, "project": {"name": "A", "profile": "plain"}})");
    CHECK(reading.errors.size() > 1);
    const auto plan = planImport(reading, Profile{});
    CHECK(plan.errors.size() == reading.errors.size() + 1);
    CHECK(sentences(plan).back() ==
          "f: /profile_copy/id: The profile copy is of gb, but the project goes by plain.");
}

TEST_CASE("Errors of form and of content come together, none twice")
{
    const auto reading = readDocument(R"({"format": "lastrivet-records", "version": 1,
        "project": {"name": "A", "profile": "plain"},
        "components": [{"id": 1, "name": "Wing", "colour": 1, "parent_id": 5}],
        "squawks": [{"id": 2, "number": "1", "title": "T", "found_on": "2026-01-02", "component_id": 7}]})");
    CHECK(
        sentences(planImport(reading, Profile{})) ==
        Said{"f: /components/0/colour: part 1 “Wing”: There is no field of this name.",
             "f: /squawks/0: Squawk 1 “T” names part 7 in component_id, which is not on record."});
}

TEST_CASE("A document of other rules than the project's own is refused")
{
    ProjectBuilder project;
    project.profile = ProfileLibrary::standard().profile("plain");
    project.records.project.profile = "plain";
    project.records.profile_copy = profileJson(project.profile);
    const Records before = project.records;
    CHECK(planImport(readingOf(project.records), before, project.profile).errors.empty());
    auto other = project.profile;
    other.interior_photos += 1;
    project.records.profile_copy = profileJson(other);
    const auto plan = planImport(readingOf(project.records), before, project.profile);
    CHECK(sentences(plan) == Said{"f: /profile_copy: The project goes by another rule profile."});
}

TEST_CASE("Only what happened more than a year ahead is told, also in the lists of a record")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto squawk = project.squawk(wing, "2027-03-15");
    const auto box = project.closing(wing);
    const auto step = project.step(wing, "Prime");
    project.change(step, [](Step &s) { s.planned_on = on("2035-01-01"); });
    const auto told = [&] {
        const auto plan = planImport(readingOf(project.records), project.profile);
        return farAhead(plan, on("2026-03-14")).size();
    };
    // 366 days after 2026-03-14.
    CHECK(told() == 0);
    project.change(squawk, [](Squawk &s) { s.found_on = on("2027-03-16"); });
    CHECK(told() == 1);
    project.change(box, [](Closing &c) {
        c.events = {{on("2027-03-16"), {}, {}, "Skin on", false}};
    });
    CHECK(told() == 2);
}
