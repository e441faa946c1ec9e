// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/Logbook.h"

#include "tests/support/ProjectBuilder.h"
#include "tests/support/RandomBuild.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;
using packet::Logbook;
using packet::LogOrder;

namespace {

using Texts = std::vector<std::string>;

/// Two wings, one with a rib, and work on three of them in two months.
struct Bench {
    Bench()
    {
        left = project.part("Left wing");
        rib = project.part("Rib 3", left);
        right = project.part("Right wing");
        onRight = project.session(right, "2026-02-27T18:00", 60);
        onRib = project.session(rib, "2026-03-02T19:00", 75);
        onLeft = project.session(left, "2026-03-01", 30);
        onNothing = project.session({}, "2026-03-05", 20);
    }

    Logbook book(packet::LogbookChoice choice = {}) const
    {
        return packet::logbookOf(project.records, project.profile, choice,
                                 [this](Id<WorkSession> id) -> std::optional<Moment> {
                                     if (id == late)
                                         return on("2026-05-01");
                                     return std::nullopt;
                                 });
    }

    ProjectBuilder project;
    Id<Component> left, rib, right;
    Id<WorkSession> onRight, onRib, onLeft, onNothing;
    Id<WorkSession> late;
};

std::vector<std::int64_t> entriesOf(const Logbook::Chapter &chapter)
{
    std::vector<std::int64_t> ids;
    for (const auto &entry : chapter.entries)
        ids.push_back(entry.session.id.value());
    return ids;
}

} // namespace

TEST_CASE("A log by date has a chapter for each month, its entries in order")
{
    const Bench bench;
    const Logbook book = bench.book();
    REQUIRE(book.chapters.size() == 2);
    CHECK(book.chapters[0].year == 2026);
    CHECK(book.chapters[0].month == 2);
    CHECK(book.chapters[0].total.minutes == Minutes{60});
    CHECK(entriesOf(book.chapters[1]) ==
          std::vector{bench.onLeft.value(), bench.onRib.value(), bench.onNothing.value()});
    CHECK(book.chapters[1].total.minutes == Minutes{125});
    CHECK(book.totals.total.minutes == Minutes{185});
}

TEST_CASE("A log by part follows the tree, work on no part last")
{
    const Bench bench;
    const Logbook book = bench.book({.order = LogOrder::ByPart});
    Texts titles;
    for (const auto &chapter : book.chapters)
        titles.push_back(chapter.part);
    CHECK(titles == Texts{"Left wing", "Left wing › Rib 3", "Right wing", ""});
    REQUIRE(book.parts.size() == 3);
    CHECK(book.parts[0].own.minutes == Minutes{30});
    CHECK(book.parts[0].with_below.minutes == Minutes{105});
    CHECK(book.parts[1].depth == 1);
    CHECK(book.totals.unassigned.minutes == Minutes{20});
}

TEST_CASE("First and last day are both in the log, what lies outside is not, nor what is withdrawn")
{
    Bench bench;
    const auto ids = [&](std::optional<Moment> from, std::optional<Moment> until) {
        std::size_t count = 0;
        for (const auto &chapter : bench.book({.from = from, .until = until}).chapters)
            count += chapter.entries.size();
        return count;
    };
    CHECK(ids(on("2026-03-01"), on("2026-03-02")) == 2);
    CHECK(ids(on("2026-03-02T19:00"), {}) == 2);
    CHECK(ids(on("2026-03-02T19:01"), {}) == 1);
    CHECK(ids({}, on("2026-02-27")) == 1);
    CHECK(ids(on("2027-01-01"), {}) == 0);
    bench.project.withdraw(bench.onRib);
    CHECK(ids({}, {}) == 3);
}

TEST_CASE("An entry is late when it was written down more than the profile's days after its day")
{
    Bench bench;
    bench.project.profile.late_entry_days = 30;
    bench.late = bench.onLeft;
    const Logbook book = bench.book();
    CHECK(book.late_entries == 1);
    CHECK(book.chapters[1].entries[0].written_late_on == on("2026-05-01"));
    CHECK_FALSE(book.chapters[1].entries[1].written_late_on.has_value());
    bench.project.profile.late_entry_days = 61; // 1 March to 1 May
    CHECK(bench.book().late_entries == 0);
    bench.project.profile.late_entry_days = 60;
    CHECK(bench.book().late_entries == 1);
}

TEST_CASE("A photograph stands with its entry, with one of its day on its part, or in its month")
{
    Bench bench;
    const auto link = [](RecordType type, auto id) { return Media::Link{type, id.value()}; };
    const auto linked =
        bench.project.photo("2026-04-09", {link(RecordType::WorkSession, bench.onRight)});
    const auto sameDay =
        bench.project.photo("2026-03-02T19:30", {link(RecordType::Component, bench.rib)});
    const auto alone = bench.project.photo("2026-01-15", {link(RecordType::Component, bench.left)});
    const auto receipt =
        bench.project.photo("2026-03-02", {link(RecordType::Component, bench.rib)});
    bench.project.change(receipt, [](Media &media) { media.shows = {Shows::Receipt}; });
    const Logbook book = bench.book();
    REQUIRE(book.chapters.size() == 3);
    REQUIRE(book.chapters[0].photos.size() == 1);
    CHECK(book.chapters[0].month == 1);
    CHECK(book.chapters[0].photos[0].id == alone);
    CHECK(book.chapters[1].photos[0].id == linked);
    CHECK(book.chapters[1].entries[0].photos == std::vector{2});
    REQUIRE(book.chapters[2].photos.size() == 1);
    CHECK(book.chapters[2].photos[0].id == sameDay);
    CHECK(book.chapters[2].entries[1].photos == std::vector{3});
    CHECK(bench.book({.has_photos = false}).chapters.size() == 2);
    // Of an entry that is left out nothing is printed either.
    CHECK(bench.book({.from = on("2026-03-01")}).chapters.size() == 1);
}

TEST_CASE("The usual place is where more than half of the work was")
{
    Bench bench;
    const auto at = [&](Id<WorkSession> id, std::string_view place) {
        bench.project.change(id, [&](WorkSession &entry) { entry.place = place; });
    };
    at(bench.onRib, "Shed");
    at(bench.onLeft, "Shed");
    CHECK(bench.book().usual_place.empty());
    at(bench.onRight, "Shed");
    CHECK(bench.book().usual_place == "Shed");
}

TEST_CASE("The chapters of any log add up to the hours of the project")
{
    for (const unsigned seed : {1u, 2u, 3u, 4u, 5u}) {
        const Records records = RandomBuild(seed).records;
        const hours::Totals all = hours::totals(records);
        REQUIRE(all.total.minutes.count() > 0);
        for (const LogOrder order : {LogOrder::ByDate, LogOrder::ByPart}) {
            const Logbook book = packet::logbookOf(records, Profile{}, {.order = order},
                                                   [](Id<WorkSession>) { return std::nullopt; });
            hours::Total sum;
            for (const auto &chapter : book.chapters)
                sum += chapter.total;
            CHECK(sum == all.total);
            CHECK(book.totals == all);
        }
    }
}
