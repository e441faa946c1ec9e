// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/Violations.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

namespace {

using Said = std::vector<std::string>;

/// How much is found wrong when only this record was touched, and was what `alter` makes of it.
template <class Record, class Alter>
std::size_t foundSince(const ProjectBuilder &project, Id<Record> touched, const Alter &alter)
{
    ProjectBuilder was = project;
    was.change(touched, alter);
    const RecordRef ref{Record::type, touched.value()};
    return violations(project.records, project.profile, {&ref, 1}, was.records).size();
}

} // namespace

TEST_CASE("A region encloses at least one part: its own, one below or beside, none above")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto rib = project.part("Rib", wing);
    const auto tail = project.part("Tail");
    const auto closing = project.closing(rib, {rib, tail});
    CHECK(wrongs(project).empty());
    project.change(closing, [&](Closing &c) { c.encloses = {wing}; });
    const Said above{
        "Closing 5 “Skin on Rib” belongs to part 3 “Rib” and cannot enclose part 2 “Wing”, "
        "which is above it."};
    CHECK(wrongs(project) == above);
    CHECK(wrongs(project, rib) == above);
    project.change(closing, [&](Closing &c) { c.encloses.clear(); });
    CHECK(wrongs(project) ==
          Said{"Closing 5 “Skin on Rib” encloses nothing; a region encloses at least one part."});
}

TEST_CASE("One live closing is of the whole aircraft, and encloses nothing by name")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto first = project.add(
        Closing{.component_id = wing, .title = "Finished", .scope = ClosingScope::Aircraft});
    CHECK(wrongs(project).empty());
    const auto second = project.add(
        Closing{.component_id = wing, .title = "Done", .scope = ClosingScope::Aircraft});
    CHECK(wrongs(project) == Said{"Closing 4 “Done” is a second closing of the whole aircraft; the "
                                  "first is closing 3 “Finished”."});
    project.withdraw(second);
    CHECK(wrongs(project).empty());
    project.change(first, [&](Closing &c) { c.encloses = {wing}; });
    CHECK(wrongs(project) ==
          Said{"Closing 3 “Finished” is of the whole aircraft and encloses no part by name."});
}

TEST_CASE("Boxes lie inside each other without a cycle")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto tank = project.part("Tank", wing);
    const auto tail = project.part("Tail");
    const auto outer = project.closing(wing);
    const auto inner = project.closing(tank);
    CHECK(wrongs(project).empty());
    project.change(inner, [&](Closing &c) { c.encloses = {tail, tank}; });
    project.change(outer, [&](Closing &c) { c.component_id = tail; });
    const Said mutual{
        "Closing 5 “Skin on Wing” lies inside closing 6 “Skin on Tank”, which lies inside "
        "it in turn."};
    CHECK(wrongs(project) == mutual);
    CHECK(wrongs(project, tank) == mutual);

    SECTION("a box that can be opened without force lies inside nothing")
    {
        project.change(inner, [](Closing &c) { c.permanent = false; });
        CHECK(wrongs(project).empty());
    }
    SECTION("boxes of the same part do not lie inside each other")
    {
        project.change(inner, [&](Closing &c) { c.component_id = tail; });
        CHECK(wrongs(project).empty());
    }
    SECTION("withdrawn boxes do not count")
    {
        project.withdraw(outer);
        CHECK(wrongs(project).empty());
    }
}

TEST_CASE("Three boxes can lie inside each other in a ring")
{
    ProjectBuilder project;
    const auto a = project.part("A");
    const auto b = project.part("B");
    const auto c = project.part("C");
    project.closing(a, {b});
    project.closing(b, {c});
    CHECK(wrongs(project).empty());
    project.closing(c, {a});
    // Each lies in the next, and the first in the last: one cycle, told once.
    CHECK(wrongs(project) == Said{"Closing 5 “Skin on A” lies inside closing 7 “Skin on C”, which "
                                  "lies inside it in turn."});
}

TEST_CASE("Among many changes what closings enclose is looked at for those that bear on it")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto rib = project.part("Rib", wing);
    const auto tail = project.part("Tail");
    const auto skin = project.closing(rib, {wing});
    CHECK(foundSince(project, skin, [](Closing &c) { c.title = "Lower skin"; }) == 0);
    CHECK(foundSince(project, rib, [](Component &c) { c.name = "Nose rib"; }) == 0);
    CHECK(wrongs(project, skin).size() == 1);

    CHECK(foundSince(project, skin, [&](Closing &c) { c.component_id = tail; }) == 1);
    CHECK(foundSince(project, skin, [](Closing &c) { c.scope = ClosingScope::Aircraft; }) == 1);
    CHECK(foundSince(project, skin, [&](Closing &c) { c.encloses = {rib}; }) == 1);
    CHECK(foundSince(project, skin, [](Closing &c) { c.permanent = false; }) == 1);
    CHECK(foundSince(project, skin, [](Closing &c) { c.withdrawn_on = on("2026-05-01"); }) == 1);
    CHECK(foundSince(project, rib, [&](Component &c) { c.parent_id = tail; }) == 1);
    Records without = project.records;
    without.closings.erase(skin.value());
    const RecordRef touched{RecordType::Closing, skin.value()};
    CHECK(violations(project.records, project.profile, {&touched, 1}, without).size() == 1);
}
