// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Error.h"
#include "core/storage/Database.h"
#include "core/verify/Verification.h"
#include "tests/support/FaultyDisk.h"
#include "tests/support/TestProject.h"

#include <catch2/catch.hpp>

using namespace lastrivet;

namespace {

Project::Body addParts(int count)
{
    return [count](Edit &edit) {
        for (int i = 0; i < count; ++i) {
            Component part;
            part.name = "Rib " + std::to_string(i);
            edit.put(part);
        }
    };
}

int syncsOf(const test::FaultyDisk &disk, const std::function<void()> &body)
{
    const int before = disk.syncs();
    body();
    return disk.syncs() - before;
}

/// What is on disk must be what the project shows, and whole.
void requireAgreement(const test::TestProject &project, const Snapshot &shown)
{
    REQUIRE(*project.openAgain(true)->records() == *shown);
    REQUIRE(verify(project.folder()).isFaultless());
}

} // namespace

TEST_CASE("A change syncs the disk as often as a bare insert")
{
    const test::FaultyDisk disk;
    test::TestProject project;
    project.part("Wing");
    storage::Database bare(project.database(), storage::Database::Access::ReadWrite,
                           storage::Database::Safety::WriteAhead);
    bare.run("CREATE TABLE \"bare\" (\"id\" INTEGER PRIMARY KEY, \"text\" TEXT) STRICT");
    const int insert =
        syncsOf(disk, [&] { bare.run(R"(INSERT INTO "bare" VALUES (1,'a log entry'))"); });
    REQUIRE(insert >= 1);
    CHECK(syncsOf(disk, [&] { project.part("Tail"); }) == insert);
    CHECK(syncsOf(disk, [&] { REQUIRE(project->undo()); }) == insert);
}

TEST_CASE("Whichever write fails, a change is either saved and shown, or neither")
{
    const int size = GENERATE(1, 40);
    test::FaultyDisk disk;
    test::TestProject project;
    int failures = 0;
    int saved = 0;
    for (int at = 0;; ++at) {
        const auto before = project->records();
        disk.failAfter(at);
        bool isDone = false;
        try {
            isDone = bool(project->change("Parts", addParts(size)));
        } catch (const Fault &) {
            REQUIRE(project->records() == before);
        }
        const bool hasFailed = disk.hasFailed();
        disk.failNever();
        REQUIRE((*project->records() == *before) == !isDone);
        requireAgreement(project, project->records());
        if (!hasFailed)
            break;
        ++failures;
        saved += isDone;
    }
    // Each frame of the log is written in two parts, and then synced.
    CHECK(failures >= 5);
    INFO(failures << " failures, " << saved << " of them after the change was safe");
    project.change("Afterwards", addParts(1));
    requireAgreement(project, project->records());
}

TEST_CASE("Whichever write fails, an undo is either saved and shown, or neither")
{
    test::FaultyDisk disk;
    test::TestProject project;
    for (int at = 0;; ++at) {
        project.change("Parts", addParts(5));
        const auto before = project->records();
        disk.failAfter(at);
        bool isDone = false;
        try {
            isDone = bool(project->undo());
        } catch (const Fault &) {
            REQUIRE(project->records() == before);
        }
        const bool hasFailed = disk.hasFailed();
        disk.failNever();
        REQUIRE((*project->records() == *before) == !isDone);
        requireAgreement(project, project->records());
        if (!hasFailed)
            break;
    }
}
