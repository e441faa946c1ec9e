// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/DatabaseCopies.h"
#include "core/backup/OwnCopies.h"
#include "tests/support/TestProject.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <string>
#include <vector>

using namespace lastrivet::storage;
namespace chr = std::chrono;

namespace {

chr::sys_seconds at(int year, unsigned month, unsigned day, int hour = 12)
{
    return chr::sys_days(chr::year(year) / month / day) + chr::hours(hour);
}

DatabaseCopy copyOf(chr::sys_seconds made)
{
    return {std::to_string(made.time_since_epoch().count()), made, "00000000"};
}

/// One copy at noon on each of the `count` days that end with `last`, newest first.
std::vector<DatabaseCopy> daily(chr::sys_seconds last, int count)
{
    std::vector<DatabaseCopy> copies;
    for (int day = 0; day < count; ++day)
        copies.push_back(copyOf(last - chr::days(day)));
    return copies;
}

std::vector<chr::sys_seconds> keptOf(const std::vector<DatabaseCopy> &copies)
{
    const auto dropped = superfluousCopies(copies);
    std::vector<chr::sys_seconds> kept;
    for (const auto &copy : copies) {
        if (std::none_of(dropped.begin(), dropped.end(),
                         [&](const DatabaseCopy &each) { return each.file == copy.file; }))
            kept.push_back(copy.made);
    }
    return kept;
}

} // namespace

TEST_CASE("A week of daily copies is kept whole")
{
    CHECK(superfluousCopies(daily(at(2026, 3, 15), 7)).empty());
}

TEST_CASE("Of one day only the newest copy stays")
{
    const std::vector copies{copyOf(at(2026, 3, 15, 20)), copyOf(at(2026, 3, 15, 9)),
                             copyOf(at(2026, 3, 14, 9))};
    CHECK(keptOf(copies) == std::vector{at(2026, 3, 15, 20), at(2026, 3, 14, 9)});
}

TEST_CASE("After two years of daily copies seven days, four weeks and twelve months are left")
{
    // 2026-03-15 is a Sunday, the last day of its ISO week.
    const auto kept = keptOf(daily(at(2026, 3, 15), 730));
    CHECK(kept == std::vector{at(2026, 3, 15),  at(2026, 3, 14),  at(2026, 3, 13),  at(2026, 3, 12),
                              at(2026, 3, 11),  at(2026, 3, 10),  at(2026, 3, 9),   at(2026, 3, 8),
                              at(2026, 3, 1),   at(2026, 2, 28),  at(2026, 2, 22),  at(2026, 1, 31),
                              at(2025, 12, 31), at(2025, 11, 30), at(2025, 10, 31), at(2025, 9, 30),
                              at(2025, 8, 31),  at(2025, 7, 31),  at(2025, 6, 30),  at(2025, 5, 31),
                              at(2025, 4, 30)});
}

TEST_CASE("A project that rests for years keeps its copies")
{
    const std::vector copies{copyOf(at(2026, 3, 15)), copyOf(at(2021, 3, 15)),
                             copyOf(at(2019, 7, 1))};
    CHECK(superfluousCopies(copies).empty());
}

TEST_CASE("A copy is there when it was made, also after the clock was set back")
{
    lastrivet::test::TestProject project;
    const auto now = project.clock().now();
    const auto journals = [&] {
        std::vector<std::string> found;
        for (const auto &copy : databaseCopies(project.folder() / "backups"))
            found.push_back(copy.journal);
        return found;
    };
    project.part("Wing");
    REQUIRE(lastrivet::backup::keepCopy(project.folder(), now + chr::hours(3)));
    const auto first = project->journalHash().substr(0, 8);
    project.part("Tail");
    REQUIRE(lastrivet::backup::keepCopy(project.folder(), now));
    const auto second = project->journalHash().substr(0, 8);
    CHECK(journals() == std::vector{first, second});
    project.part("Fin");
    REQUIRE(lastrivet::backup::keepCopy(project.folder(), now + chr::minutes(10)));
    const auto third = project->journalHash().substr(0, 8);
    CHECK(journals() == std::vector{first, third});
}
