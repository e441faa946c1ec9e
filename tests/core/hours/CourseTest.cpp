// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/hours/Course.h"
#include "tests/support/ProjectBuilder.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::hours;
using namespace lastrivet::test;

namespace {

CoursePoint point(std::string_view day, std::int64_t done, std::int64_t rework)
{
    return {on(day).day(), Minutes{done}, Minutes{rework}};
}

} // namespace

TEST_CASE("The hours grow week by week, weeks without work included, up to the day itself")
{
    ProjectBuilder project;
    const auto part = project.part("Wing");
    // 2026-03-02 is a Monday, 2026-03-08 a Sunday.
    project.session(part, "2026-03-08T20:00", 60);
    const auto again = project.session(part, "2026-03-16", 30);
    project.change(again, [](WorkSession &work) { work.kind = WorkKind::Rework; });
    project.session(part, "2026-03-19", 500);
    CHECK(course(project.records, on("2026-03-18")) ==
          std::vector<CoursePoint>{point("2026-03-01", 0, 0), point("2026-03-08", 60, 0),
                                   point("2026-03-15", 60, 0), point("2026-03-18", 90, 30)});
    CHECK(course(project.records, on("2026-03-22")).back() == point("2026-03-22", 590, 30));
}

TEST_CASE("Without a log entry there is no course")
{
    const ProjectBuilder project;
    CHECK(course(project.records, on("2026-03-18")).empty());
}

TEST_CASE("A week begins on Monday, also before 1970")
{
    CHECK(mondayOf(on("2026-03-08").day()) == on("2026-03-02").day());
    CHECK(mondayOf(on("2026-03-09").day()) == on("2026-03-09").day());
    // ISO 8601 names 1969-12-29, a Monday, as the beginning of the first week of 1970.
    CHECK(mondayOf(on("1970-01-01").day()) == on("1969-12-29").day());
    CHECK(mondayOf(on("1969-12-28").day()) == on("1969-12-22").day());
}

TEST_CASE("What was done on the Monday itself stands in the course of that day")
{
    ProjectBuilder project;
    const auto part = project.part("Wing");
    project.session(part, "2026-03-10", 60);
    project.session(part, "2026-03-16", 30);
    CHECK(course(project.records, on("2026-03-16")) ==
          std::vector<CoursePoint>{point("2026-03-08", 0, 0), point("2026-03-15", 60, 0),
                                   point("2026-03-16", 90, 0)});
}
