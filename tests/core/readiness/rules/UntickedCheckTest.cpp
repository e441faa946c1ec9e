// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Sentences.h"
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("A line of the list is advice until ticked or said not to apply")
{
    RuleBench bench(readiness::Rule::UntickedCheck);
    Check line;
    line.closing_id = bench.box;
    line.item = "Both ends of every rivet seen";
    line.done_on = on("2026-03-10");
    const auto check = bench.add(line);
    CHECK(bench.should(check, "2026-03-09"));
    CHECK(bench.quiet(check, "2026-03-10"));
    bench.change(check, [](Check &c) { c.not_applicable = true; });
    CHECK(bench.quiet(check, "2026-03-09"));
}

TEST_CASE("A line of the list says where it comes from")
{
    RuleBench bench(readiness::Rule::UntickedCheck);
    bench.profile.sources = {{"shed-rules", "Rules of the shed", "2025", Mark::Read, "", ""}};
    Check line;
    line.closing_id = bench.box;
    line.item = "Drains open";
    const auto check = bench.add(line);
    const auto cited = [&](std::string_view written) {
        bench.change(check, [&](Check &c) { c.source = written; });
        return readiness::source(bench.about(check, "2026-03-10").value(), bench.records,
                                 bench.profile);
    };
    CHECK(cited("").empty());
    CHECK(cited("Our inspector's letter") == "Our inspector's letter");
    CHECK(cited("shed-rules") == "Rules of the shed, 2025");
}

TEST_CASE("A line that may follow the closing, or is of another one, is not asked for here")
{
    RuleBench bench(readiness::Rule::UntickedCheck);
    const auto other = bench.closing(bench.rib);
    const auto check = bench.add(Check{.closing_id = bench.box, .item = "Drains open"});
    const auto elsewhere = bench.add(Check{.closing_id = other, .item = "Drains open"});
    CHECK(bench.should(check, "2026-03-10"));
    CHECK(bench.quiet(elsewhere, "2026-03-10"));
    bench.change(check, [&](Check &c) { c.may_follow = {bench.box}; });
    CHECK(bench.quiet(check, "2026-03-10"));
}
