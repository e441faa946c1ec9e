// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/Database.h"
#include "core/storage/Opening.h"
#include "core/verify/Verification.h"
#include "tests/bench/Stopwatch.h"
#include "tests/support/ReferenceProject.h"

#include <cstdio>
#include <fmt/format.h>
#include <memory>

using namespace lastrivet;

// Times of storage at the load of ten builders' lifetimes, beside a bare SQLite insert.
namespace {

void report(std::string_view what, double milliseconds)
{
    fmt::print("{:<46} {:10.2f} ms\n", what, milliseconds);
    std::fflush(stdout);
}

void requireDone(const Result<ChangeNotice, Refusal> &result)
{
    if (!result)
        throw Fault(english(result.reason()));
}

void logOne(Project &project)
{
    requireDone(project.change("Log", [](Edit &edit) {
        WorkSession session;
        session.began = edit.now();
        session.minutes = Minutes{45};
        session.note = "Drilled the rear spar and deburred the holes";
        session.component_id = edit.records().components.begin()->id;
        edit.put(session);
    }));
}

void insertOne(storage::Database &bare)
{
    bare.run(
        R"(INSERT INTO "bare" ("text") VALUES ('Drilled the rear spar and deburred the holes'))");
}

/// A month of two people: a hundred entries here, a hundred there.
void reportMerge(const std::filesystem::path &folder, const std::filesystem::path &other)
{
    for (const auto &each : {folder, other}) {
        auto project = Project::open(each, {});
        for (int i = 0; i < 100; ++i)
            logOne(*project);
    }
    auto project = Project::open(folder, {});
    report("merge of a hundred entries into a hundred", bench::medianMilliseconds(1, [&] {
               if (const auto done = project->merge(other); !done)
                   throw Fault(english(done.reason()));
           }));
}

} // namespace

int main()
{
    const lastrivet::TemporaryFolder temporary;
    const auto folder = temporary.path() / "Bench.lastrivet";
    const SystemClock clock;
    std::unique_ptr<Project> project;
    report("import of the reference load", bench::medianMilliseconds(1, [&] {
               project = test::makeReferenceProject(folder, clock);
           }));
    report("undo of the import",
           bench::medianMilliseconds(1, [&] { requireDone(project->undo()); }));
    report("redo of the import",
           bench::medianMilliseconds(1, [&] { requireDone(project->redo()); }));
    report("one log entry", bench::medianMilliseconds(301, [&] { logOne(*project); }));
    storage::Database bare(folder / "records.db", storage::Database::Access::ReadWrite,
                           storage::Database::Safety::WriteAhead);
    bare.run(R"(CREATE TABLE "bare" ("id" INTEGER PRIMARY KEY, "text" TEXT) STRICT)");
    report("one bare insert", bench::medianMilliseconds(301, [&] { insertOne(bare); }));
    bare.run(R"(DROP TABLE "bare")");
    report("search for a common word, first 50",
           bench::medianMilliseconds(101, [&] { (void)project->search("rib s"); }));
    project.reset();
    const auto other = temporary.path() / "Other.lastrivet";
    std::filesystem::copy(folder, other, std::filesystem::copy_options::recursive);
    reportMerge(folder, other);
    report("open", bench::medianMilliseconds(9, [&] { (void)Project::open(folder, {}); }));
    report("verify, without files", bench::medianMilliseconds(3, [&] { (void)verify(folder); }));
    return 0;
}
