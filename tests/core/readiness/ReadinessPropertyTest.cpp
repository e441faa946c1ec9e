// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Readiness.h"
#include "tests/support/RandomBuild.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

using namespace lastrivet;
using namespace lastrivet::test;

namespace {

constexpr unsigned seeds = 150;
const char *const asked[] = {"2026-03-04", "2026-03-08T12:00", "2026-03-14"};

readiness::Answer ask(const RandomBuild &build, std::string_view asOf)
{
    return readiness::readiness(build.records, build.profile, on(asOf));
}

using Key = std::pair<readiness::Rule, RecordRef>;

std::set<Key> musts(const readiness::ClosingAnswer &closing)
{
    std::set<Key> keys;
    for (const auto &blocker : closing.blockers) {
        if (blocker.weight == readiness::Weight::Must)
            keys.emplace(blocker.rule, blocker.record);
    }
    return keys;
}

/// No closing has a must blocker that it had not before.
void checkNothingAdded(const readiness::Answer &before, const readiness::Answer &after)
{
    for (const auto &closing : after.closings) {
        const auto old = musts(*before.closing(closing.id));
        const auto now = musts(closing);
        CHECK(std::includes(old.begin(), old.end(), now.begin(), now.end()));
    }
}

/// Every squawk is accepted and every deviation approved when it comes up.
void settlePapers(RandomBuild &build)
{
    const Records records = build.records;
    for (const Squawk &squawk : records.squawks)
        build.change(squawk.id, [](Squawk &s) { s.accepted_on = s.found_on; });
    for (const Deviation &deviation : records.deviations) {
        build.change(deviation.id, [](Deviation &d) {
            d.decided_on = d.raised_on;
            d.decision = Decision::Approved;
        });
    }
}

/// Nothing on record stands against a closing, but for boxes inside it.
void settle(RandomBuild &build)
{
    settlePapers(build);
    const Records records = build.records;
    const Moment first = on("2026-03-01");
    for (const Step &step : records.steps)
        build.change(step.id, [&](Step &s) { s.done_on = first; });
    for (const Fastener &bolt : records.fasteners)
        build.change(bolt.id, [&](Fastener &f) { f.removed_on = first; });
    for (const HoldPoint &point : records.hold_points)
        build.change(point.id, [&](HoldPoint &p) { p.waived_on = first; });
}

void estimate(RandomBuild &build)
{
    const Records records = build.records;
    for (const Step &step : records.steps)
        build.change(step.id, [](Step &s) { s.estimate_minutes = Minutes{30}; });
}

} // namespace

TEST_CASE("The answer for a moment does not look at what came after it")
{
    for (unsigned seed = 0; seed < seeds; ++seed) {
        RandomBuild build(seed);
        const auto before = ask(build, "2026-03-08T12:00");
        build.session(build.any(build.parts), "2026-03-08T12:01", 30);
        build.squawk(build.any(build.parts), "2026-03-09");
        build.deviation(build.any(build.parts), "2026-03-09");
        build.photo("2026-03-09", {{RecordType::Component, build.any(build.parts).value()}});
        const auto planned = build.step(build.any(build.parts), "Planned later");
        build.change(planned, [](Step &step) { step.planned_on = on("2026-03-09"); });
        REQUIRE(ask(build, "2026-03-08T12:00") == before);
    }
}

TEST_CASE("A withdrawn record changes nothing")
{
    for (unsigned seed = 0; seed < seeds; ++seed) {
        RandomBuild build(seed);
        const auto before = ask(build, "2026-03-14");
        build.withdraw(build.session(build.any(build.parts), "2026-03-02", 30));
        build.withdraw(build.squawk(build.any(build.parts), "2026-03-02"));
        build.withdraw(build.deviation(build.any(build.parts), "2026-03-02"));
        build.withdraw(build.bulletin(build.any(build.parts), "2026-03-02"));
        build.withdraw(build.fastener(build.any(build.parts), "Row"));
        build.withdraw(build.measurement(build.any(build.parts), "Gap"));
        build.withdraw(build.partLine(build.any(build.parts), "Bracket", 2));
        build.withdraw(build.step(build.any(build.parts), "Step"));
        build.withdraw(build.photo("2026-03-02", {{RecordType::Component, 2}}));
        build.withdraw(build.closing(build.any(build.parts), {build.any(build.parts)}));
        build.withdraw(build.holdPoint(build.any(build.closings), HoldPointKind::OwnCheck,
                                       SignerRole::Builder));
        REQUIRE(ask(build, "2026-03-14") == before);
    }
}

TEST_CASE("Accepting every squawk and approving every deviation never adds a must blocker")
{
    for (unsigned seed = 0; seed < seeds; ++seed) {
        for (const char *asOf : asked) {
            RandomBuild build(seed);
            const auto before = ask(build, asOf);
            settlePapers(build);
            checkNothingAdded(before, ask(build, asOf));
        }
    }
}

TEST_CASE("States follow from the blockers, and lists name only what is there")
{
    using readiness::State;
    std::set<State> seen;
    std::int64_t longest = 0;
    for (unsigned seed = 0; seed < seeds; ++seed) {
        RandomBuild build(seed);
        seed % 2 ? settle(build) : estimate(build);
        const auto answer = ask(build, asked[seed % 3]);
        for (const auto &closing : answer.closings) {
            const bool hasMust = !musts(closing).empty();
            seen.insert(closing.state);
            if (closing.state == State::Closed || closing.state == State::ClosedEarly)
                CHECK((closing.state == State::ClosedEarly) == hasMust);
            else
                CHECK((closing.state == State::Clear) == !hasMust);
            CHECK(std::is_sorted(closing.reach.begin(), closing.reach.end()));
        }
        for (const auto &row : answer.unlock)
            CHECK_FALSE(row.closings.empty());
        std::int64_t minutes = 0;
        for (const auto &row : answer.visit_plan) {
            CHECK(row.cumulative_minutes.count() >= minutes);
            minutes = row.cumulative_minutes.count();
        }
        longest = std::max(longest, minutes);
        for (const auto id : answer.workable)
            CHECK_FALSE(happened(build.records.find(id)->done_on, answer.as_of));
    }
    for (const auto state : {State::Hold, State::Clear, State::Closed, State::ClosedEarly}) {
        CAPTURE(word(state));
        CHECK(seen.contains(state));
    }
    CHECK(longest > 30);
}
