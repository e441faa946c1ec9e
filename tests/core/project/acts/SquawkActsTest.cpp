// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/SquawkActs.h"

#include "core/project/acts/Inspecting.h"
#include "core/project/acts/PhotoActs.h"
#include "core/project/acts/StoreActs.h"
#include "core/project/acts/WorkActs.h"
#include "tests/support/ActBench.h"

namespace lastrivet::test {

namespace {

Id<Squawk> found(ActBench &bench, Squawk draft)
{
    Id<Squawk> id;
    draft.title = "Overdriven rivet";
    draft.component_id = bench.wing;
    bench.change([&](Edit &edit) { id = acts::addSquawk(edit, draft); });
    return id;
}

} // namespace

TEST_CASE("A new squawk gets the next number, and a withdrawn one's is not given again")
{
    ActBench bench;
    const auto first = found(bench, {});
    bench.change([&](Edit &edit) { edit.withdraw(first, "twice"); });
    const auto second = found(bench, {});
    CHECK(bench.records()->find(first)->number == "1");
    CHECK(bench.records()->find(second)->number == "2");
    CHECK(bench.records()->find(second)->found_on == (*bench).today());
}

TEST_CASE("Fixed, verified, and fixed again has to be looked at again")
{
    ActBench bench;
    const auto id = found(bench, {});
    const Moment today = (*bench).today();
    bench.change([&](Edit &edit) {
        acts::fixSquawk(edit, id, "Drilled out, next size", today, bench.builder);
        acts::verifySquawk(edit, id, today, bench.builder);
    });
    CHECK_FALSE(acts::isOpen(*bench.records()->find(id)));
    bench.change(
        [&](Edit &edit) { acts::fixSquawk(edit, id, "Doubler added", today, bench.builder); });
    CHECK(acts::isOpen(*bench.records()->find(id)));
    CHECK(bench.records()->find(id)->correction == "Doubler added");
}

TEST_CASE("What the acts say nobody may do, the records refuse as well")
{
    ActBench bench;
    const auto id =
        found(bench, {.severity = Severity::Airworthiness, .verify_by = SignerRole::Inspector});
    const Moment today = (*bench).today();
    bench.change(
        [&](Edit &edit) { acts::fixSquawk(edit, id, "Drilled out", today, bench.builder); });
    for (const auto person : {bench.builder, bench.adviser, bench.inspector}) {
        const auto &squawk = *bench.records()->find(id);
        const auto &who = *bench.records()->find(person);
        const bool mayVerify = !acts::whyNotVerify(squawk, who);
        const bool mayAccept = !acts::whyNotAccept(squawk, who);
        CHECK(mayVerify == (person == bench.inspector));
        CHECK(mayAccept == (person != bench.builder));
        if (!mayVerify)
            CHECK(
                bench.isRefused([&](Edit &edit) { acts::verifySquawk(edit, id, today, person); }));
        if (!mayAccept)
            CHECK(bench.isRefused([&](Edit &edit) {
                acts::acceptSquawk(edit, id, today, person, "letter of 3 March");
            }));
    }
    bench.change([&](Edit &edit) { acts::verifySquawk(edit, id, today, bench.inspector); });
}

TEST_CASE("A squawk is taken back step by step, and its note keeps why")
{
    ActBench bench;
    const auto id = found(bench, {});
    const Moment today = (*bench).today();
    bench.change([&](Edit &edit) {
        acts::fixSquawk(edit, id, "Drilled out", today, bench.builder);
        acts::verifySquawk(edit, id, today, bench.builder);
    });
    bench.change([&](Edit &edit) { acts::takeBack(edit, id, "the wrong rivet was looked at"); });
    CHECK(acts::progressWord(*bench.records()->find(id), today) == "fixed");
    bench.change([&](Edit &edit) { acts::takeBack(edit, id, "smoking again"); });
    const Squawk &back = *bench.records()->find(id);
    CHECK(acts::progressWord(back, today) == "open");
    CHECK_FALSE(back.fixed_by);
    CHECK(back.correction == "Drilled out");
    CHECK(back.note == "the wrong rivet was looked at\nsmoking again");
}

TEST_CASE("A defect that comes back is a squawk of its own, and the old one keeps its dates")
{
    ActBench bench;
    const auto old = found(bench, {.severity = Severity::Airworthiness,
                                   .verify_by = SignerRole::Inspector,
                                   .needs_access_to = {bench.tank}});
    const Moment today = (*bench).today();
    bench.change([&](Edit &edit) {
        acts::fixSquawk(edit, old, "Drilled out", today, bench.builder);
        acts::verifySquawk(edit, old, today, bench.inspector);
    });
    Id<Squawk> again;
    bench.change([&](Edit &edit) { again = acts::foundAgain(edit, old, "as squawk 1"); });
    const auto records = bench.records();
    const Squawk &fresh = *records->find(again);
    CHECK(fresh.number == "2");
    CHECK(acts::progressWord(fresh, today) == "open");
    CHECK(fresh.severity == Severity::Airworthiness);
    CHECK(fresh.verify_by == SignerRole::Inspector);
    CHECK(fresh.needs_access_to == IdSet<Component>{bench.tank});
    CHECK(fresh.correction.empty());
    CHECK(records->find(old)->verified_on == today);
    CHECK(acts::progressWord(*records->find(old), today) == "verified");
    CHECK(acts::progressWord(*records->find(old), *today.plusDays(-1)) == "open");
}

TEST_CASE("What was accepted as it is and verified after all is called verified")
{
    Squawk squawk;
    const auto on = [](std::string_view day) { return *Moment::parse(day); };
    squawk.accepted_on = on("2026-03-01");
    CHECK(acts::progressWord(squawk, on("2026-03-10")) == "accepted");
    squawk.fixed_on = on("2026-03-05");
    CHECK(acts::progressWord(squawk, on("2026-03-10")) == "accepted");
    squawk.verified_on = on("2026-03-06");
    CHECK(acts::progressWord(squawk, on("2026-03-10")) == "verified");
    CHECK(acts::progressWord(squawk, on("2026-03-05")) == "accepted");
}

TEST_CASE("Nothing happens to a squawk tomorrow, or before it was found")
{
    ActBench bench;
    const Moment now = (*bench).now();
    const Moment today = now.dayOnly();
    const auto id = found(bench, {.found_on = today});
    const Squawk &squawk = *bench.records()->find(id);
    CHECK_FALSE(acts::whyNotOn(squawk, today, now));
    CHECK(acts::whyNotOn(squawk, *today.plusDays(1), now));
    CHECK(acts::whyNotOn(squawk, *today.plusDays(-1), now));
}

TEST_CASE("An act on what an undo took away meanwhile is refused, and changes nothing")
{
    ActBench bench;
    const auto before = bench.records();
    const auto isTold = [&](const Project::Body &body) {
        CHECK_THROWS_AS((*bench).change("A change", body), Fault);
    };
    isTold([](Edit &edit) { acts::foundAgain(edit, Id<Squawk>{900}, "again"); });
    isTold([](Edit &edit) { acts::addFinding(edit, Id<Inspection>{900}, {}); });
    isTold([](Edit &edit) { acts::linkMedia(edit, Id<Media>{900}, {RecordType::Project, 1}); });
    isTold([](Edit &edit) { acts::lotFrom(edit, Id<PartLine>{900}); });
    isTold([](Edit &edit) { acts::countAsListed(edit, {Id<PartLine>{900}}); });
    isTold([](Edit &edit) { acts::insertStep(edit, Id<Step>{900}, "Drill"); });
    isTold([](Edit &edit) { acts::moveSteps(edit, {Id<Step>{900}}, {}); });
    CHECK(bench.records() == before);
}

} // namespace lastrivet::test
