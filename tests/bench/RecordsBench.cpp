// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
// Measures the core beside a yardstick in the same run and prints ratios: records_bench [FACTOR
// [FOLDER]]. 1 is ten builders' lifetimes; the project stays in FOLDER when that is given.
#include "core/base/TemporaryFolder.h"
#include "core/readiness/Readiness.h"
#include "tests/bench/Stopwatch.h"
#include "tests/support/ReferenceProject.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>

#include <charconv>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <memory>
#include <string>

using namespace lastrivet;
using namespace lastrivet::bench;

namespace {

namespace fs = std::filesystem;

/// One of the rules of readiness, for `sqlite3` as well.
std::string openSquawkQuery()
{
    std::ifstream file(LASTRIVET_OPEN_SQUAWK_QUERY);
    return {std::istreambuf_iterator<char>(file), {}};
}

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
    const fs::path path = folder / "Load.lastrivet";
    std::unique_ptr<Project> project;
    report(
        "make the project, all rows",
        medianMilliseconds(1, [&] { project = test::makeReferenceProject(path, clock, factor); }),
        0, "–");
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
    const double query = medianMilliseconds(5, [&] { countRows(database, openSquawkQuery()); });
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
                   countRows(database, "SELECT rowid, title, snippet(search, -1, '', '', '…', 12) "
                                       "FROM search WHERE search MATCH "
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
    if (argc > 2) {
        measure(argv[2], factor);
        return 0;
    }
    const lastrivet::TemporaryFolder temporary;
    measure(temporary.path(), factor);
    return 0;
}
