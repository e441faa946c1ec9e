// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/Acts.h"
#include "tests/faults/PowerCuts.h"
#include "tests/faults/Report.h"

#include <catch2/catch.hpp>
#include <sqlite3.h>

using namespace lastrivet;
using namespace lastrivet::faults;

namespace {

/// While it lives, SQLite does not wait for the disk when it commits, whatever the program asks.
class CarelessCommits {
public:
    CarelessCommits() { sqlite3_auto_extension(reinterpret_cast<void (*)()>(begin)); }
    ~CarelessCommits() { sqlite3_cancel_auto_extension(reinterpret_cast<void (*)()>(begin)); }

private:
    static int begin(sqlite3 *database, char **, const void *)
    {
        sqlite3_exec(database, "PRAGMA synchronous=NORMAL", nullptr, nullptr, nullptr);
        return sqlite3_set_authorizer(database, ignoreSynchronous, nullptr);
    }
    static int ignoreSynchronous(void *, int action, const char *pragma, const char *, const char *,
                                 const char *)
    {
        const bool isMeant = action == SQLITE_PRAGMA && std::string_view(pragma) == "synchronous";
        return isMeant ? SQLITE_IGNORE : SQLITE_OK;
    }
};

/// Does the acts in turn, until there were `count` of them; now and then the program is closed.
CutCounts cutWhile(const std::vector<std::string_view> &acts, int count, int cuts, unsigned seed)
{
    Site site;
    PowerCuts power(site);
    for (int i = 0; i < count; ++i) {
        const Act &each = act(acts[std::size_t(i) % acts.size()]);
        each.prepare(site.project(), site.supplies());
        power.mark();
        const auto why = each.perform(site.project(), site.supplies());
        INFO((why.empty() ? std::string() : why.front()));
        REQUIRE(why.empty());
        site.clock().advance(std::chrono::minutes{5});
        power.mark(each.name == "backup");
        if (i % 17 != 16)
            continue;
        site.close();
        site.open();
    }
    return power.cut(cuts, seed);
}

void requireHarmless(std::string_view what, const CutCounts &counts)
{
    report("power cuts: " + std::string(what), counts.cuts, counts.text());
    INFO(counts.examples);
    REQUIRE(counts.areHarmless());
}

} // namespace

TEST_CASE("A power cut takes no change that was shown as saved, and leaves no half of one", "[cut]")
{
    SECTION("logging")
    {
        requireHarmless("logging", cutWhile({"logging", "squawk"}, 120, times(40, 1300), 1));
    }
    SECTION("photo intake")
    {
        requireHarmless("photo intake",
                        cutWhile({"photo intake", "sheet intake"}, 40, times(40, 1300), 2));
    }
    SECTION("undo")
    {
        requireHarmless("undo and redo", cutWhile({"logging", "photo intake", "undo", "redo"}, 80,
                                                  times(40, 1000), 3));
    }
    SECTION("backup")
    {
        requireHarmless("backup", cutWhile({"backup", "own copy"}, 12, times(20, 600), 4));
    }
    SECTION("merge")
    {
        requireHarmless("merge", cutWhile({"merge", "logging"}, 12, times(20, 600), 6));
    }
    SECTION("import")
    {
        requireHarmless("import", cutWhile({"import", "large import"}, 10, times(20, 500), 5));
    }
}

TEST_CASE("The same power cuts do harm where nobody waits for the disk", "[cut]")
{
    const CarelessCommits careless;
    const auto counts = cutWhile({"logging", "squawk"}, 120, times(40, 500), 5);
    report("control: write-ahead log, synchronous NORMAL", counts.cuts, counts.text());
    CHECK(counts.lost > counts.cuts / 10);
}

TEST_CASE("The same power cuts do harm where photos are not synced", "[cut]")
{
    Site site;
    PowerCuts power(site);
    power.disk().ignoreSyncsIn("photos");
    for (int i = 0; i < 20; ++i) {
        REQUIRE(act("photo intake").perform(site.project(), site.supplies()).empty());
        power.mark();
    }
    const auto counts = power.cut(times(40, 500), 6);
    report("control: photos without sync", counts.cuts, counts.text());
    CHECK(counts.damaged > counts.cuts / 10);
}
