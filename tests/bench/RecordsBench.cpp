// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
// Measures the core beside a yardstick in the same run and prints ratios; see README of this folder
// for what the goals are. Usage: records_bench [FACTOR] (1 is ten builders' lifetimes).
#include "core/profiles/ProfileLibrary.h"
#include "core/project/Project.h"
#include "core/readiness/Readiness.h"
#include "core/records/Description.h"
#include "tests/bench/Stopwatch.h"
#include "tests/support/ReferenceLoad.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>

#include <charconv>
#include <cstring>
#include <filesystem>

using namespace lastrivet;
using namespace lastrivet::bench;

namespace {

namespace fs = std::filesystem;

/// Every open squawk of every closing whose reach it meets: one of the twenty-eight rules, in SQL.
constexpr const char *openSquawkQuery = R"sql(
WITH RECURSIVE above(part, ancestor) AS (
    SELECT id, id FROM component WHERE withdrawn_on IS NULL
    UNION ALL
    SELECT above.part, c.parent_id FROM above JOIN component c ON c.id = above.ancestor
    WHERE c.parent_id IS NOT NULL)
SELECT e.closing_id, s.id
FROM squawk s
JOIN above ON above.part = s.component_id
JOIN closing_encloses e ON e.item = above.ancestor
JOIN closing c ON c.id = e.closing_id AND c.withdrawn_on IS NULL
WHERE s.withdrawn_on IS NULL AND s.found_on <= '2026-11-25'
  AND (s.verified_on IS NULL OR s.verified_on > '2026-11-25')
  AND (s.accepted_on IS NULL OR s.accepted_on > '2026-11-25')
  AND s.id NOT IN (SELECT squawk_id FROM squawk_needs_access_to)
)sql";

std::int64_t countRows(SQLite::Database &database, const std::string &sql)
{
    SQLite::Statement query(database, sql);
    std::int64_t rows = 0;
    while (query.executeStep())
        ++rows;
    return rows;
}

void report(std::string_view what, double ours, double yardstick, std::string_view goal)
{
    const auto ratio = yardstick > 0 ? fmt::format("{:.2f}", ours / yardstick) : std::string("–");
    fmt::print("{:<46} {:>10.3f} ms {:>10.3f} ms  ratio {:>6}  goal {}\n", what, ours, yardstick,
               ratio, goal);
}

Profile plainProfile()
{
    return ProfileLibrary::standard().profile("plain");
}

void fill(Project &project, const Records &records)
{
    const auto filled = project.change(
        "Reference load",
        [&](Edit &edit) {
            for (std::size_t t = 1; t < recordTypeCount; ++t) {
                const auto &table = records.table(RecordType(t));
                const auto &description = describe(RecordType(t));
                for (const void *row = table.nextAny(0); row;
                     row = table.nextAny(idOf(description, row)))
                    edit.putAny(RecordType(t), row);
            }
            ProjectFacts facts = edit.records().project;
            facts.builder_id = records.project.builder_id;
            edit.put(facts);
        },
        ChangeKind::Import);
    if (!filled)
        throw std::runtime_error(english(filled.reason()));
}

/// A bare insert of one row with the settings that the project uses.
double bareInsert(const fs::path &folder)
{
    SQLite::Database database((folder / "bare.db").string(),
                              SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    database.exec("PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL;"
                  "CREATE TABLE entry (id INTEGER PRIMARY KEY, began TEXT, minutes INTEGER, note "
                  "TEXT) STRICT");
    SQLite::Statement insert(database, "INSERT INTO entry(began, minutes, note) VALUES "
                                       "('2026-11-25T19:00', 45, 'Deburred the ribs')");
    return medianMilliseconds(200, [&] {
        insert.exec();
        insert.reset();
    });
}

double logEntry(Project &project)
{
    const Id<Component> part = project.records()->components.begin()->id;
    return medianMilliseconds(200, [&] {
        const auto changed = project.change("Work logged", [&](Edit &edit) {
            WorkSession session;
            session.began = *Moment::parse("2026-11-25T19:00");
            session.minutes = Minutes{45};
            session.component_id = part;
            session.note = "Deburred the ribs";
            edit.put(session);
        });
        if (!changed)
            throw std::runtime_error(english(changed.reason()));
    });
}

void measure(const fs::path &folder, std::size_t factor)
{
    const SystemClock clock;
    test::ProjectBuilder builder;
    test::fillReferenceLoad(builder, 1, test::LoadSize{}.times(factor));
    ProjectFacts facts;
    facts.name = "Load";
    facts.profile = "plain";
    const fs::path path = folder / "Load.lastrivet";
    auto project = Project::create(path, facts, plainProfile(), {&clock, {}, false});
    report("fill the project, all rows",
           medianMilliseconds(1, [&] { fill(*project, builder.records); }), 0, "–");
    project.reset();
    report("open the project",
           medianMilliseconds(5,
                              [&] {
                                  project.reset();
                                  project = Project::open(path, {&clock, {}, false});
                              }),
           0, "–");

    SQLite::Database database((path / "records.db").string(), SQLite::OPEN_READONLY);
    const Moment today = *Moment::parse("2026-11-25");
    const double query = medianMilliseconds(5, [&] { countRows(database, openSquawkQuery); });
    const Snapshot records = project->records();
    report(
        "full readiness : SQL query of one rule",
        medianMilliseconds(5, [&] { readiness::readiness(*records, project->profile(), today); }),
        query, "1.0");
    report("search, two words : same FTS5 query",
           medianMilliseconds(50, [&] { project->search("deburr pri"); }),
           medianMilliseconds(
               50,
               [&] {
                   countRows(database, "SELECT rowid FROM search WHERE search MATCH "
                                       "'\"deburr\" AND \"pri\" *' ORDER BY rowid DESC LIMIT 50");
               }),
           "1.2");
    report("log entry : bare insert, both durable", logEntry(*project), bareInsert(folder), "1.5");
}

} // namespace

int main(int argc, char **argv)
{
    std::size_t factor = 1;
    if (argc > 1)
        std::from_chars(argv[1], argv[1] + std::strlen(argv[1]), factor);
    const fs::path folder = fs::temp_directory_path() / fmt::format("lastrivet-bench-{}", factor);
    fs::remove_all(folder);
    fs::create_directories(folder);
    measure(folder, factor);
    fs::remove_all(folder);
    return 0;
}
