// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/SquawkActs.h"

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
    bench.change([&](Edit &edit) { acts::reopenSquawk(edit, id); });
    CHECK(acts::isOpen(*bench.records()->find(id)));
}

} // namespace lastrivet::test
