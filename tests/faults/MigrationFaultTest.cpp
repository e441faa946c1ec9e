// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Error.h"
#include "core/storage/Integrity.h"
#include "core/storage/Migration.h"
#include "core/storage/Schema.h"
#include "tests/faults/Report.h"
#include "tests/faults/Worker.h"
#include "tests/faults/disk/Disk.h"
#include "tests/faults/disk/Medium.h"
#include "tests/support/EarlierProject.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <cerrno>
#include <random>

using namespace lastrivet;
using namespace lastrivet::faults;

namespace {

namespace fs = std::filesystem;

constexpr int parts = 40;
constexpr std::string_view rewriting = R"(UPDATE "component" SET "note"='Shelf 3';)";

/// A project of an earlier schema with a few parts; it is migrated in copies of its folder.
class Earlier {
public:
    Earlier()
    {
        for (int i = 1; i <= parts; ++i)
            m_project.change("Part", fmt::format(R"(INSERT INTO "component" ("id","name","kind")
                                       VALUES ({},'Rib','part'))",
                                                 i));
        m_steps = m_project.stepsWith(std::string(rewriting));
    }

    /// Copies it into an empty folder.
    void copyTo(const fs::path &site) const
    {
        fs::copy(m_project.folder().root(), site / name, fs::copy_options::recursive);
    }
    void migrate(const fs::path &site) const
    {
        auto database = open(site);
        storage::migrate(database, storage::ProjectFolder(site / name), {}, m_steps);
    }
    /// Nothing is half, nothing is gone, and the migration can be done or is done. Answers whether
    /// it was done.
    bool requireWhole(const fs::path &site) const
    {
        bool wasDone = false;
        {
            auto database = open(site);
            REQUIRE(storage::damagesOf(database).empty());
            REQUIRE(database.number(R"(SELECT count(*) FROM "component")") == parts);
            wasDone = storage::schemaOf(database) == test::EarlierProject::lastSchema();
            REQUIRE(rewritten(database) == (wasDone ? parts : 0));
        }
        migrate(site);
        auto database = open(site);
        REQUIRE(rewritten(database) == parts);
        REQUIRE(storage::damagesOf(database).empty());
        return wasDone;
    }

private:
    static storage::Database open(const fs::path &site)
    {
        return {site / name / "records.db", storage::Database::Access::ReadWrite,
                storage::Database::Safety::WriteAhead};
    }
    static int rewritten(const storage::Database &database)
    {
        return int(database.number(R"(SELECT count(*) FROM "component" WHERE "note"='Shelf 3')"));
    }

    static constexpr std::string_view name = "Old.lastrivet";
    test::EarlierProject m_project;
    std::vector<storage::SchemaStep> m_steps;
};

} // namespace

TEST_CASE("A power cut in a migration leaves the project at one step or the next", "[cut]")
{
    const Earlier earlier;
    const TemporaryFolder site;
    earlier.copyTo(site.path());
    Disk disk(site.path());
    disk.mark(0);
    earlier.migrate(site.path());
    disk.mark(1);
    disk.stop();
    const auto &log = disk.log();
    const auto begun = std::find_if(log.begin(), log.end(), [](const Operation &operation) {
        return operation.kind == Operation::Kind::Mark;
    });
    std::mt19937 random(11);
    Medium medium;
    for (auto at = log.begin(); at != begun; ++at)
        medium.take(*at);
    int cuts = 0;
    int done = 0;
    for (auto at = begun; at != log.end(); ++at) {
        medium.take(*at);
        const bool isTold = at->kind == Operation::Kind::Mark && at->at == 1;
        if ((at - begun) % times(13, 1) != 0 && !isTold)
            continue;
        const TemporaryFolder left;
        medium.writeAfterCut(Loss(random() % 3), random, left.path());
        const bool wasDone = earlier.requireWhole(left.path());
        REQUIRE((wasDone || !isTold));
        done += wasDone;
        ++cuts;
    }
    report("power cuts: migration", cuts,
           fmt::format("0 lost, 0 half; {} after it was done", done));
}

TEST_CASE("A program that is killed in a migration leaves the project at one step or the next",
          "[kill]")
{
    const Earlier earlier;
    std::mt19937 random(12);
    const int count = times(8, 180);
    int done = 0;
    for (int i = 0; i < count; ++i) {
        const TemporaryFolder site;
        earlier.copyTo(site.path());
        const std::chrono::microseconds until{1 + random() % 90'000};
        Worker worker([&](const Worker::Say &say, const Worker::IsToEnd &) {
            Worker::killLater(until);
            earlier.migrate(site.path());
            say("done");
        });
        const bool isTold = !worker.said().empty();
        const bool wasDone = earlier.requireWhole(site.path());
        REQUIRE((wasDone || !isTold));
        done += wasDone;
    }
    report("kill -9: migration", count, fmt::format("0 half; {} after it was done", done));
}

TEST_CASE("Whichever operation of the disk fails, a migration is done or the project is as it was",
          "[failure]")
{
    const Earlier earlier;
    int failures = 0;
    for (const int error : {EIO, ENOSPC}) {
        bool hasFailed = true;
        for (int more = 0; hasFailed; more += times(17, 1)) {
            const TemporaryFolder site;
            earlier.copyTo(site.path());
            Disk disk(site.path());
            disk.failAfter(more, error);
            try {
                earlier.migrate(site.path());
            } catch (const Fault &fault) {
                CAPTURE(fault.what());
                REQUIRE(std::string(fault.what()).ends_with('.'));
            } catch (const SQLite::Exception &) {
                // Opening the database itself, which is not the migration's.
            }
            hasFailed = disk.hasFailed();
            failures += hasFailed;
            disk.failNever();
            disk.stop();
            earlier.requireWhole(site.path());
        }
    }
    report("one failure: migration", failures, "done, or as it was");
    CHECK(failures > 10);
}
