// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/Sessions.h"

#include "core/project/acts/WorkActs.h"
#include "tests/support/ActBench.h"

#include <vector>

namespace lastrivet::test {

namespace {

Id<WorkSession> onTheWing(ActBench &bench)
{
    Id<WorkSession> id;
    bench.change([&](Edit &edit) {
        WorkSession session;
        session.began = Moment::parse("2026-01-10T19:00");
        session.minutes = Minutes{90};
        session.step_id = acts::addStep(edit, bench.wing, "Drill");
        id = acts::enterSession(edit, session);
    });
    return id;
}

} // namespace

TEST_CASE("An entry gets the part of its step, else of its squawk, and may be on no part")
{
    ActBench bench;
    const auto onTheStep = onTheWing(bench);
    const auto step = bench.records()->find(onTheStep)->step_id;
    CHECK(bench.records()->find(onTheStep)->component_id == bench.wing);
    const auto enter = [&](Id<Step> itsStep, Id<Squawk> itsSquawk) {
        Id<WorkSession> id;
        bench.change([&](Edit &edit) {
            WorkSession session;
            session.began = Moment::parse("2026-01-11");
            session.step_id = itsStep;
            session.squawk_id = itsSquawk;
            id = acts::enterSession(edit, session);
        });
        return bench.records()->find(id)->component_id;
    };
    Id<Squawk> leak;
    bench.change([&](Edit &edit) {
        leak = edit.put(Squawk{
            .number = "1", .component_id = bench.tank, .title = "Leak", .found_on = edit.today()});
    });
    CHECK(enter({}, leak) == bench.tank);
    CHECK(enter(step, leak) == bench.wing);
    CHECK_FALSE(enter({}, {}));
}

TEST_CASE("An entry is the builder's unless it says whose, and nobody's where no builder is named")
{
    ActBench bench;
    using Workers = std::vector<WorkSession::Worker>;
    const auto workersOf = [&](const Workers &workers) {
        Id<WorkSession> id;
        bench.change([&](Edit &edit) {
            WorkSession session;
            session.began = Moment::parse("2026-01-11");
            session.workers = workers;
            id = acts::enterSession(edit, session);
        });
        return bench.records()->find(id)->workers;
    };
    CHECK(workersOf({}).empty());
    bench.change([&](Edit &edit) {
        ProjectFacts facts = edit.records().project;
        facts.builder_id = bench.builder;
        edit.put(facts);
    });
    CHECK(workersOf({}) == Workers{{bench.builder, {}, false}});
    CHECK(workersOf({{bench.adviser, {}, true}}) == Workers{{bench.adviser, {}, true}});
}

TEST_CASE("A moved entry keeps its time of day, and a step of another part is no longer named")
{
    ActBench bench;
    const auto id = onTheWing(bench);
    bench.change([&](Edit &edit) { acts::moveSession(edit, id, Moment::parse("2026-01-08"), {}); });
    CHECK(bench.records()->find(id)->began == Moment::parse("2026-01-08T19:00"));
    CHECK(bench.records()->find(id)->component_id == bench.wing);
    CHECK(bench.records()->find(id)->step_id);
    bench.change([&](Edit &edit) { acts::moveSession(edit, id, std::nullopt, bench.tank); });
    CHECK(bench.records()->find(id)->component_id == bench.tank);
    CHECK_FALSE(bench.records()->find(id)->step_id);
    CHECK(bench.records()->find(id)->minutes == Minutes{90});
}

TEST_CASE("A split entry becomes several with all of its time and its photographs")
{
    ActBench bench;
    const auto id = onTheWing(bench);
    bench.change([&](Edit &edit) {
        Media photo;
        photo.file = "photos/a.jpg";
        photo.links = {{RecordType::WorkSession, id.value()}};
        edit.put(photo);
        WorkSession first = *edit.records().find(id);
        WorkSession second = first;
        first.minutes = Minutes{60};
        second.minutes = Minutes{30};
        second.component_id = bench.tank;
        acts::splitSession(edit, id, {first, second});
    });
    const auto &sessions = bench.records()->work_sessions;
    REQUIRE(sessions.size() == 2);
    std::int64_t minutes = 0;
    for (const WorkSession &session : sessions)
        minutes += session.minutes->count();
    CHECK(minutes == 90);
    const auto other = sessions.find(Id<WorkSession>{sessions.greatestId()});
    CHECK(other->component_id == bench.tank);
    CHECK_FALSE(other->step_id);
    CHECK(bench.records()->find(id)->step_id);
    CHECK(bench.records()->media.begin()->links.size() == 2);
}

} // namespace lastrivet::test
