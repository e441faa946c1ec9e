// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Sentences.h"
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("A box inside that was closed with gaps keeps the outer one open until accepted late")
{
    RuleBench bench(readiness::Rule::InnerClosedEarly);
    const auto inner = bench.closing(bench.panel, {bench.rib});
    bench.squawk(bench.rib, "2026-03-01");
    CHECK(bench.quiet(inner, "2026-03-09"));
    bench.change(inner, [](Closing &c) {
        c.events = {{on("2026-03-10"), {}, {}, "Skin on", false}};
    });
    CHECK(bench.must(inner, "2026-03-10"));
    SignOff late;
    late.person_id = bench.builder;
    late.signed_on = on("2026-03-20");
    late.remarks = "Seen through the lightening hole";
    const auto signOff = bench.add(late);
    bench.change(inner, [&](Closing &c) { c.late_acceptances = {signOff}; });
    CHECK(bench.must(inner, "2026-03-19"));
    CHECK(bench.quiet(inner, "2026-03-20"));
}

TEST_CASE("What clears a box that was closed with gaps is for those who may accept late to do")
{
    RuleBench bench(readiness::Rule::InnerClosedEarly);
    const auto inner = bench.closing(bench.panel, {bench.rib});
    bench.squawk(bench.rib, "2026-03-01");
    bench.change(inner, [](Closing &c) {
        c.events = {{on("2026-03-10"), {}, {}, "Skin on", false}};
    });
    const auto blocker = bench.about(inner, "2026-03-14");
    REQUIRE(blocker);
    const auto clearedBy = [&](WordSet<SignerRole> mayAccept) {
        bench.profile.late_acceptance_by = mayAccept;
        return english(readiness::clearedBy(*blocker, bench.records, bench.profile));
    };
    using enum SignerRole;
    CHECK(clearedBy({Inspector}) == "have the inspector accept it late, or open it again");
    CHECK(clearedBy({Inspector, Adviser}) ==
          "have the adviser or the inspector accept it late, or open it again");
    CHECK(clearedBy({Inspector, Builder}) ==
          "have the builder or the inspector accept it late, or open it again");
    CHECK(clearedBy({Inspector, Adviser, Builder}) ==
          "have the builder, the adviser or the inspector accept it late, or open it again");
}

TEST_CASE("A box that a factory closed is cleared by its maker's document")
{
    RuleBench bench(readiness::Rule::InnerClosedEarly);
    bench.profile.factory_closing_needs_document = true;
    const auto inner = bench.closing(bench.panel, {bench.rib});
    bench.change(inner, [](Closing &c) {
        c.made_by = MadeBy::Factory;
        c.events = {{on("2026-03-10"), {}, {}, {}, false}};
    });
    const auto blocker = bench.about(inner, "2026-03-14");
    REQUIRE(blocker);
    CHECK(english(readiness::clearedBy(*blocker, bench.records, bench.profile)) ==
          "take in the maker's document and link it");
    const auto cited = [&] { return readiness::source(*blocker, bench.records, bench.profile); };
    bench.profile.basis = {{SingleRule::FactoryClosingNeedsDocument, "", "shed-rules", Mark::Read}};
    CHECK(cited() == "shed-rules");
    bench.profile.sources = {{"shed-rules", "Rules of the shed", "", Mark::Read, "", ""}};
    CHECK(cited() == "Rules of the shed");
    bench.change(inner, [](Closing &c) { c.made_by = MadeBy::EarlierBuilder; });
    CHECK(cited().empty());
}
