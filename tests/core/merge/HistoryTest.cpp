// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/merge/History.h"

#include <catch2/catch.hpp>

#include <string>
#include <utility>

using namespace lastrivet;
using merge::History;
using storage::JournalRow;

namespace {

/// A row that is the same in both copies when its id, time and kind are.
JournalRow row(const std::string &id, std::int64_t stamp, const std::string &kind = "change")
{
    JournalRow made;
    made.change_id = id;
    made.stamp = stamp;
    made.kind = kind;
    const std::string what = id + std::to_string(stamp) + kind;
    made.hash.assign(what.begin(), what.end());
    return made;
}

using Played = std::vector<std::pair<std::string, std::int64_t>>;

Played playedOf(const std::vector<const JournalRow *> &rows)
{
    Played played;
    for (const JournalRow *each : rows)
        played.emplace_back(each->change_id, each->stamp);
    return played;
}

} // namespace

TEST_CASE("Copies have in common what is the same from the beginning, and is older than the rest")
{
    const History mine{row("a", 10), row("b", 20), row("c", 30)};
    CHECK(merge::commonRows(mine, mine) == 3);
    CHECK(merge::commonRows(mine, {row("z", 1)}) == 0);
    CHECK(merge::commonRows(mine, {row("a", 10), row("b", 20)}) == 2);
    const auto commonWith = [&](std::int64_t stamp, const std::string &kind = "change") {
        const History other{row("a", 10), row("b", 20), row("d", stamp, kind)};
        const auto common = merge::commonRows(mine, other);
        CHECK(merge::commonRows(other, mine) == common);
        return common;
    };
    CHECK(commonWith(21) == 2);
    CHECK(commonWith(20) == 1);
    CHECK(commonWith(11) == 1);
    // A merge itself plays nothing.
    CHECK(commonWith(11, "merge") == 2);
}

TEST_CASE("What was carried is in common only together with its merge, and with what is not older")
{
    const History start{row("a", 10), row("x", 12), row("k", 11, "carried")};
    const auto commonOf = [&](std::int64_t stamp) {
        History mine = start;
        History other = start;
        mine.push_back(row("m", 40, "merge"));
        other.push_back(row("m", 40, "merge"));
        mine.push_back(row("e", 50));
        other.push_back(row("f", stamp));
        return merge::commonRows(mine, other);
    };
    CHECK(commonOf(41) == 4);
    // Without its merge the carried row goes, and then what is later than the carried row.
    CHECK(commonOf(40) == 1);
    CHECK(commonOf(35) == 1);
    History other = start;
    other.push_back(row("f", 60));
    History mine = start;
    mine.push_back(row("m", 40, "merge"));
    CHECK(merge::commonRows(mine, other) == 1);
}

TEST_CASE("All but the beginning is played again when a change came by way of a third copy")
{
    const History plain{row("a", 10), row("k", 20, "carried"), row("c", 30), row("d", 40)};
    const History carried{row("a", 10), row("b", 20), row("c", 30, "carried"), row("d", 40)};
    CHECK(merge::rowsToKeep(2, plain, plain) == 2);
    CHECK(merge::rowsToKeep(2, plain, carried) == 1);
    CHECK(merge::rowsToKeep(2, carried, plain) == 1);
    CHECK(merge::rowsToKeep(3, carried, carried) == 3);
    CHECK(merge::rowsToKeep(1, plain, plain) == 1);
    CHECK(merge::rowsToKeep(0, plain, plain) == 0);
}

TEST_CASE("The changes of both are played once each, in the order of their time and then their id")
{
    const History mine{row("a", 10), row("d", 40), row("x", 50), row("m", 60, "merge")};
    const History other{row("a", 10), row("c", 40), row("x", 50), row("b", 30)};
    CHECK(playedOf(merge::unionBeyond(1, mine, other)) ==
          Played{{"b", 30}, {"c", 40}, {"d", 40}, {"x", 50}});
    CHECK(playedOf(merge::unionBeyond(2, mine, other)) == Played{{"b", 30}, {"x", 50}});
    CHECK(merge::unionBeyond(4, mine, other).empty());
}

TEST_CASE("Of a step of the schema that both copies took, the earlier time counts for both")
{
    const History early{row("a", 10), row("s", 20, "migration")};
    const History late{row("a", 10), row("c", 25), row("s", 30, "migration")};
    const Played played{{"s", 20}, {"c", 25}};
    CHECK(playedOf(merge::unionBeyond(1, early, late)) == played);
    CHECK(playedOf(merge::unionBeyond(1, late, early)) == played);
}

TEST_CASE("New to a copy is what it has nowhere, a merge apart, in the order of time")
{
    const History mine{row("a", 10), row("d", 40)};
    const History other{row("a", 10), row("c", 30),         row("b", 20), row("d", 15, "carried"),
                        row("e", 20), row("m", 60, "merge")};
    CHECK(playedOf(merge::newTo(mine, other)) == Played{{"b", 20}, {"e", 20}, {"c", 30}});
    CHECK(merge::newTo(other, mine).empty());
    CHECK(merge::isPrimary(other.front()));
    CHECK_FALSE(merge::isPrimary(other.back()));
}
