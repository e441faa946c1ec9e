// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace lastrivet;
using namespace lastrivet::test;
using readiness::Rule;

namespace {

Media::Link linkTo(RecordType type, std::int64_t id)
{
    return {type, id};
}

Id<Closing> aircraftOf(RuleBench &bench)
{
    const auto whole = bench.closing(bench.wing);
    bench.change(whole, [](Closing &closing) {
        closing.scope = ClosingScope::Aircraft;
        closing.encloses.clear();
    });
    return whole;
}

std::int64_t photosOf(const RuleBench &bench, Id<Closing> closing)
{
    return bench.ask("2026-03-20").closing(closing)->on_record.photos;
}

bool finds(const RuleBench &bench, Id<Closing> closing, Rule rule)
{
    const auto answer = bench.ask("2026-03-20");
    const auto &blockers = answer.closing(closing)->blockers;
    return std::any_of(blockers.begin(), blockers.end(),
                       [rule](const auto &blocker) { return blocker.rule == rule; });
}

} // namespace

TEST_CASE("The latest picture is the latest by day, not the last that was taken in")
{
    RuleBench bench(Rule::StalePhotos);
    const auto onRib = linkTo(RecordType::Component, bench.rib.value());
    bench.photo("2026-03-12", {onRib});
    bench.photo("2026-03-01", {onRib});
    bench.session(bench.rib, "2026-03-11", 60);
    CHECK(bench.quiet(bench.box, "2026-03-20"));
}

TEST_CASE("Pictures are of before the work when that ended after midnight")
{
    RuleBench bench(Rule::StalePhotos);
    bench.photo("2026-03-11", {linkTo(RecordType::Component, bench.rib.value())});
    bench.session(bench.rib, "2026-03-11T23:30", 60);
    CHECK(bench.should(bench.box, "2026-03-20"));
}

TEST_CASE("Planning, and work that may follow the closing, make no picture old")
{
    RuleBench bench(Rule::StalePhotos);
    bench.photo("2026-03-10", {linkTo(RecordType::Component, bench.rib.value())});
    const auto work = bench.session(bench.rib, "2026-03-11", 60);
    CHECK(bench.should(bench.box, "2026-03-20"));
    bench.change(work, [](WorkSession &session) { session.kind = WorkKind::Planning; });
    CHECK(bench.quiet(bench.box, "2026-03-20"));
    bench.change(work, [&](WorkSession &session) {
        session.kind = WorkKind::Other;
        session.step_id = bench.followingStep();
    });
    CHECK(bench.quiet(bench.box, "2026-03-20"));
}

TEST_CASE("Pictures of what names no part are the whole aircraft's, each counted once")
{
    RuleBench bench(Rule::TooFewPhotos);
    const auto whole = aircraftOf(bench);
    const auto squawk = bench.squawk({}, "2026-03-01");
    const auto deviation = bench.deviation(bench.rib, "2026-03-01");
    bench.change(deviation, [](Deviation &paper) { paper.component_ids.clear(); });
    const auto bulletin = bench.bulletin(bench.rib, "2026-03-01");
    bench.change(bulletin, [](Bulletin &paper) { paper.component_ids.clear(); });
    const auto ofSquawk = linkTo(RecordType::Squawk, squawk.value());
    bench.photo("2026-03-10", {ofSquawk});
    CHECK(photosOf(bench, whole) == 1);
    bench.photo("2026-03-10", {linkTo(RecordType::Deviation, deviation.value())});
    CHECK(photosOf(bench, whole) == 2);
    bench.photo("2026-03-10", {linkTo(RecordType::Bulletin, bulletin.value())});
    CHECK(photosOf(bench, whole) == 3);
    CHECK(photosOf(bench, bench.box) == 0);
    bench.photo("2026-03-10", {ofSquawk, linkTo(RecordType::Component, bench.rib.value())});
    CHECK(photosOf(bench, whole) == 4);
    CHECK(photosOf(bench, bench.box) == 1);
}

TEST_CASE("The aircraft as a whole is asked for no pictures of its inside")
{
    RuleBench bench(Rule::TooFewPhotos);
    bench.profile.interior_photos = 2;
    const auto whole = aircraftOf(bench);
    CHECK(finds(bench, bench.box, Rule::TooFewPhotos));
    CHECK_FALSE(finds(bench, whole, Rule::TooFewPhotos));
}

TEST_CASE("Neither a document nor a picture of a withdrawn record shows the inside")
{
    RuleBench bench(Rule::TooFewPhotos);
    const auto squawk = bench.squawk(bench.rib, "2026-03-01");
    const auto photo = bench.photo("2026-03-10", {linkTo(RecordType::Squawk, squawk.value())});
    CHECK(photosOf(bench, bench.box) == 1);
    bench.change(photo, [](Media &media) { media.kind = MediaKind::Document; });
    CHECK(photosOf(bench, bench.box) == 0);
    bench.change(photo, [](Media &media) { media.kind = MediaKind::Video; });
    CHECK(photosOf(bench, bench.box) == 1);
    bench.withdraw(squawk);
    CHECK(photosOf(bench, bench.box) == 0);
}

TEST_CASE("A factory's claim is borne out by a document, not by a picture, or by who accepts late")
{
    RuleBench bench(Rule::TooFewPhotos);
    bench.profile.factory_closing_needs_document = true;
    bench.change(bench.box, [](Closing &closing) {
        closing.made_by = MadeBy::Factory;
        closing.events = {{on("2026-03-10"), {}, {}, {}, false}};
    });
    const auto state = [&] { return bench.askBox("2026-03-20").state; };
    const auto paper = bench.photo("2026-03-10", {linkTo(RecordType::Closing, bench.box.value())});
    CHECK(state() == readiness::State::ClosedEarly);
    bench.change(paper, [](Media &media) { media.kind = MediaKind::Document; });
    CHECK(state() == readiness::State::Closed);
    bench.withdraw(paper);
    CHECK(state() == readiness::State::ClosedEarly);
    SignOff late;
    late.person_id = bench.builder;
    late.signed_on = on("2026-03-15");
    const auto acceptance = bench.add(late);
    bench.change(bench.box, [&](Closing &c) { c.late_acceptances = {acceptance}; });
    CHECK(state() == readiness::State::Closed);
}
