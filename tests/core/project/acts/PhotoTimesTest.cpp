// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/PhotoTimes.h"

#include "tests/support/ActBench.h"

namespace lastrivet::test {

namespace {

Id<Media> photo(ActBench &bench, std::string_view taken)
{
    Id<Media> id;
    bench.change([&](Edit &edit) {
        Media media;
        media.file = "photos/x.jpg";
        media.taken_on = Moment::parse(taken);
        id = edit.put(media);
    });
    return id;
}

std::string takenOn(ActBench &bench, Id<Media> id)
{
    const auto &taken = bench.records()->find(id)->taken_on;
    return taken ? taken->text() : "";
}

} // namespace

TEST_CASE("The times of several photos are moved together, over midnight too, in one change")
{
    ActBench bench;
    const auto evening = photo(bench, "2026-03-14T23:30");
    const auto noon = photo(bench, "2026-03-14T12:00");
    const auto other = photo(bench, "2026-03-14T13:00");
    const std::vector both{evening, noon};
    const auto shift = acts::timeShift(*bench.records(), both, 90);
    REQUIRE(shift.moved.size() == 2);
    CHECK(shift.moved.front().media == noon);
    CHECK(shift.moved.back().becomes == *Moment::parse("2026-03-15T01:00"));
    const auto rows = (*bench).journal().size();
    bench.change([&](Edit &edit) { acts::shiftTimes(edit, both, 90); });
    CHECK((*bench).journal().size() == rows + 1);
    CHECK(takenOn(bench, evening) == "2026-03-15T01:00");
    CHECK(takenOn(bench, noon) == "2026-03-14T13:30");
    CHECK(takenOn(bench, other) == "2026-03-14T13:00");
    REQUIRE((*bench).undo());
    CHECK(takenOn(bench, evening) == "2026-03-14T23:30");
    CHECK(takenOn(bench, noon) == "2026-03-14T12:00");
}

TEST_CASE("Photos whose time is not known are left, and a day alone is moved by whole days")
{
    ActBench bench;
    const auto unknown = photo(bench, "");
    const auto day = photo(bench, "2026-03-14");
    const auto timed = photo(bench, "2026-03-14T12:00");
    const std::vector all{unknown, day, timed};
    auto shift = acts::timeShift(*bench.records(), all, -60);
    CHECK(shift.left == std::vector{unknown, day});
    CHECK(shift.moved.size() == 1);
    shift = acts::timeShift(*bench.records(), all, -24 * 60);
    CHECK(shift.left == std::vector{unknown});
    bench.change([&](Edit &edit) { acts::shiftTimes(edit, all, -24 * 60); });
    CHECK(takenOn(bench, unknown).empty());
    CHECK(takenOn(bench, day) == "2026-03-13");
    CHECK(takenOn(bench, timed) == "2026-03-13T12:00");
}

TEST_CASE("When the first photo was taken in truth says by how much all are moved")
{
    ActBench bench;
    const auto late = photo(bench, "2026-03-14T12:10");
    const auto early = photo(bench, "2026-03-14T12:00");
    const auto day = photo(bench, "2026-03-14");
    const Records &records = *bench.records();
    const std::vector all{late, early, day};
    CHECK(acts::takenFirst(records, all, true)->id == early);
    CHECK(acts::takenFirst(records, all, false)->id == day);
    CHECK(acts::minutesUntil(records, all, *Moment::parse("2026-03-15T00:30")) == 12 * 60 + 30);
    CHECK(acts::minutesUntil(records, all, *Moment::parse("2026-03-14T11:00")) == -60);
    CHECK(acts::minutesUntil(records, all, *Moment::parse("2025-03-14")) == -365 * 24 * 60);
    CHECK_FALSE(acts::minutesUntil(records, {day}, *Moment::parse("2026-03-14T11:00")));
}

TEST_CASE("A time is not moved beyond the years that records know, and by nothing not at all")
{
    ActBench bench;
    const auto old = photo(bench, "1900-01-01T00:30");
    auto shift = acts::timeShift(*bench.records(), {old}, -60);
    CHECK(shift.moved.empty());
    CHECK(shift.beyond == std::vector{old});
    bench.change([&](Edit &edit) {
        acts::shiftTimes(edit, {old}, -60);
        Component part;
        part.name = "Another";
        edit.put(part);
    });
    CHECK(takenOn(bench, old) == "1900-01-01T00:30");
    shift = acts::timeShift(*bench.records(), {old}, 0);
    CHECK(shift.moved.empty());
    CHECK(shift.left.empty());
}

} // namespace lastrivet::test
