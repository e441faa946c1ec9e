// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Sentences.h"
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("Pictures of the inside are counted once each, up to the profile's number")
{
    RuleBench bench(readiness::Rule::TooFewPhotos);
    bench.profile.interior_photos = 2;
    const auto onRib = Media::Link{RecordType::Component, bench.rib.value()};
    const auto onBox = Media::Link{RecordType::Closing, bench.box.value()};
    bench.photo("2026-03-10", {onRib, onBox});
    CHECK(bench.should(bench.box, "2026-03-10"));
    const auto second = bench.photo("2026-03-11", {onRib});
    CHECK(bench.should(bench.box, "2026-03-10"));
    CHECK(bench.quiet(bench.box, "2026-03-11"));
    bench.change(second, [](Media &m) { m.shows = {Shows::Exterior, Shows::Receipt}; });
    CHECK(bench.should(bench.box, "2026-03-11"));
    bench.change(second, [](Media &m) { m.shows.insert(Shows::Defect); });
    CHECK(bench.quiet(bench.box, "2026-03-11"));
}

TEST_CASE("A lid that can be opened again needs no photographs")
{
    RuleBench bench(readiness::Rule::TooFewPhotos);
    bench.profile.interior_photos = 2;
    bench.change(bench.box, [](Closing &c) { c.permanent = false; });
    CHECK(bench.quiet(bench.box, "2026-03-10"));
}

TEST_CASE("How many photographs are asked for is cited as the profile cites it")
{
    RuleBench bench(readiness::Rule::TooFewPhotos);
    bench.profile.interior_photos = 1;
    const auto blocker = bench.about(bench.box, "2026-03-10");
    REQUIRE(blocker);
    const auto cited = [&] { return readiness::source(*blocker, bench.records, bench.profile); };
    CHECK(cited().empty());
    bench.profile.basis = {{SingleRule::LateEntryDays, "", "another", Mark::Read},
                           {SingleRule::InteriorPhotos, "", "shed-rules", Mark::SecondHand}};
    bench.profile.sources = {{"shed-rules", "Rules of the shed", "2025", Mark::Read, "", ""}};
    CHECK(cited() == "Rules of the shed, 2025 [second-hand]");
}

TEST_CASE("A picture without the day it was taken counts from the day it was taken in")
{
    RuleBench bench(readiness::Rule::TooFewPhotos);
    bench.profile.interior_photos = 1;
    const auto photo = bench.photo("2026-03-10", {{RecordType::Component, bench.rib.value()}});
    bench.change(photo, [](Media &m) {
        m.taken_on.reset();
        m.imported_on = on("2026-03-12");
    });
    CHECK(bench.should(bench.box, "2026-03-11"));
    CHECK(bench.quiet(bench.box, "2026-03-12"));
}
