// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/FailingDisk.h"
#include "core/base/Error.h"
#include "core/storage/Database.h"
#include "tests/faults/Site.h"
#include "tests/faults/disk/Disk.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cerrno>
#include <string>

using namespace lastrivet;
using namespace lastrivet::faults;

TEST_CASE("Whichever operation of the disk fails, an act is done and shown, or nothing is changed",
          "[failure]")
{
    for (const auto &each : acts())
        DYNAMIC_SECTION(each.name)
        {
            failEachOperation(each);
        }
}

TEST_CASE("A change syncs the disk as often as a bare insert", "[failure]")
{
    Site site;
    Disk disk(site.root());
    storage::Database bare(site.folder() / "records.db", storage::Database::Access::ReadWrite,
                           storage::Database::Safety::WriteAhead);
    const auto syncsOf = [&](const auto &body) {
        const auto before = disk.log().size();
        body();
        return std::count_if(
            disk.log().begin() + std::ptrdiff_t(before), disk.log().end(),
            [](const Operation &operation) { return operation.kind == Operation::Kind::Sync; });
    };
    bare.run("CREATE TABLE \"bare\" (\"id\" INTEGER PRIMARY KEY, \"text\" TEXT) STRICT");
    const auto insert =
        syncsOf([&] { bare.run(R"(INSERT INTO "bare" VALUES (1,'a log entry'))"); });
    REQUIRE(insert >= 1);
    CHECK(syncsOf([&] { addPart(site.project()); }) == insert);
    CHECK(syncsOf([&] { REQUIRE(site.project().undo()); }) == insert);
}

TEST_CASE("Whichever operation fails, a paper is on record as printed or not, and work goes on",
          "[failure]")
{
    const auto error = GENERATE(EIO, ENOSPC);
    Site site;
    Disk disk(site.root());
    int failures = 0;
    bool hasFailed = true;
    for (int more = 0; hasFailed; ++more) {
        CAPTURE(error, more);
        disk.failAfter(more, error, Disk::Failing::Once);
        std::string hash;
        try {
            hash = site.project().notePrinted("Packet");
        } catch (const Fault &) {
            // Told in a sentence.
        }
        hasFailed = disk.hasFailed();
        failures += hasFailed;
        disk.failNever();
        CHECK((site.project().journalHash() == hash) == !hash.empty());
        addPart(site.project());
    }
    CHECK(failures > 1);
}
