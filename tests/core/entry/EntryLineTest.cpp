// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/EntryLine.h"

#include "core/entry/StepFinder.h"
#include "tests/core/entry/EntryBench.h"

#include <catch2/catch.hpp>

namespace lastrivet::entry {

using test::EntryBench;

TEST_CASE("A line gives duration, part and note")
{
    const auto session = EntryBench().one("2h15 left aileron: dimpled both skins");
    CHECK(session.minutes == Minutes{135});
    CHECK(session.component_id == Id<Component>{30});
    CHECK(session.note == "dimpled both skins");
    CHECK(session.began == Moment::parse("2026-03-14"));
    CHECK(session.workers.empty());
}

TEST_CASE("The kind of work is guessed from the note's verbs and said in front of the colon")
{
    const EntryBench bench;
    const auto guessed = bench.read("1h LA: dimpled both skins");
    CHECK(guessed.kind_is_guessed);
    CHECK(guessed.sessions.front().kind == WorkKind::Fabrication);
    CHECK(bench.one("1h LA: drilled out six rivets").kind == WorkKind::Rework);
    const auto said = bench.read("1h LA finishing: dimpled both skins");
    CHECK_FALSE(said.kind_is_guessed);
    CHECK(said.sessions.front().kind == WorkKind::Finishing);
    CHECK(bench.one("1h LA: thought about it").kind == WorkKind::Other);
}

TEST_CASE("Several parts share the time and lose no minute of it")
{
    const auto reading = EntryBench().read("1h31 left flap + right flap: primed");
    REQUIRE(reading.sessions.size() == 2);
    CHECK(reading.sessions[0].component_id == Id<Component>{31});
    CHECK(reading.sessions[1].component_id == Id<Component>{32});
    CHECK(reading.sessions[0].minutes == Minutes{46});
    CHECK(reading.sessions[1].minutes == Minutes{45});
    CHECK(EntryBench().read("1h LA+RW: primed").sessions.size() == 2);
    CHECK(EntryBench().read("1h LA + RW primed").sessions.size() == 2);
    CHECK(EntryBench().read("1h LW + ail primed").sessions.size() == 2);
    const auto unknown = EntryBench().read("1h LA + propeller primed");
    CHECK(unknown.problems.size() == 1);
    CHECK(unknown.sessions.front().note == "propeller primed");
}

TEST_CASE("An and between parts is no part, and parts them as a plus sign does")
{
    EntryBench bench;
    bench.part(60, "UC", "Undercarriage", 0);
    bench.part(61, "WB", "Wheels and brakes", 60);
    const auto parts = [&](std::string_view line) {
        const auto reading = bench.read(line);
        CHECK(reading.problems.empty());
        std::vector<std::int64_t> ids;
        for (const WorkSession &session : reading.sessions)
            ids.push_back(session.component_id.value());
        return ids;
    };
    CHECK(parts("2h LW-R3 und LA: gebohrt") == std::vector<std::int64_t>{11, 30});
    CHECK(parts("2h LW-R3 and left fl: drilled") == std::vector<std::int64_t>{11, 31});
    CHECK(parts("2h left rib 3 et right rib 3: percé") == std::vector<std::int64_t>{11, 21});
    CHECK(parts("2h wheels and br: fitted") == std::vector<std::int64_t>{61});
    const auto none = bench.read("1h nuts and bolts: bought");
    CHECK(none.problems.size() == 1);
    CHECK(none.sessions.front().note == "nuts and bolts: bought");
}

TEST_CASE("A part is found by the words of what holds it, and a number is never part of a number")
{
    const EntryBench bench;
    CHECK(bench.one("1h left rib 3: drilled").component_id == Id<Component>{11});
    CHECK(bench.one("1h right rib 3: drilled").component_id == Id<Component>{21});
    CHECK(bench.one("1h lw-r30: drilled").component_id == Id<Component>{12});
}

TEST_CASE("Words that may be two parts, or none, are said and kept in the note")
{
    const EntryBench bench;
    const auto two = bench.read("1h rib 3: drilled");
    CHECK(two.problems.size() == 1);
    CHECK_FALSE(two.sessions.front().component_id);
    CHECK(two.sessions.front().note == "rib 3: drilled");
    const auto none = bench.read("1h propeller: cleaned");
    REQUIRE(none.problems.size() == 1);
    CHECK(english(none.problems.front()).find("propeller") != std::string::npos);
    CHECK(none.sessions.front().note == "propeller: cleaned");
}

TEST_CASE("Days and clock times are understood in front of the colon")
{
    const EntryBench bench;
    CHECK(bench.one("yesterday 1h LA: x").began == Moment::parse("2026-03-13"));
    CHECK(bench.one("3 Mar 1h LA: x").began == Moment::parse("2026-03-03"));
    CHECK(bench.one("20 Dec 1h LA: x").began == Moment::parse("2025-12-20"));
    CHECK(bench.one("2024-02-29 1h LA: x").began == Moment::parse("2024-02-29"));
    CHECK(bench.one("1h LA at 9:15: x").began == Moment::parse("2026-03-14T09:15"));
    const auto span = bench.one("yesterday 22:30-0:15 LA: x");
    CHECK(span.began == Moment::parse("2026-03-13T22:30"));
    CHECK(span.minutes == Minutes{105});
}

TEST_CASE("1:30 is a duration, and at 1:30 a time")
{
    const EntryBench bench;
    CHECK(bench.one("1:30 LA: x").minutes == Minutes{90});
    const auto timed = bench.one("1:30 at 1:30 LA: x");
    CHECK(timed.minutes == Minutes{90});
    CHECK(timed.began == Moment::parse("2026-03-14T01:30"));
}

TEST_CASE("Helpers are added to the builder; by names who worked instead")
{
    const EntryBench bench;
    const auto helped = bench.one("2h LA with Irja and Casimir Boyle: bucked rivets");
    REQUIRE(helped.workers.size() == 3);
    CHECK(helped.workers[0].person_id == bench.robin.id);
    CHECK(helped.workers[1].person_id == bench.irja.id);
    CHECK(helped.workers[2].person_id == bench.casimir.id);
    const auto alone = bench.one("2h LA by Irja: swept");
    REQUIRE(alone.workers.size() == 1);
    CHECK(alone.workers[0].person_id == bench.irja.id);
}

TEST_CASE("Helpers may have a time and pay of their own")
{
    const EntryBench bench;
    const auto helped = bench.one("3h LA with Irja 45m, Casimir paid: bucked rivets");
    REQUIRE(helped.workers.size() == 3);
    CHECK(helped.minutes == Minutes{180});
    CHECK_FALSE(helped.workers[0].minutes.has_value());
    CHECK(helped.workers[1].minutes == Minutes{45});
    CHECK_FALSE(helped.workers[1].paid);
    CHECK(helped.workers[2].paid);
    const auto brackets = bench.one("3h LA mit Irja (1h, bezahlt) und Casimir: genietet");
    REQUIRE(brackets.workers.size() == 3);
    CHECK(brackets.workers[1].minutes == Minutes{60});
    CHECK(brackets.workers[1].paid);
    CHECK(brackets.kind == WorkKind::Assembly);
    // The only time there is was how long the work took.
    const auto together = bench.one("with Irja 2h LA: swept");
    CHECK(together.minutes == Minutes{120});
    CHECK_FALSE(together.workers[1].minutes.has_value());
    CHECK(bench.read("1h LA with Irja 2h: swept").errors.size() == 1);
}

TEST_CASE("A helper nobody knows is told, and stays in the note")
{
    const auto reading = EntryBench().read("1h LA with Wilma: bucked rivets");
    REQUIRE(reading.problems.size() == 1);
    CHECK(english(reading.problems.front()) ==
          "Nobody on record is called “Wilma”; it goes into the note.");
    CHECK(reading.sessions.front().note == "with Wilma: bucked rivets");
}

TEST_CASE("No time, more than a day and days to come are told, and the line can wait")
{
    const EntryBench bench;
    const auto told = [&](std::string_view line) {
        const auto reading = bench.read(line);
        return reading.errors.size() == 1 ? english(reading.errors.front()) : std::string();
    };
    CHECK(told("-2h LA: x") == "“-2h” is no length of time; leave it out when nobody knows.");
    CHECK(told("0m LA: x") == "“0m” is no length of time; leave it out when nobody knows.");
    CHECK(told("25h LA: x") == "“25h” is more than a day has; write each day's work by itself.");
    CHECK(told("24h LA: x").empty());
    CHECK(told("2026-03-15 1h LA: x") == "2026-03-15 lies ahead; the log tells what was done.");
    CHECK(told("tomorrow 1h LA: x") == "2026-03-15 lies ahead; the log tells what was done.");
    CHECK(told("LA at 18:01: x") == "2026-03-14T18:01 lies ahead; the log tells what was done.");
    CHECK(told("LA at 18:00: x").empty());
    // Such words in the note are nobody's time.
    CHECK(bench.read("2h LA: began the 50h inspection").errors.empty());
    CHECK(bench.one("LA began the 50h inspection").note == "began the 50h inspection");
}

TEST_CASE("The line may be German or French")
{
    const EntryBench bench;
    const auto german = bench.one("gestern von 19:00 bis 20:30 LA mit Irja: Haut genietet");
    CHECK(german.began == Moment::parse("2026-03-13T19:00"));
    CHECK(german.minutes == Minutes{90});
    CHECK(german.workers.size() == 2);
    CHECK(german.kind == WorkKind::Assembly);
    const auto french = bench.one("hier 2 heures LA avec Irja et Casimir: peint");
    CHECK(french.began == Moment::parse("2026-03-13"));
    CHECK(french.minutes == Minutes{120});
    CHECK(french.workers.size() == 3);
    CHECK(french.kind == WorkKind::Finishing);
    CHECK(bench.one("am Freitag 1h LA Nacharbeit: x").kind == WorkKind::Rework);
    CHECK(bench.one("am Freitag 1h LA: x").began == Moment::parse("2026-03-13"));
    const auto afternoon = bench.one("hier à 14h 2h LA : x");
    CHECK(afternoon.began == Moment::parse("2026-03-13T14:00"));
    CHECK(afternoon.minutes == Minutes{120});
    for (const auto text :
         {"1h Herstellung LA: x", "1h fabrication LA : x", "1h LA: vernäht und versenkt"})
        CHECK(bench.one(text).kind == WorkKind::Fabrication);
    CHECK(bench.one("1h Zusammenbau LA: x").kind == WorkKind::Assembly);
    CHECK(bench.one("1h Oberfläche LA: x").kind == WorkKind::Finishing);
    CHECK(bench.one("1h planification LA : x").kind == WorkKind::Planning);
    CHECK(bench.one("heute Morgen 1h LA: x").began == Moment::parse("2026-03-14"));
    CHECK(bench.one("45m Beanstandung 12: x").squawk_id == Id<Squawk>{50});
    CHECK(bench.one("45m anomalie 12 : x").squawk_id == Id<Squawk>{50});
}

TEST_CASE("A duration beside a span of the clock leaves the breaks out")
{
    const auto session = EntryBench().one("9:00-12:00 2h LA: x");
    CHECK(session.minutes == Minutes{120});
    CHECK(session.began == Moment::parse("2026-03-14T09:00"));
}

TEST_CASE("A second duration on a line is reported and kept in the note")
{
    const auto reading = EntryBench().read("1h LA 2h: x");
    REQUIRE(reading.problems.size() == 1);
    CHECK(reading.sessions.front().minutes == Minutes{60});
    CHECK(reading.sessions.front().note == "2h: x");
}

TEST_CASE("What is no time of day is told as that")
{
    const auto told = EntryBench().read("1h LA 25:99: x").problems;
    REQUIRE(told.size() == 1);
    CHECK(english(told.front()) == "“25:99” is no time of day; it goes into the note.");
}

TEST_CASE("What is written like a day and is none is told as that")
{
    const EntryBench bench;
    const auto told = [&](std::string_view line) {
        const auto problems = bench.read(line).problems;
        return problems.size() == 1 ? english(problems.front()) : std::string();
    };
    const std::string goesOn =
        " is no day; write it as 3 Mar 2026 or 2026-03-03. It goes into the note.";
    CHECK(told("1h 31.4. LA: x") == "“31.4.”" + goesOn);
    CHECK(told("1h 29.2.2027 LA: x") == "“29.2.2027”" + goesOn);
    CHECK(told("1h 12/11/25, LA: x") == "“12/11/25”" + goesOn);
    CHECK(told("1h LA 31.11.25 swept") == "“31.11.25”" + goesOn);
    CHECK(told("1h LA swept on 31.11.25").empty());
    CHECK(bench.one("1h 31.4. LA: x").note == "31.4.: x");
}

TEST_CASE("A day long before the project was begun is told")
{
    EntryBench bench;
    CHECK(bench.read("1h 3.11.1965 LA: x").problems.empty());
    bench.records.project.started_on = Moment::parse("2025-06-01");
    const auto told = bench.read("1h 3.11.1965 LA: x").problems;
    REQUIRE(told.size() == 1);
    CHECK(english(told.front()) ==
          "1965-11-03 is more than a year before the project was begun (2025-06-01).");
    CHECK(bench.read("1h 3.11.2024 LA: x").problems.empty());
}

TEST_CASE("The day of a month behind hours is no minutes")
{
    const EntryBench bench;
    const auto session = bench.one("1 h 2 mar LA: x");
    CHECK(session.minutes == Minutes{60});
    CHECK(session.began == Moment::parse("2026-03-02"));
    CHECK(session.component_id == Id<Component>{30});
    CHECK(bench.one("2h 31 dec 2025 LA: x").began == Moment::parse("2025-12-31"));
    CHECK(bench.one("1 h 45 LA: x").minutes == Minutes{105});
    CHECK(bench.one("90 min 1 mar LA: x").minutes == Minutes{90});
}

TEST_CASE("A with that names nobody stays in the note")
{
    const auto session = EntryBench().one("1h LA riveted with the long yoke");
    CHECK(session.workers.empty());
    CHECK(session.note == "riveted with the long yoke");
}

TEST_CASE("Steps are ticked by plan reference, by part and number, or by number on the part")
{
    const EntryBench bench;
    CHECK(bench.read("1h LW-R3: riveted done 12-3 LW-R3.2").steps_done ==
          IdSet<Step>{Id<Step>{40}, Id<Step>{41}});
    CHECK(bench.read("1h LA: riveted done 7").steps_done == IdSet<Step>{Id<Step>{43}});
    const auto one = bench.one("1h: riveted done 12-3");
    CHECK(one.step_id == Id<Step>{40});
    CHECK(one.component_id == Id<Component>{11});
    CHECK(one.note == "riveted");
    const auto unclear = bench.read("1h LA: riveted done 12-4");
    CHECK(unclear.steps_done.empty());
    CHECK(unclear.problems.size() == 1);
    CHECK(bench.one("1h LA: riveting is done").note == "riveting is done");
}

TEST_CASE("Work on a squawk is rework on its part")
{
    const auto session = EntryBench().one("45m squawk 12: drilled and set again");
    CHECK(session.squawk_id == Id<Squawk>{50});
    CHECK(session.component_id == Id<Component>{30});
    CHECK(session.kind == WorkKind::Rework);
}

TEST_CASE("Without a colon the front is taken while it lasts")
{
    const EntryBench bench;
    const auto session = bench.one("2h15 left aileron dimpled both skins");
    CHECK(session.component_id == Id<Component>{30});
    CHECK(session.minutes == Minutes{135});
    CHECK(session.note == "dimpled both skins");
    const auto behind = bench.one("swept the floor 20m");
    CHECK(behind.minutes == Minutes{20});
    CHECK(behind.note == "swept the floor");
    CHECK_FALSE(behind.component_id);
}

TEST_CASE("An empty line is nothing, and hours are optional")
{
    const EntryBench bench;
    CHECK(bench.read("   ").sessions.empty());
    CHECK_FALSE(bench.one("LA: looked at it").minutes.has_value());
}

TEST_CASE("The words at the cursor are those that may name a part")
{
    const EntryBench bench;
    const PartFinder finder(bench.records);
    const auto at = [&](std::string_view line) {
        return partWordsAt(line, line.size(), bench.records, finder, bench.now).text;
    };
    CHECK(at("2h15 left ail") == "left ail");
    CHECK(at("2h15 left aileron: dimp").empty());
    CHECK(at("2h15").empty());
    CHECK(at("2h15 LA + right fl") == "right fl");
    CHECK(at("2h15 LA + RW: ri").empty());
}

TEST_CASE("A part's code goes before another part's name, whichever was entered first")
{
    for (const bool isCodeFirst : {false, true}) {
        Records records;
        const Id<Component> coded{isCodeFirst ? 1 : 2};
        records.components.put({.id = coded, .code = "TAIL", .name = "Empennage"});
        records.components.put({.id = Id<Component>{isCodeFirst ? 2 : 1}, .name = "Tail"});
        const auto exact = PartFinder(records).longestExact({"tail"}, 0);
        CHECK(exact.words == 1);
        CHECK(exact.part == coded);
    }
}

TEST_CASE("A dash that stands alone parts time, part and note, and is no minus")
{
    const EntryBench bench;
    for (const char *line : {"LA - 2h: drilled", "2h - LA: drilled", "LA – 2h – drilled",
                             "LA - drilled - 2h", "2 h — LA — drilled"}) {
        INFO(line);
        const auto reading = bench.read(line);
        REQUIRE(reading.sessions.size() == 1);
        CHECK(reading.errors.empty());
        CHECK(reading.problems.empty());
        CHECK(reading.sessions[0].minutes == Minutes{120});
        CHECK(reading.sessions[0].component_id == Id<Component>{30});
        CHECK(reading.sessions[0].note == "drilled");
    }
    CHECK(bench.one("9:00 - 11:00 LA: drilled").minutes == Minutes{120});
    CHECK(bench.read("LA -2h: drilled").errors.size() == 1);
}

TEST_CASE("A name that nobody has is told once, also behind one that is known")
{
    const auto reading = EntryBench().read("1h LA with Irja and Wilma: bucked rivets");
    REQUIRE(reading.problems.size() == 1);
    CHECK(english(reading.problems.front()) ==
          "Nobody on record is called “Wilma”; it goes into the note.");
    CHECK(reading.sessions.front().workers.size() == 2);
    CHECK(reading.sessions.front().note == "with Wilma: bucked rivets");
}

TEST_CASE("A second colon behind the first is the same, and no word of the note")
{
    const EntryBench bench;
    CHECK(bench.one("1h LA: : riveted").note == "riveted");
    CHECK(bench.one("1h LA: riveted : twice").note == "riveted : twice");
}

TEST_CASE("Helpers' times without one of the whole are shared among the parts")
{
    const auto reading = EntryBench().read("LA + RW with Irja 2h and Casimir 1h: drilled");
    REQUIRE(reading.sessions.size() == 2);
    std::int64_t helped = 0;
    for (const WorkSession &session : reading.sessions) {
        for (const auto &worker : session.workers)
            helped += worker.minutes.value_or(Minutes{0}).count();
    }
    CHECK(helped == 180);
}

} // namespace lastrivet::entry
