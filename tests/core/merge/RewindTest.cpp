// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/merge/Rewind.h"
#include "core/base/Error.h"
#include "core/merge/CopyRead.h"
#include "tests/support/TwoCopies.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <chrono>

using namespace lastrivet;
using test::ProjectCopy;
using test::TwoCopies;

namespace {

/// The records of a copy with what `alter` does to them, and its newest row taken back.
template <class Alter> std::set<RecordRef> rewound(ProjectCopy &copy, const Alter &alter)
{
    const merge::CopyRead read(copy.folder());
    auto state = read.state();
    alter(state.records);
    return merge::rewind(state, std::span(read.history()).last(1));
}

} // namespace

TEST_CASE("Records that are not as the journal left them are not taken back")
{
    TwoCopies two;
    const auto fits = [](Records &) {};
    const auto named = [&](Records &records) {
        Component wing = *records.find(two.wing);
        wing.name = "Altered by hand";
        records.put(RecordType::Component, &wing);
    };
    two.rename(two.robin, "Port wing");
    CHECK(rewound(two.robin, fits) ==
          std::set<RecordRef>{{RecordType::Component, two.wing.value()}});
    CHECK_THROWS_WITH(rewound(two.robin, named), Catch::Contains("does not fit the records"));
    const auto rib = two.part(two.robin, "Rib");
    CHECK(rewound(two.robin, fits).size() == 1);
    CHECK_THROWS_WITH(
        rewound(two.robin,
                [&](Records &records) { records.table(RecordType::Component).erase(rib.value()); }),
        Catch::Contains("does not fit the records"));
}

TEST_CASE("A row that was carried from copy to copy keeps the hash that it was made with")
{
    TwoCopies two;
    two.rename(two.kim(), "Left wing");
    const auto made = two.kim()->journal().back();
    ProjectCopy alex(two.robin, "Alex");
    two.robin.merge(two.kim());
    alex.merge(two.robin);
    const auto journal = alex->journal();
    const auto carried = std::find_if(journal.begin(), journal.end(), [&](const auto &entry) {
        return entry.change_id == made.change_id;
    });
    REQUIRE(carried != journal.end());
    CHECK(carried->kind == ChangeKind::Carried);
    CHECK(carried->origin_hash == made.hash);
}

TEST_CASE("A merge is of later than all that was there, also when the clock was set back")
{
    TwoCopies two;
    two.rename(two.kim(), "Left wing");
    two.robin.clock().set(two.robin.clock().now() + std::chrono::days(2));
    two.note(two.robin, "Primed");
    const auto last = two.robin->journal().back().stamp;
    two.robin.clock().set(two.robin.clock().now() - std::chrono::days(1));
    two.robin.merge(two.kim());
    CHECK(two.robin->journal().back().kind == ChangeKind::Merge);
    CHECK(two.robin->journal().back().stamp > last);
}

TEST_CASE("Two copies that merged the same third one keep what it brought when they merge")
{
    TwoCopies two;
    two.rename(two.kim(), "Left wing");
    ProjectCopy alex(two.robin, "Alex");
    two.robin.merge(two.kim());
    alex.merge(two.kim());
    two.note(two.robin, "Primed");
    const auto rib = two.part(alex, "Rib");
    two.robin.merge(alex);
    CHECK(two.wingOf(two.robin).name == "Left wing");
    CHECK(two.wingOf(two.robin).note == "Primed");
    CHECK(two.robin->records()->find(rib));
    CHECK(two.robin->conflicts().empty());
}

TEST_CASE("The later of two changes stands after any number of merges, and the other is told once")
{
    TwoCopies two;
    two.rename(two.kim(), "Left wing");
    two.rename(two.robin, "Port wing");
    ProjectCopy alex(two.robin, "Alex");
    two.robin.merge(two.kim());
    alex.merge(two.kim());
    two.note(two.robin, "Primed");
    two.part(alex, "Rib");
    two.robin.merge(alex);
    CHECK(two.wingOf(two.robin).name == "Port wing");
    const auto conflicts = two.robin->conflicts();
    REQUIRE(conflicts.size() == 1);
    CHECK(conflicts.front().lost == "\"Left wing\"");
}
