// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/hours/Hours.h"
#include "core/answers/HoursJson.h"
#include "tests/support/ProjectBuilder.h"

#include <catch2/catch.hpp>

#include <limits>
#include <sstream>

using namespace lastrivet;
using namespace lastrivet::hours;
using namespace lastrivet::test;

namespace {

Total total(std::int64_t minutes, std::int64_t workerMinutes, std::int64_t sessions)
{
    return {Minutes{minutes}, Minutes{workerMinutes}, sessions};
}

std::vector<std::pair<int, int>> weeksOf(std::initializer_list<std::string_view> days)
{
    ProjectBuilder project;
    for (const auto day : days)
        project.session({}, day, 1);
    std::vector<std::pair<int, int>> weeks;
    for (const auto &row : totals(project.records).weeks)
        weeks.emplace_back(row.year, row.week);
    return weeks;
}

} // namespace

TEST_CASE("Hours add up by part, kind, person, week and month")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto rib = project.part("Rib", wing);
    const auto helper = project.person("Bo", {Role::Helper});
    const auto first = project.session(rib, "2025-12-29T09:00", 100);
    project.change(first, [&](WorkSession &s) {
        s.kind = WorkKind::Fabrication;
        s.workers = {{project.builder}, {helper, Minutes{40}}};
    });
    const auto second = project.session(wing, "2026-01-04", 30);
    project.change(second, [&](WorkSession &s) { s.kind = WorkKind::Rework; });
    project.session({}, "2026-01-05", 20);

    const auto sums = totals(project.records);
    CHECK(sums.total == total(150, 190, 3));
    CHECK(sums.rework == total(30, 30, 1));
    CHECK(sums.unassigned == total(20, 20, 1));
    CHECK(sums.components ==
          std::vector<ComponentHours>{{wing, total(30, 30, 1), total(130, 170, 2)},
                                      {rib, total(100, 140, 1), total(100, 140, 1)}});
    CHECK(sums.kinds == std::vector<KindHours>{{WorkKind::Fabrication, total(100, 140, 1)},
                                               {WorkKind::Rework, total(30, 30, 1)},
                                               {WorkKind::Other, total(20, 20, 1)}});
    CHECK(sums.people ==
          std::vector<PersonHours>{{project.builder, Minutes{150}, 3}, {helper, Minutes{40}, 1}});
    CHECK(sums.weeks == std::vector<WeekHours>{{2026, 1, total(130, 170, 2), Minutes{30}},
                                               {2026, 2, total(20, 20, 1), Minutes{0}}});
    CHECK(sums.months == std::vector<MonthHours>{{2025, 12, total(100, 140, 1), Minutes{0}},
                                                 {2026, 1, total(50, 50, 2), Minutes{30}}});
}

TEST_CASE("A session without workers is the builder's, and of an unknown person without one")
{
    ProjectBuilder project;
    const auto helper = project.person("Bo", {Role::Helper});
    const auto id = project.session({}, "2026-01-05", 20);
    project.change(id, [](WorkSession &s) { s.workers.clear(); });
    CHECK(totals(project.records).people ==
          std::vector<PersonHours>{{project.builder, Minutes{20}, 1}});
    project.records.project.builder_id = {};
    const auto other = project.session({}, "2026-01-05", 5);
    project.change(other, [&](WorkSession &s) { s.workers = {{helper}}; });
    CHECK(totals(project.records).people ==
          std::vector<PersonHours>{{helper, Minutes{5}, 1}, {{}, Minutes{20}, 1}});
}

TEST_CASE("Unknown minutes count as a session of no minutes, but a worker's own are known")
{
    ProjectBuilder project;
    const auto id = project.session({}, "2026-01-05", 20);
    project.change(id, [](WorkSession &s) { s.minutes.reset(); });
    CHECK(totals(project.records).total == total(0, 0, 1));
    project.change(id, [](WorkSession &s) { s.workers[0].minutes = Minutes{15}; });
    CHECK(totals(project.records).total == total(0, 15, 1));
}

TEST_CASE("Absurd minutes add up to the largest number, not to nonsense")
{
    ProjectBuilder project;
    for (int i = 0; i < 1100; ++i)
        project.session({}, "2026-01-05", largestId);
    CHECK(totals(project.records).total.minutes.count() ==
          std::numeric_limits<std::int64_t>::max());
}

TEST_CASE("Withdrawn sessions count nowhere")
{
    ProjectBuilder project;
    project.withdraw(project.session(project.part("Wing"), "2026-01-05", 20));
    CHECK(totals(project.records) == Totals{});
}

// By ISO 8601 the week of a year's first Thursday is its first: 2020 and 2026 have 53.
TEST_CASE("Weeks are those of ISO 8601 around the new year")
{
    using Weeks = std::vector<std::pair<int, int>>;
    CHECK(weeksOf({"2020-12-31", "2021-01-03"}) == Weeks{{2020, 53}});
    CHECK(weeksOf({"2021-01-04", "2021-01-10"}) == Weeks{{2021, 1}});
    CHECK(weeksOf({"2024-12-29", "2024-12-30"}) == Weeks{{2024, 52}, {2025, 1}});
    CHECK(weeksOf({"2025-12-28", "2025-12-29"}) == Weeks{{2025, 52}, {2026, 1}});
    CHECK(weeksOf({"2026-12-31", "2027-01-03", "2027-01-04"}) == Weeks{{2026, 53}, {2027, 1}});
}

TEST_CASE("Hours as JSON name parts and people")
{
    ProjectBuilder project;
    project.session(project.part("Wing"), "2026-01-05", 20);
    std::ostringstream out;
    answers::writeJson(totals(project.records), project.records, out);
    CHECK(
        out.str() ==
        R"({"total":{"minutes":20,"worker_minutes":20,"sessions":1},)"
        R"("rework":{"minutes":0,"worker_minutes":0,"sessions":0},)"
        R"("components":[{"id":2,"name":"Wing","own":{"minutes":20,"worker_minutes":20,"sessions":1},)"
        R"("with_below":{"minutes":20,"worker_minutes":20,"sessions":1}}],)"
        R"("unassigned":{"minutes":0,"worker_minutes":0,"sessions":0},)"
        R"("kinds":[{"kind":"other","minutes":20,"worker_minutes":20,"sessions":1}],)"
        R"("people":[{"id":1,"name":"Ada Plank","worker_minutes":20,"sessions":1}],)"
        R"("weeks":[{"week":"2026-W02","minutes":20,"worker_minutes":20,"sessions":1}],)"
        R"("months":[{"month":"2026-01","minutes":20,"worker_minutes":20,"sessions":1}]})"
        "\n");
}

TEST_CASE("The rework of a week and of a month is that of all who did it")
{
    ProjectBuilder project;
    const auto helper = project.person("Bo", {Role::Helper});
    const auto id = project.session({}, "2026-01-05", 60);
    project.change(id, [&](WorkSession &s) {
        s.kind = WorkKind::Rework;
        s.workers = {{project.builder}, {helper, Minutes{20}}};
    });
    const auto sums = totals(project.records);
    CHECK(sums.rework == total(60, 80, 1));
    CHECK(sums.weeks == std::vector<WeekHours>{{2026, 2, total(60, 80, 1), Minutes{80}}});
    CHECK(sums.months == std::vector<MonthHours>{{2026, 1, total(60, 80, 1), Minutes{80}}});
}

TEST_CASE("Work on a part that was taken back is of no part, and still work")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto rib = project.part("Rib", wing);
    project.session(rib, "2026-01-05", 20);
    project.withdraw(rib);
    const auto sums = totals(project.records);
    CHECK(sums.components.empty());
    CHECK(sums.unassigned == total(20, 20, 1));
    CHECK(sums.total == total(20, 20, 1));
}
