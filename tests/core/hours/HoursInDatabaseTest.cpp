// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/hours/Hours.h"
#include "core/project/Project.h"
#include "core/records/Description.h"
#include "tests/support/ProjectBuilder.h"
#include "tests/support/TemporaryFolder.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>

#include <cstdio>
#include <memory>
#include <random>

using namespace lastrivet;
using namespace lastrivet::test;

namespace {

/// What SQLite's own command-line program answers, one line per row.
std::string sqlite3(const std::filesystem::path &database, const std::string &query)
{
    const auto command = fmt::format("sqlite3 -readonly '{}' \"{}\"", database.string(), query);
    const std::unique_ptr<FILE, int (*)(FILE *)> pipe{::popen(command.c_str(), "r"), ::pclose};
    std::string answer;
    for (int c = std::fgetc(pipe.get()); c != EOF; c = std::fgetc(pipe.get()))
        answer += char(c);
    return answer;
}

ProjectBuilder randomLog()
{
    std::mt19937 random(11);
    ProjectBuilder project;
    std::vector<Id<Component>> parts{{}, project.part("Wing")};
    for (int i = 0; i < 20; ++i)
        parts.push_back(
            project.part(fmt::format("Part {}", i), parts[1 + random() % (parts.size() - 1)]));
    const auto helper = project.person("Bo", {Role::Helper});
    for (int i = 0; i < 300; ++i) {
        const auto day = on("2024-12-20").plusDays(std::int64_t(random() % 400));
        const auto id =
            project.session(parts[random() % parts.size()], day->text(), 1 + random() % 300);
        project.change(id, [&](WorkSession &s) {
            s.kind = WorkKind(random() % Words<WorkKind>::list.size());
            if (random() % 3 == 0)
                s.workers.push_back({helper, Minutes{1}});
            if (random() % 10 == 0)
                s.workers.clear();
        });
        if (random() % 20 == 0)
            project.withdraw(id);
    }
    return project;
}

/// `sum` over the live log, with the minutes of those who worked as `worked`.
std::string select(std::string_view what, std::string_view rest = {})
{
    return fmt::format(
        "SELECT {} FROM (SELECT s.*, CASE WHEN count(w.person_id) = 0 THEN coalesce(s.minutes, 0) "
        "ELSE sum(coalesce(w.minutes, s.minutes, 0)) END AS worked FROM work_session s "
        "LEFT JOIN work_session_workers w ON w.work_session_id = s.id "
        "WHERE s.withdrawn_on IS NULL GROUP BY s.id) {}",
        what, rest);
}

std::string line(const hours::Total &total)
{
    return fmt::format("{}|{}|{}\n", total.minutes.count(), total.worker_minutes.count(),
                       total.sessions);
}

constexpr const char *sums = "sum(minutes), sum(worked), count(*)";

} // namespace

// The independent sums are those of the sqlite3 command-line program over the project's database.
TEST_CASE("Hours agree with SQL sums over the database of the project")
{
    const auto log = randomLog();
    const test::TemporaryFolder folder;
    const auto project = Project::create(folder / "Log.lastrivet",
                                         {.name = "Log", .profile = "plain"}, log.profile, {});
    REQUIRE(project->change("Log", [&](Edit &edit) {
        for (std::size_t i = std::size_t(RecordType::Person); i < recordTypeCount; ++i) {
            const auto &table = log.records.table(RecordType(i));
            const auto &description = describe(RecordType(i));
            for (const void *row = table.nextAny(0); row;
                 row = table.nextAny(idOf(description, row)))
                edit.putAny(RecordType(i), row);
        }
        auto facts = edit.records().project;
        facts.builder_id = log.builder;
        edit.put(facts);
    }));
    const auto totals = hours::totals(*project->records());
    const auto database = folder / "Log.lastrivet/records.db";
    REQUIRE(totals.total.sessions > 200);
    CHECK(sqlite3(database, select(sums)) == line(totals.total));
    CHECK(sqlite3(database, select(sums, "WHERE kind = 'rework'")) == line(totals.rework));
    CHECK(sqlite3(database, select(sums, "WHERE component_id IS NULL")) == line(totals.unassigned));

    std::string months;
    for (const auto &month : totals.months)
        months += fmt::format("{:04}-{:02}|", month.year, month.month) + line(month.total);
    CHECK(sqlite3(database, select(fmt::format("substr(began, 1, 7) AS month, {}", sums),
                                   "GROUP BY month ORDER BY month")) == months);
    std::string own;
    for (const auto &part : totals.components) {
        if (part.own.sessions > 0)
            own += fmt::format("{}|", part.id.value()) + line(part.own);
    }
    CHECK(sqlite3(database, select(fmt::format("component_id, {}", sums),
                                   "WHERE component_id NOT NULL GROUP BY component_id "
                                   "ORDER BY component_id")) == own);
    std::string withBelow;
    for (const auto &part : totals.components)
        withBelow += fmt::format("{}|", part.id.value()) + line(part.with_below);
    const auto below =
        "WITH RECURSIVE below(top, id) AS (SELECT id, id FROM component UNION ALL "
        "SELECT top, c.id FROM below JOIN component c ON c.parent_id = below.id) " +
        select(fmt::format("top, {}", sums),
               "AS s JOIN below ON below.id = s.component_id GROUP BY top ORDER BY top");
    CHECK(sqlite3(database, below) == withBelow);
}
