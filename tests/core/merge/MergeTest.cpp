// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/TwoCopies.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using test::ProjectCopy;
using test::TwoCopies;

TEST_CASE("What two people did to different things is all there after a merge")
{
    TwoCopies two;
    two.rename(two.robin, "Left wing");
    two.note(two.kim(), "Skins on order");
    const auto rib = two.part(two.robin, "Rib");
    const auto spar = two.part(two.kim(), "Spar");
    two.mergeBoth();
    CHECK(two.wingOf(two.robin).name == "Left wing");
    CHECK(two.wingOf(two.robin).note == "Skins on order");
    CHECK(two.robin->records()->find(rib));
    CHECK(two.robin->records()->find(spar));
    CHECK(two.robin->conflicts().empty());
}

TEST_CASE("Of two values of one field the later stands, and what lost can be taken instead")
{
    TwoCopies two;
    two.rename(two.robin, "Port wing");
    two.rename(two.kim(), "Left wing");
    two.mergeBoth();
    CHECK(two.wingOf(two.robin).name == "Left wing");
    const auto conflicts = two.robin->conflicts();
    REQUIRE(conflicts.size() == 1);
    const auto &conflict = conflicts.front();
    CHECK(conflict.kind == ConflictKind::Value);
    CHECK(conflict.record == RecordRef{RecordType::Component, two.wing.value()});
    CHECK(conflict.field == "name");
    CHECK(conflict.kept == "\"Left wing\"");
    CHECK(conflict.lost == "\"Port wing\"");
    CHECK(conflict.kept_by.who == "Kim");
    CHECK(conflict.lost_by.who == "Robin");
    CHECK(conflict.lost_by.label == "Renamed to Port wing");
    REQUIRE(two.robin->decide(conflict.id, ConflictDecision::Taken));
    CHECK(two.wingOf(two.robin).name == "Port wing");
    CHECK_FALSE(two.robin->decide(conflict.id, ConflictDecision::Kept));
    two.mergeBoth();
    CHECK(two.wingOf(two.kim()).name == "Port wing");
    CHECK(two.kim()->conflicts().front().decision == ConflictDecision::Taken);
    REQUIRE(two.robin->conflicts().size() == 1);
}

TEST_CASE("A decision that changes nothing is a change too, can be undone, and travels")
{
    TwoCopies two;
    two.rename(two.robin, "Port wing");
    two.rename(two.kim(), "Left wing");
    two.mergeBoth();
    const auto id = two.kim()->conflicts().front().id;
    REQUIRE(two.kim()->decide(id, ConflictDecision::Kept));
    REQUIRE(two.kim()->undo());
    CHECK_FALSE(two.kim()->conflicts().front().decision);
    REQUIRE(two.kim()->redo());
    two.mergeBoth();
    CHECK(two.robin->conflicts().front().decision == ConflictDecision::Kept);
    CHECK(two.wingOf(two.robin).name == "Left wing");
}

TEST_CASE(
    "The same value from both sides, and a value that its author changed again, are no conflicts")
{
    TwoCopies two;
    two.rename(two.robin, "Left wing");
    two.rename(two.kim(), "Left wing");
    two.note(two.robin, "One");
    two.note(two.robin, "Two");
    two.mergeBoth();
    CHECK(two.robin->conflicts().empty());
    // Robin's first word was overridden by Kim's, and that by Robin's second: one thing to decide.
    two.note(two.robin, "Three");
    two.note(two.kim(), "From Kim");
    two.note(two.robin, "Four");
    two.mergeBoth();
    REQUIRE(two.robin->conflicts().size() == 1);
    CHECK(two.robin->conflicts().front().lost == "\"From Kim\"");
    CHECK(two.wingOf(two.robin).note == "Four");
}

namespace {

/// Both take each other's names in, and each decides otherwise; then they merge again.
std::int64_t decideDifferently(TwoCopies &two, ConflictDecision ofRobin, ConflictDecision ofKim)
{
    const auto id = two.decideEach(ofRobin, ofKim);
    two.mergeBoth();
    return id;
}

} // namespace

TEST_CASE("Of two decisions that differ the later stands, and the other is told to both")
{
    TwoCopies two;
    const bool isTakenLater = GENERATE(false, true);
    const auto taken = ConflictDecision::Taken;
    const auto kept = ConflictDecision::Kept;
    const auto id =
        decideDifferently(two, isTakenLater ? kept : taken, isTakenLater ? taken : kept);
    CHECK(two.wingOf(two.robin).name == (isTakenLater ? "Port wing" : "Left wing"));
    CHECK(two.wingOf(two.kim()).name == two.wingOf(two.robin).name);
    for (auto *copy : {&two.robin, &two.kim()}) {
        const auto conflicts = (*copy)->conflicts();
        REQUIRE(conflicts.size() == 2);
        for (const auto &conflict : conflicts) {
            if (conflict.id == id) {
                CHECK(conflict.decision == (isTakenLater ? taken : kept));
                continue;
            }
            CHECK_FALSE(conflict.decision);
            CHECK(conflict.kept == (isTakenLater ? "\"Port wing\"" : "\"Left wing\""));
            CHECK(conflict.lost == (isTakenLater ? "\"Left wing\"" : "\"Port wing\""));
            CHECK(conflict.kept_by.who == "Kim");
            CHECK(conflict.lost_by.who == "Robin");
        }
    }
}

TEST_CASE("What two decisions left to decide is decided once, and stays so")
{
    TwoCopies two;
    decideDifferently(two, ConflictDecision::Taken, ConflictDecision::Kept);
    for (const auto &conflict : two.robin->conflicts()) {
        if (conflict.decision)
            continue;
        two.later(two.robin);
        REQUIRE(two.robin->decide(conflict.id, ConflictDecision::Taken));
    }
    two.mergeBoth();
    CHECK(two.wingOf(two.kim()).name == "Port wing");
    for (const auto &conflict : two.kim()->conflicts())
        CHECK(conflict.decision);
}

TEST_CASE("Two who decided alike have nothing more to decide")
{
    TwoCopies two;
    decideDifferently(two, ConflictDecision::Taken, ConflictDecision::Taken);
    CHECK(two.wingOf(two.robin).name == "Port wing");
    REQUIRE(two.robin->conflicts().size() == 1);
    CHECK(two.robin->conflicts().front().decision == ConflictDecision::Taken);
}

TEST_CASE("Whoever decided first and takes that back leaves the other's word")
{
    TwoCopies two;
    two.decideEach(ConflictDecision::Taken, ConflictDecision::Kept);
    two.later(two.robin);
    REQUIRE(two.robin->undo());
    two.mergeBoth();
    CHECK(two.wingOf(two.robin).name == "Left wing");
    REQUIRE(two.robin->conflicts().size() == 1);
    CHECK(two.robin->conflicts().front().decision == ConflictDecision::Kept);
}

TEST_CASE("Of two squawks with one number the earlier keeps it and the later gets a letter")
{
    TwoCopies two;
    const auto first = two.find(two.robin, "Gouge in the spar cap");
    const auto second = two.find(two.kim(), "Short bolt");
    two.mergeBoth();
    CHECK(two.robin->records()->find(first)->number == "2");
    CHECK(two.robin->records()->find(second)->number == "2b");
    CHECK(two.robin->conflicts().empty());
    const auto next = two.find(two.kim(), "Loose fairing");
    CHECK(two.kim()->records()->find(next)->number == "3");
    two.mergeBoth();
    CHECK(two.robin->records()->find(second)->number == "2b");
}

TEST_CASE("Prerequisites that two people added to one record are both there")
{
    TwoCopies two;
    const auto rib = two.part(two.robin, "Rib");
    two.mergeBoth();
    for (auto *copy : {&two.robin, &two.kim()}) {
        two.later(*copy);
        copy->change("Access", [&](Edit &edit) {
            edit.update(two.squawk, [&](Squawk &squawk) {
                squawk.needs_access_to = {copy == &two.robin ? rib : two.wing};
            });
        });
    }
    two.mergeBoth();
    CHECK(two.robin->records()->find(two.squawk)->needs_access_to.size() == 2);
    CHECK(two.robin->conflicts().empty());
}

TEST_CASE("What one took back and the other went on with stays, and is told")
{
    TwoCopies two;
    const auto rib = two.part(two.robin, "Rib");
    ProjectCopy sascha(two.robin, "Sascha");
    REQUIRE(two.robin->undo());
    two.later(sascha);
    sascha.change("Note", [&](Edit &edit) {
        edit.update(rib, [](Component &part) { part.note = "Drilled"; });
    });
    ProjectCopy other(sascha, "Sascha");
    other.merge(two.robin);
    two.robin.merge(sascha);
    REQUIRE(*other->records() == *two.robin->records());
    REQUIRE(two.robin->records()->find(rib));
    CHECK(two.robin->records()->find(rib)->note == "Drilled");
    REQUIRE(two.robin->conflicts().size() == 1);
    CHECK(two.robin->conflicts().front().kind == ConflictKind::Existence);
    REQUIRE(two.robin->decide(two.robin->conflicts().front().id, ConflictDecision::Taken));
    CHECK(two.robin->records()->find(rib)->withdrawn_on);
}

TEST_CASE("What one took back and the other left alone is gone")
{
    TwoCopies two;
    const auto rib = two.part(two.robin, "Rib");
    ProjectCopy sascha(two.robin, "Sascha");
    REQUIRE(two.robin->undo());
    two.later(sascha);
    sascha.change("Note", [&](Edit &edit) {
        edit.update(two.wing, [](Component &part) { part.note = "Drilled"; });
    });
    two.robin.merge(sascha);
    CHECK_FALSE(two.robin->records()->find(rib));
    CHECK(two.robin->conflicts().empty());
}

TEST_CASE("A part that another copy's record names stays when it was taken back")
{
    TwoCopies two;
    const auto rib = two.part(two.robin, "Rib");
    ProjectCopy sascha(two.robin, "Sascha");
    two.later(sascha);
    Id<Squawk> squawk;
    sascha.change("Squawk", [&](Edit &edit) {
        auto made = two.newSquawk(edit, "Crack in the rib");
        made.component_id = rib;
        squawk = edit.put(made);
    });
    // Once the part goes before the squawk names it, once after.
    const bool isFirst = GENERATE(true, false);
    if (!isFirst)
        two.later(two.robin);
    REQUIRE(two.robin->undo());
    ProjectCopy other(sascha, "Sascha");
    other.merge(two.robin);
    two.robin.merge(sascha);
    REQUIRE(*other->records() == *two.robin->records());
    CHECK(two.robin->records()->find(rib));
    CHECK(two.robin->records()->find(squawk)->component_id == rib);
    REQUIRE(two.robin->conflicts().size() == 1);
    CHECK(two.robin->conflicts().front().kind == ConflictKind::Existence);
}

TEST_CASE("A change that breaks a rule at its turn is set aside whole, and can be tried again")
{
    TwoCopies two;
    two.part(two.robin, "Rib three", "R3");
    const auto spar = two.part(two.kim(), "Spar", "R3");
    two.note(two.kim(), "Primed");
    two.mergeBoth();
    CHECK_FALSE(two.robin->records()->find(spar));
    CHECK(two.wingOf(two.robin).note == "Primed");
    const auto conflicts = two.robin->conflicts();
    REQUIRE(conflicts.size() == 1);
    CHECK(conflicts.front().kind == ConflictKind::SetAside);
    CHECK(conflicts.front().lost_by.label == "Part Spar");
    CHECK(conflicts.front().reason.find("R3") != std::string::npos);
    const auto refused = two.robin->decide(conflicts.front().id, ConflictDecision::Taken);
    REQUIRE_FALSE(refused);
    CHECK(english(refused.reason()).find("R3") != std::string::npos);
    two.later(two.robin);
    two.robin.change("Another code", [&](Edit &edit) {
        for (const auto &part : edit.records().components) {
            if (part.code == "R3")
                edit.update(part.id, [](Component &other) { other.code = "R3a"; });
        }
    });
    REQUIRE(two.robin->decide(conflicts.front().id, ConflictDecision::Taken));
    CHECK(two.robin->records()->find(spar)->code == "R3");
    two.mergeBoth();
    CHECK(two.kim()->records()->find(spar));
}

TEST_CASE("A change that was set aside and that its author took back is nothing to decide")
{
    TwoCopies two;
    two.part(two.robin, "Rib three", "R3");
    two.part(two.kim(), "Spar", "R3");
    REQUIRE(two.kim()->undo());
    two.mergeBoth();
    CHECK(two.robin->conflicts().empty());
    CHECK(two.robin->records()->components.size() == 2);
}

TEST_CASE("Rules that lost in a merge are not taken over while the records break them")
{
    TwoCopies two;
    auto rules = two.robin->profile();
    rules.name = "Only an inspector accepts late";
    rules.late_acceptance_by = {SignerRole::Inspector};
    two.later(two.robin);
    two.robin.change("Strict rules", [&](Edit &edit) { edit.useProfile(rules); });
    rules.name = "A builder may";
    rules.late_acceptance_by = {SignerRole::Builder, SignerRole::Inspector};
    two.later(two.kim());
    two.kim().change("Lenient rules", [&](Edit &edit) { edit.useProfile(rules); });
    two.mergeBoth();
    REQUIRE(two.robin->profile().name == "A builder may");
    const auto conflicts = two.robin->conflicts();
    REQUIRE(conflicts.size() == 1);
    Id<Closing> skin;
    two.robin.change("Accepted late", [&](Edit &edit) {
        SignOff acceptance;
        acceptance.person_id = edit.records().people.begin()->id;
        acceptance.signed_on = edit.today();
        acceptance.remarks = "Looked at through the inspection hole";
        Closing closing;
        closing.component_id = two.wing;
        closing.title = "Skin";
        closing.encloses = {two.wing};
        closing.late_acceptances = {edit.put(acceptance)};
        skin = edit.put(closing);
    });
    const auto refused = two.robin->decide(conflicts.front().id, ConflictDecision::Taken);
    REQUIRE_FALSE(refused);
    REQUIRE(refused.reason().violations.size() == 1);
    CHECK(refused.reason().violations.front().record ==
          RecordRef{RecordType::Closing, skin.value()});
    CHECK(two.robin->profile().name == "A builder may");
    two.later(two.robin);
    two.robin.change("It was never so", [&](Edit &edit) { edit.withdraw(skin, "Mixed up"); });
    REQUIRE(two.robin->decide(conflicts.front().id, ConflictDecision::Taken));
    CHECK(two.robin->profile().name == "Only an inspector accepts late");
}
