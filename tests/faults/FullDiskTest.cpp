// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/FullDisk.h"
#include "tests/faults/Report.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>
#include <sqlite3.h>

using namespace lastrivet;
using namespace lastrivet::faults;

namespace {

/// While it lives, databases can be kept from growing.
class PageLimit {
public:
    PageLimit() { sqlite3_auto_extension(reinterpret_cast<void (*)()>(begin)); }
    ~PageLimit()
    {
        sqlite3_cancel_auto_extension(reinterpret_cast<void (*)()>(begin));
        limit = unlimited;
    }
    void set(int pages)
    {
        limit = pages;
        apply(newest);
    }
    /// A limit below the present size counts as the present size.
    static constexpr int present = 1;
    static constexpr int unlimited = 1 << 30;

private:
    static int begin(sqlite3 *database, char **, const void *)
    {
        // Others look things up in passing, and are gone when the limit is lifted.
        if (sqlite3_db_readonly(database, "main") == 1)
            return SQLITE_OK;
        newest = database;
        return apply(database);
    }
    static int apply(sqlite3 *database)
    {
        const auto pragma = fmt::format("PRAGMA max_page_count={}", limit);
        return sqlite3_exec(database, pragma.c_str(), nullptr, nullptr, nullptr);
    }

    static inline sqlite3 *newest = nullptr;
    static inline int limit = unlimited;
};

} // namespace

TEST_CASE("A database that may not grow refuses a change whole, and takes it when it may", "[full]")
{
    PageLimit limit;
    FullCounts counts;
    for (const auto &each : acts()) {
        if (each.effect != Effect::OnRecords)
            continue;
        Site site;
        each.prepare(site.project(), site.supplies());
        REQUIRE(each.perform(site.project(), site.supplies()).empty());
        // Free pages inside are used up first.
        for (int i = 0; i < times(5, 30); ++i) {
            tryFull(
                each, site, counts, [&] { limit.set(PageLimit::present); },
                [&] { limit.set(PageLimit::unlimited); });
        }
        requireGoesOn(each, site);
    }
    reportFull("no page more in the database", counts);
}

TEST_CASE("A file that may not grow refuses an act whole, and takes it when it may", "[full]")
{
    limitFiles(acts());
}

TEST_CASE("A full disk refuses an act whole, and takes it when there is room", "[full]")
{
    fillSmallDisk(acts());
}
