// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/SplitText.h"

#include "core/entry/MoveText.h"
#include "tests/support/ProjectBuilder.h"

#include <catch2/catch.hpp>

#include <chrono>

namespace lastrivet::entry {

namespace {

using test::on;

struct Bench {
    Bench()
    {
        aileron = project.part("Left aileron");
        flap = project.part("Left flap");
        session.minutes = Minutes{91};
        session.component_id = aileron;
        session.workers = {{Id<Person>{1}}, {Id<Person>{2}, Minutes{40}}};
    }

    /// "part:minutes" of each piece, or the sentence.
    std::string split(std::string_view text) const
    {
        const auto pieces = readSplit(text, session, PartFinder(project.records));
        if (!pieces)
            return english(pieces.reason());
        std::string told;
        for (const WorkSession &piece : *pieces)
            told += (piece.component_id == flap ? "flap:" : "aileron:") +
                    (piece.minutes ? std::to_string(piece.minutes->count()) : "-") + " ";
        return told;
    }
    std::string move(std::string_view text) const
    {
        const auto to = readMove(text, PartFinder(project.records), on("2026-03-14"));
        if (!to)
            return english(to.reason());
        return (to->day ? to->day->text() : "-") + (to->part == flap ? " flap" : "");
    }

    test::ProjectBuilder project;
    Id<Component> aileron;
    Id<Component> flap;
    WorkSession session;
};

} // namespace

TEST_CASE("An entry is split by parts, by minutes, or both")
{
    const Bench bench;
    CHECK(bench.split("left aileron + left flap") == "aileron:46 flap:45 ");
    CHECK(bench.split("60m + 31m") == "aileron:60 aileron:31 ");
    CHECK(bench.split("flap 31m + left aileron") == "flap:31 aileron:60 ");
    CHECK(bench.split("1h + flap") == "aileron:60 flap:31 ");
}

TEST_CASE("Pieces that do not come to the whole are refused with the reason")
{
    const Bench bench;
    CHECK(bench.split("60m + 30m") == "The pieces do not add up to the 91 minutes of the entry.");
    CHECK(bench.split("91m + flap") == "The pieces do not add up to the 91 minutes of the entry.");
    CHECK(bench.split("flap") == "Say at least two parts or times, with a plus sign between them.");
    CHECK(bench.split("flap + rudder") == "“rudder” is no part, or may be several.");
    CHECK(bench.split("flap + left") == "“left” is no part, or may be several.");
}

TEST_CASE("An entry without time is split by parts alone")
{
    Bench bench;
    bench.session.minutes.reset();
    CHECK(bench.split("left aileron + left flap") == "aileron:- flap:- ");
    CHECK(bench.split("left aileron 20m + left flap") ==
          "The entry has no time that could be split; give parts alone.");
}

TEST_CASE("Where entries are moved to is a day, a part, or both")
{
    const Bench bench;
    CHECK(bench.move("yesterday") == "2026-03-13");
    CHECK(bench.move("flap") == "- flap");
    CHECK(bench.move("3 Mar left flap") == "2026-03-03 flap");
    CHECK(bench.move("left flap gestern") == "2026-03-13 flap");
    CHECK(bench.move("left") == "“left” is no part, or may be several.");
    CHECK(bench.move("2026-03-15") == "2026-03-15 lies ahead; the log tells what was done.");
    CHECK(bench.move("  ") == "Say the day, the part, or both.");
}

TEST_CASE("A pasted page is answered at once")
{
    std::string page;
    for (int i = 0; i < 3'000; ++i)
        page += "word ";
    const auto begun = std::chrono::steady_clock::now();
    Bench().split(page + "+ flap");
    // Every pair of words tried as a time took minutes.
    CHECK(std::chrono::steady_clock::now() - begun < std::chrono::seconds(20));
}

} // namespace lastrivet::entry
