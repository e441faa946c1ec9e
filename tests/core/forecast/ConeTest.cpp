// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/Cone.h"
#include "tests/support/ProjectBuilder.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::forecast;
using test::on;

namespace {

/// Steps of ten hours each, and half a year of weeks with more and less work.
struct Builder {
    test::ProjectBuilder project;
    Id<Component> wing = project.part("Wing");

    explicit Builder(int steps)
    {
        for (int i = 0; i < steps; ++i) {
            const auto id = project.step(wing, "Step");
            project.change(id, [](Step &step) { step.estimate_minutes = Minutes{600}; });
        }
        auto day = on("2025-12-01");
        for (int week = 0; week < 26; ++week, day = *day.plusDays(7))
            project.session(wing, day.text(), 120 + 60 * (week % 5));
    }
};

} // namespace

TEST_CASE("The cone begins with nothing, only grows, and ends at the hours to go")
{
    Builder builder(20);
    const Options options;
    const auto told = forecast::forecast(builder.project.records, on("2026-06-01"), options);
    REQUIRE(told.finish);
    const auto points = cone(pastWork(builder.project.records, told.as_of), told, options);
    REQUIRE(points.size() > 10);
    CHECK(points.size() <= 42);
    CHECK(points.front().day == on("2026-06-01"));
    CHECK(points.front().minutes == Range<std::int64_t>{0, 0, 0, 0});
    for (std::size_t i = 1; i < points.size(); ++i) {
        CHECK(points[i].minutes.p10 >= points[i - 1].minutes.p10);
        CHECK(points[i].minutes.p90 >= points[i - 1].minutes.p90);
        CHECK(points[i].minutes.p10 <= points[i].minutes.p50);
        CHECK(points[i].minutes.p50 <= points[i].minutes.p90);
    }
    // The shortest futures are over by then; the longest are not yet.
    CHECK(points.back().minutes.p10 == told.minutes_to_go.p10);
    CHECK(points.back().minutes.p90 <= told.minutes_to_go.p90);
    CHECK_FALSE(after(told.finish->p90, points.back().day));
}

TEST_CASE("A steady pace makes a straight line until the work is done")
{
    Builder builder(5);
    Options options;
    options.hours_per_week = 10;
    const auto told = forecast::forecast(builder.project.records, on("2026-06-01"), options);
    const auto points = cone(pastWork(builder.project.records, told.as_of), told, options);
    REQUIRE(points.size() > 2);
    CHECK(points[1].minutes == Range<std::int64_t>{600, 600, 600, 600});
    CHECK(points[1].day == on("2026-06-08"));
}

TEST_CASE("Without a finish there is no cone")
{
    test::ProjectBuilder project;
    project.step(project.part("Wing"), "Step");
    const auto told = forecast::forecast(project.records, on("2026-06-01"));
    REQUIRE_FALSE(told.finish);
    CHECK(cone(pastWork(project.records, told.as_of), told, {}).empty());
}
