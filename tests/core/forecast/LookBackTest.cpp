// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/LookBack.h"
#include "core/base/IdTime.h"
#include "tests/support/ProjectBuilder.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <random>

using namespace lastrivet;
using namespace lastrivet::forecast;
using test::on;

namespace {

/// Somebody who finishes a step of four hours each week for two years, from 2024-01-01 on, and
/// takes `factor` times as long.
struct Builder {
    test::ProjectBuilder project;
    Id<Component> wing = project.part("Wing");
    std::vector<Id<Step>> steps;

    explicit Builder(double factor, int done = 104, int all = 130)
    {
        std::mt19937_64 random(7);
        std::normal_distribution<double> spread(0, 0.2);
        auto day = on("2024-01-01");
        for (int week = 0; week < all; ++week, day = *day.plusDays(7)) {
            steps.push_back(project.step(wing, "Step"));
            project.change(steps.back(), [&](Step &step) {
                step.estimate_minutes = Minutes{240};
                if (week < done)
                    step.done_on = day;
            });
            if (week < done)
                work(steps.back(), day, std::llround(240 * factor * std::exp(spread(random))));
        }
    }
    Id<WorkSession> work(Id<Step> step, Moment day, std::int64_t minutes)
    {
        const auto id = project.session(wing, day.text(), minutes);
        project.change(id, [&](WorkSession &work) { work.step_id = step; });
        return id;
    }
    LookBack back(std::string_view asOf) const
    {
        Options options;
        options.draws = 500;
        return lookBack(project.records, on(asOf), options);
    }
};

} // namespace

TEST_CASE("Two years back, the forecast of each month stands beside what came")
{
    const Builder builder(1.3);
    const auto told = builder.back("2026-01-01");
    // The log is eight weeks old on 2024-02-26; from then on every first day of a month before
    // today.
    REQUIRE(told.looks.size() == 22);
    CHECK(told.looks.front().day == on("2024-03-01"));
    CHECK(told.looks.back().day == on("2025-12-01"));
    const Look &early = told.looks.front();
    // Nine weeks are worked off by then, on Mondays 01-01 to 02-26.
    CHECK(early.steps_left == 130 - 9);
    CHECK(early.steps_since == 104 - 9);
    REQUIRE(early.finish);
    // What came is what those steps took, and nothing else is in the log.
    std::int64_t came = 0;
    for (const WorkSession &session : builder.project.records.work_sessions) {
        if (after(*session.began, early.day))
            came += session.minutes->count();
    }
    CHECK(early.came == came);
    CHECK(told.with_outcome == 22);
    CHECK_FALSE(told.finished_on);
}

TEST_CASE("A builder who stays as slow as he was is foreseen; one who slows down is not")
{
    const auto steady = Builder(1.3).back("2026-01-01");
    CHECK(steady.within_p80 >= steady.with_outcome * 7 / 10);
    Builder tired(1);
    for (std::size_t i = 52; i < 104; ++i)
        tired.work(tired.steps[i], *tired.project.records.find(tired.steps[i])->done_on, 720);
    const auto late = tired.back("2026-01-01");
    std::int64_t within = 0;
    for (const Look &look : late.looks)
        within += look.steps_since > 0 && look.came <= look.said.p80;
    CHECK(late.within_p80 == within);
    CHECK(late.within_p80 < late.with_outcome / 2);
}

TEST_CASE("Rework counts among what came; work on other things does not")
{
    Builder builder(1);
    const auto before = builder.back("2026-01-01").looks.back().came;
    builder.project.session(builder.wing, "2025-12-20", 100);
    CHECK(builder.back("2026-01-01").looks.back().came == before);
    const auto again = builder.project.session(builder.wing, "2025-12-20", 100);
    builder.project.change(again, [](WorkSession &work) { work.kind = WorkKind::Rework; });
    CHECK(builder.back("2026-01-01").looks.back().came == before + 100);
    Options options;
    options.draws = 10;
    options.choice.without = {builder.wing};
    CHECK(lookBack(builder.project.records, on("2026-01-01"), options).looks.empty());
}

TEST_CASE("A squawk that was found after the look is no work of it")
{
    Builder builder(1);
    const auto before = builder.back("2026-01-01").looks.back();
    REQUIRE(before.day == on("2025-12-01"));
    const auto fix = [&](std::string_view found) {
        const auto squawk = builder.project.squawk(builder.wing, found);
        builder.project.change(squawk, [](Squawk &s) { s.fixed_on = on("2025-12-20"); });
        const auto work = builder.project.session(builder.wing, "2025-12-20", 100);
        builder.project.change(work, [&](WorkSession &s) { s.squawk_id = squawk; });
    };
    fix("2025-12-10");
    CHECK(builder.back("2026-01-01").looks.back().came == before.came);
    fix("2025-11-30");
    CHECK(builder.back("2026-01-01").looks.back().came == before.came + 100);
}

TEST_CASE("Work on what was left out by choice is not among what came")
{
    Builder builder(1);
    const auto paint = builder.project.part("Paint");
    const auto again = builder.project.session(paint, "2025-12-20", 100);
    builder.project.change(again, [](WorkSession &work) { work.kind = WorkKind::Rework; });
    Options options;
    options.draws = 10;
    const auto came = [&] {
        return lookBack(builder.project.records, on("2026-01-01"), options).looks.back().came;
    };
    const auto all = came();
    options.choice.without = {paint};
    CHECK(came() == all - 100);
}

TEST_CASE("A log that is eight weeks old on the first of a month is looked back at from there")
{
    test::ProjectBuilder project;
    const auto wing = project.part("Wing");
    project.session(wing, "2024-01-05", 60);
    project.step(wing, "Step");
    Options options;
    options.draws = 10;
    const auto told = lookBack(project.records, on("2024-03-20"), options);
    // 2024-01-05 and 56 days.
    REQUIRE(told.looks.size() == 1);
    CHECK(told.looks.front().day == on("2024-03-01"));
}

TEST_CASE("A step that was written down later was not foreseen")
{
    Builder builder(1);
    const auto before = builder.back("2026-01-01");
    // Written down on 2025-06-10, by its id.
    Step late;
    late.id = Id<Step>{(on("2025-06-10").day() - idStart).count() * 86'400 * idsPerSecond + 5};
    late.component_id = builder.wing;
    late.title = "Thought of later";
    builder.project.add(late);
    const auto told = builder.back("2026-01-01");
    REQUIRE(told.looks.size() == before.looks.size());
    for (std::size_t i = 0; i < told.looks.size(); ++i) {
        const bool isKnown = after(told.looks[i].day, on("2025-06-10"));
        CHECK(told.looks[i].steps_left == before.looks[i].steps_left + isKnown);
    }
    // Entered after it was done, it stands for work that was always there.
    for (const auto *done : {"2025-03-05", "2025-06-10"}) {
        builder.project.change(late.id, [&](Step &step) { step.done_on = on(done); });
        CHECK(builder.back("2026-01-01").looks.front().steps_left ==
              before.looks.front().steps_left + 1);
    }
}

TEST_CASE("When nothing is left, the look back knows the day")
{
    const Builder builder(1, 60, 60);
    const auto told = builder.back("2026-01-01");
    CHECK(told.finished_on == builder.project.records.find(builder.steps.back())->done_on);
    CHECK(told.looks.back().day == on("2025-02-01"));
}

TEST_CASE("A log of a few weeks has no past to look at")
{
    test::ProjectBuilder project;
    project.session(project.part("Wing"), "2026-01-05", 60);
    CHECK(lookBack(project.records, on("2026-02-20")).looks.empty());
    CHECK(lookBack(test::ProjectBuilder().records, on("2026-02-20")).looks.empty());
}

TEST_CASE("Ids of documents tell no day")
{
    CHECK_FALSE(dayOfId(355));
    CHECK(dayOfId(idsPerSecond * 86'400 * 365) == on("2026-01-01").day());
}
