// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/Forecast.h"
#include "core/forecast/Futures.h"
#include "core/forecast/Quantile.h"
#include "tests/support/ProjectBuilder.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <cstdint>
#include <random>
#include <vector>

using namespace lastrivet;
using namespace lastrivet::forecast;
using test::on;

namespace {

/// A project of steps of an hour's estimate each, some of them done by log entries.
class Steps {
public:
    Steps()
        : wing(project.part("Wing"))
    {
    }

    Id<Step> step(std::int64_t estimate)
    {
        const auto id = project.step(wing, "Step");
        project.change(id, [&](Step &step) { step.estimate_minutes = Minutes{estimate}; });
        return id;
    }
    void finish(Id<Step> id, std::string_view day, std::int64_t minutes)
    {
        const auto session = project.session(wing, day, minutes);
        project.change(session, [&](WorkSession &work) { work.step_id = id; });
        project.change(id, [&](Step &step) { step.done_on = on(day); });
    }

    test::ProjectBuilder project;
    Id<Component> wing;
};

/// The share of Student's t distribution with four degrees of freedom below t; in closed form.
double shareOfT4(double t)
{
    const double r = 1 + t * t / 4;
    return 0.5 + 3.0 / 8 * t / std::sqrt(r) * (1 - t * t / (12 * r));
}

} // namespace

TEST_CASE("What finished steps took moves the posterior as the normal-inverse-gamma rule says")
{
    const auto none = posteriorOf({});
    CHECK(none.mean == 0.2);
    // Worked by hand: n = 2, mean 0.5, sum of squares 0.02.
    const auto two = posteriorOf({0.4, 0.6});
    CHECK(two.weight == 4);
    CHECK(two.mean == Approx((2 * 0.2 + 2 * 0.5) / 4));
    CHECK(two.shape == 3);
    CHECK(two.scale == Approx(0.25 + 0.01 + 2 * 2 * 0.09 / (2 * 4)));
}

TEST_CASE("One step without any history is spread as Student's t says")
{
    Steps steps;
    steps.step(1'000'000);
    forecast::Options options;
    options.draws = 40'000;
    const auto told = forecast::forecast(steps.project.records, on("2026-06-01"), options);
    // ln(actual / estimate) is t with 2 a0 = 4 degrees of freedom around m0, of scale
    // sqrt(b0 (k0 + 1) / (a0 k0)); rework of 8 % adds its mean and hardly any spread.
    const double scale = std::sqrt(0.25 * 3 / (2 * 2));
    const auto shareBelow = [&](std::int64_t minutes) {
        return shareOfT4((std::log(double(minutes) / 1'000'000 / 1.08) - 0.2) / scale);
    };
    CHECK(shareBelow(told.minutes_to_go.p10) == Approx(0.10).margin(0.01));
    CHECK(shareBelow(told.minutes_to_go.p50) == Approx(0.50).margin(0.015));
    CHECK(shareBelow(told.minutes_to_go.p80) == Approx(0.80).margin(0.01));
    CHECK(shareBelow(told.minutes_to_go.p90) == Approx(0.90).margin(0.01));
    CHECK(told.needs_hours_per_week);
    CHECK_FALSE(told.finish);
}

TEST_CASE("Many steps drawn as one number spread like those drawn one by one")
{
    const auto spread = [](int count) {
        Steps steps;
        for (int i = 0; i < count; ++i)
            steps.step(2400 / count);
        return forecast::forecast(steps.project.records, on("2026-06-01")).minutes_to_go;
    };
    const auto few = spread(40);
    const auto many = spread(48);
    CHECK(double(many.p50) == Approx(double(few.p50)).epsilon(0.04));
    CHECK(double(many.p90) == Approx(double(few.p90)).epsilon(0.06));
}

TEST_CASE("The same seed gives the same answer, another seed nearly the same")
{
    Steps steps;
    for (int i = 0; i < 20; ++i)
        steps.step(60 + i);
    const auto told = [&](std::uint64_t seed) {
        forecast::Options options;
        options.seed = seed;
        return forecast::forecast(steps.project.records, on("2026-06-01"), options).minutes_to_go;
    };
    CHECK(told(7) == told(7));
    CHECK_FALSE(told(7) == told(8));
    CHECK(double(told(7).p50) == Approx(double(told(8).p50)).epsilon(0.05));
}

TEST_CASE("What is left, what was guessed, and what was left out by choice is told")
{
    Steps steps;
    const auto first = steps.step(60);
    steps.finish(first, "2026-03-02", 90);
    steps.step(100);
    auto &project = steps.project;
    project.step(steps.wing, "Without estimate");
    const auto dropped = steps.step(50);
    project.change(dropped, [](Step &step) { step.dropped_on = on("2026-03-01"); });
    const auto paint = project.part("Paint");
    project.step(paint, "Sand");
    const auto squawk = project.squawk(steps.wing, "2026-03-01");
    project.change(squawk, [](Squawk &found) { found.estimate_minutes = Minutes{30}; });
    project.squawk(steps.wing, "2026-03-01");
    const auto fixed = project.squawk(steps.wing, "2026-03-01");
    project.change(fixed, [](Squawk &found) { found.fixed_on = on("2026-03-03"); });
    const auto left = workLeft(project.records, on("2026-04-01"), {.without = {paint}});
    CHECK(left.steps == 2);
    CHECK(left.guessed_estimates == 1);
    CHECK(left.squawks == 2);
    CHECK(left.squawks_without_estimate == 1);
    CHECK(left.excluded_steps == 1);
    REQUIRE(left.assemblies.size() == 1);
    // The one without an estimate takes what the finished one took.
    CHECK(left.assemblies.front().steps == std::vector<double>{100, 90});
    CHECK(left.assemblies.front().squawks == 30);
    CHECK(workLeft(project.records, on("2026-03-01"), {}).squawks == 3);
}

TEST_CASE("Parts may nest as deep as they like, and lie where they lie in any order")
{
    // With a walk to the top for each, this many took a quarter of a minute.
    constexpr std::size_t depth = 20'000;
    test::ProjectBuilder project;
    std::vector<Id<Component>> parts;
    for (std::size_t i = 0; i < depth; ++i)
        parts.push_back(project.part("Part", parts.empty() ? Id<Component>{} : parts.back()));
    const auto tail = project.part("Tail");
    for (auto part = parts.rbegin(); part != parts.rend(); ++part)
        project.step(*part, "Step");
    project.step(tail, "Step");
    project.step({}, "Step");
    const auto all = workLeft(project.records, on("2026-03-01"), {});
    REQUIRE(all.assemblies.size() == 3);
    CHECK(all.assemblies[0].steps.size() == 1);
    CHECK(all.assemblies[1].assembly == parts.front());
    CHECK(all.assemblies[1].steps.size() == depth);
    CHECK(all.assemblies[2].assembly == tail);
    const auto some = workLeft(project.records, on("2026-03-01"), {.without = {parts[depth / 2]}});
    CHECK(some.excluded_steps == std::int64_t(depth / 2));
    CHECK(some.steps == std::int64_t(depth / 2 + 2));
}

TEST_CASE("What stands in for an estimate is finished steps, else other estimates, else two hours")
{
    Steps steps;
    steps.project.step(steps.wing, "Without estimate");
    const auto left = [&] { return workLeft(steps.project.records, on("2026-04-01"), {}); };
    CHECK(left().stand_in == StandIn::TwoHours);
    CHECK(left().assemblies.front().steps == std::vector<double>{120});
    const auto estimated = steps.step(60);
    CHECK(left().stand_in == StandIn::Estimates);
    CHECK(left().assemblies.front().steps == std::vector<double>{60, 60});
    steps.finish(estimated, "2026-03-02", 90);
    CHECK(left().stand_in == StandIn::FinishedSteps);
    CHECK(left().assemblies.front().steps == std::vector<double>{90});
}

TEST_CASE("Only finished steps stand in for an estimate, of two the middle between them")
{
    Steps steps;
    const auto begun = steps.step(60);
    const auto session = steps.project.session(steps.wing, "2026-03-01", 5000);
    steps.project.change(session, [&](WorkSession &work) { work.step_id = begun; });
    steps.finish(steps.step(60), "2026-03-02", 90);
    steps.finish(steps.step(60), "2026-03-03", 110);
    steps.project.step(steps.wing, "Without estimate");
    const auto left = workLeft(steps.project.records, on("2026-04-01"), {});
    CHECK(left.assemblies.front().steps == std::vector<double>{60, 100});
}

TEST_CASE("A squawk is left from the day it was found until it is fixed or accepted")
{
    Steps steps;
    const auto squawk = steps.project.squawk(steps.wing, "2026-03-05");
    const auto left = [&](std::string_view day) {
        return workLeft(steps.project.records, on(day), {}).squawks;
    };
    CHECK(left("2026-03-04") == 0);
    CHECK(left("2026-03-05") == 1);
    steps.project.change(squawk, [](Squawk &found) { found.accepted_on = on("2026-03-08"); });
    CHECK(left("2026-03-07") == 1);
    CHECK(left("2026-03-08") == 0);
}

TEST_CASE("What is left out by choice takes all that lies in it along, at any depth")
{
    Steps steps;
    auto &project = steps.project;
    const auto tip = project.part("Tip", steps.wing);
    const auto fairing = project.part("Fairing", tip);
    project.step(fairing, "Sand");
    steps.step(60);
    const auto left = workLeft(project.records, on("2026-04-01"), {.without = {tip}});
    CHECK(left.steps == 1);
    CHECK(left.excluded_steps == 1);
}

TEST_CASE("The newest weeks can come again like the oldest")
{
    // Work in the last of eight weeks only: who never drew that one would never be done. Five times
    // it has to come, once in four weeks at most, and it may be the first of its four.
    const std::vector<AssemblyWork> work{{Id<Component>{1}, {}, 300}};
    Futures futures({}, work, {0, 0, 0, 0, 0, 0, 0, 60}, 3);
    futures.next();
    REQUIRE(futures.length());
    CHECK(*futures.length() >= 17);
}

TEST_CASE("Work without a spread is done on the day on which its last minute falls")
{
    Steps steps;
    const auto squawk = steps.project.squawk(steps.wing, "2026-05-20");
    const auto finish = [&](std::int64_t minutes) {
        steps.project.change(squawk,
                             [&](Squawk &found) { found.estimate_minutes = Minutes{minutes}; });
        forecast::Options options;
        options.hours_per_week = 10;
        return forecast::forecast(steps.project.records, on("2026-06-01"), options).finish->p50;
    };
    // 600 minutes a week: 630 are seven days and a third.
    CHECK(finish(600) == on("2026-06-08"));
    CHECK(finish(630) == on("2026-06-09"));
}

TEST_CASE("A log without work lately asks for hours a week, and so does no log that is long")
{
    Steps steps;
    steps.step(600);
    const auto told = [&](std::string_view day) {
        return forecast::forecast(steps.project.records, on(day));
    };
    CHECK(told("2026-06-01").needs_hours_per_week);
    CHECK(told("2026-06-01").idle_weeks == 0);
    steps.project.session(steps.wing, "2025-06-02", 600);
    CHECK(told("2026-06-01").needs_hours_per_week);
    CHECK(told("2026-06-01").idle_weeks == 26);
    CHECK_FALSE(told("2025-08-04").needs_hours_per_week);
    CHECK(told("2025-08-04").idle_weeks == 0);
}

TEST_CASE("With nothing left to do nobody is asked for hours a week, and there is no finish")
{
    Steps steps;
    CHECK_FALSE(forecast::forecast(steps.project.records, on("2026-06-01")).needs_hours_per_week);
    steps.finish(steps.step(60), "2026-01-05", 90);
    steps.project.session(steps.wing, "2026-05-20", 60);
    const auto told = forecast::forecast(steps.project.records, on("2026-06-01"));
    CHECK(told.work_left.isNothing());
    CHECK_FALSE(told.needs_hours_per_week);
    CHECK_FALSE(told.finish);
    const auto squawk = steps.project.squawk(steps.wing, "2026-05-20");
    const auto found = forecast::forecast(steps.project.records, on("2026-06-01"));
    CHECK_FALSE(found.work_left.isNothing());
    CHECK_FALSE(found.finish);
    steps.project.change(squawk, [](Squawk &known) { known.estimate_minutes = Minutes{30}; });
    CHECK(forecast::forecast(steps.project.records, on("2026-06-01")).finish);
}

TEST_CASE("The pace is that of weeks that are over, with their zeros, at most 26")
{
    test::ProjectBuilder project;
    const auto part = project.part("Wing");
    // Monday 2026-03-02; the week of the 9th is empty; the 18th is in the running week.
    project.session(part, "2026-03-02", 100);
    project.session(part, "2026-03-08", 20);
    project.session(part, "2026-03-18", 500);
    CHECK(pastWork(project.records, on("2026-03-20")).weeks == std::vector<double>{120, 0});
    CHECK(pastWork(project.records, on("2026-03-23")).weeks == std::vector<double>{120, 0, 500});
    CHECK(pastWork(project.records, on("2027-03-01")).weeks.size() == 26);
}

TEST_CASE("A steady pace ends when the hours are done")
{
    Steps steps;
    steps.step(600);
    forecast::Options options;
    options.hours_per_week = 10;
    const auto told = forecast::forecast(steps.project.records, on("2026-06-01"), options);
    REQUIRE(told.finish);
    const auto weeks = [&](std::int64_t minutes) {
        return on("2026-06-01").plusDays(std::int64_t(std::ceil(double(minutes) / 600 * 7)));
    };
    CHECK(std::abs((told.finish->p50.day() - weeks(told.minutes_to_go.p50)->day()).count()) <= 1);
    CHECK(std::abs((told.finish->p90.day() - weeks(told.minutes_to_go.p90)->day()).count()) <= 1);
    CHECK_FALSE(told.needs_hours_per_week);
}

TEST_CASE("Shares of the spread add up to one, and the larger and wilder part carries more")
{
    Steps steps;
    steps.step(100);
    const auto tail = steps.project.part("Tail");
    for (int i = 0; i < 4; ++i) {
        const auto id = steps.project.step(tail, "Step");
        steps.project.change(id, [](Step &step) { step.estimate_minutes = Minutes{2000}; });
    }
    const auto told = forecast::forecast(steps.project.records, on("2026-06-01"));
    REQUIRE(told.assemblies.size() == 2);
    CHECK(told.assemblies[0].share_of_spread + told.assemblies[1].share_of_spread == Approx(1));
    CHECK(told.assemblies[1].share_of_spread > 0.9);
}

TEST_CASE("Over five hundred made-up builders the ranges hold as often as they say")
{
    std::mt19937_64 random(20260601);
    std::normal_distribution<double> normal;
    std::gamma_distribution<double> precision(2, 1 / 0.25);
    std::gamma_distribution<double> rework(8, 1.0 / 100);
    int belowP80 = 0;
    int belowP50 = 0;
    constexpr int builders = 500;
    for (int i = 0; i < builders; ++i) {
        const double variance = 1 / precision(random);
        const double mean = 0.2 + std::sqrt(variance / 2) * normal(random);
        const auto factor = [&] { return std::exp(mean + std::sqrt(variance) * normal(random)); };
        const double again = rework(random);
        Steps steps;
        double other = 0;
        for (int done = 0; done < 12; ++done) {
            const auto id = steps.step(1000);
            const auto took = std::max<std::int64_t>(1, std::llround(1000 * factor()));
            steps.finish(id, "2026-03-02", took);
            other += double(took);
        }
        const auto mended = steps.project.session(
            steps.wing, "2026-03-03", std::max<std::int64_t>(1, std::llround(again * other)));
        steps.project.change(mended, [](WorkSession &work) { work.kind = WorkKind::Rework; });
        double truth = 0;
        for (int left = 0; left < 15; ++left) {
            steps.step(1000);
            truth += 1000 * factor();
        }
        truth *= 1 + again;
        forecast::Options options;
        options.seed = std::uint64_t(i);
        options.draws = 1000;
        const auto told =
            forecast::forecast(steps.project.records, on("2026-06-01"), options).minutes_to_go;
        belowP80 += truth <= double(told.p80);
        belowP50 += truth <= double(told.p50);
    }
    CHECK(belowP80 >= 0.74 * builders);
    CHECK(belowP80 <= 0.86 * builders);
    CHECK(belowP50 >= 0.44 * builders);
    CHECK(belowP50 <= 0.56 * builders);
}
