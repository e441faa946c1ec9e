// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/merge/Replay.h"
#include "core/merge/CopyRead.h"
#include "tests/support/TwoCopies.h"

#include <catch2/catch.hpp>

#include <set>

using namespace lastrivet;
using test::TwoCopies;

namespace {

/// A change to a wing and its squawk, and the records as they were before it.
struct OneChange {
    TwoCopies two;
    merge::MergeState before;
    storage::JournalRow change;

    OneChange()
    {
        two.later(two.kim());
        two.kim().change("Primed, and another number", [this](Edit &edit) {
            edit.update(two.wing, [](Component &part) { part.note = "Primed"; });
            edit.update(two.squawk, [](Squawk &squawk) { squawk.number = "7"; });
        });
        before = merge::CopyRead(two.robin.folder()).state();
        change = merge::CopyRead(two.kim().folder()).history().back();
    }
    /// Breaks a rule for the wing, whatever becomes of it.
    void giveCodeTwice()
    {
        Component wing = *before.records.find(two.wing);
        wing.code = "R3";
        before.records.put(RecordType::Component, &wing);
        wing.id = Id<Component>{3};
        wing.name = "Rib three";
        before.records.put(RecordType::Component, &wing);
    }
    /// Breaks a rule as soon as the squawk gets its number.
    void useNumber()
    {
        Squawk squawk = *before.records.find(two.squawk);
        squawk.id = Id<Squawk>{4};
        squawk.number = "7";
        before.records.put(RecordType::Squawk, &squawk);
    }
};

} // namespace

TEST_CASE("A change is let in when all that is broken after it was broken before")
{
    OneChange one;
    const bool isBrokenBefore = GENERATE(false, true);
    if (isBrokenBefore)
        one.giveCodeTwice();
    merge::Replay replay(one.before);
    CHECK(replay.play(one.change));
    CHECK(replay.state().conflicts.empty());
    CHECK(replay.state().records.find(one.two.wing)->note == "Primed");
    CHECK(replay.state().records.find(one.two.squawk)->number == "7");
    CHECK(replay.touched() == std::set<RecordRef>{{RecordType::Component, one.two.wing.value()},
                                                  {RecordType::Squawk, one.two.squawk.value()}});
}

TEST_CASE("A change that breaks a rule is left out whole, with the rule that it broke itself")
{
    OneChange one;
    const bool isBrokenBefore = GENERATE(false, true);
    if (isBrokenBefore)
        one.giveCodeTwice();
    one.useNumber();
    merge::Replay replay(one.before);
    CHECK_FALSE(replay.play(one.change));
    CHECK(replay.state().records == one.before.records);
    CHECK(replay.touched().empty());
    REQUIRE(replay.state().conflicts.size() == 1);
    const auto &conflict = replay.state().conflicts.begin()->second;
    CHECK(conflict.kind == ConflictKind::SetAside);
    CHECK(conflict.lost_by == one.change.change_id);
    CHECK_THAT(conflict.reason, Catch::Contains("has the number 7"));
}
