// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/print/PrintedFolder.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <string>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("On the front pages every grave point is named, and the rest counted by kind")
{
    const PrintedFolder folder;
    packet::Packet packet = wingPacket();
    const std::string closing = packet.standings[0].title;
    packet.front.open.clear();
    for (int number = 1; number <= 20; ++number)
        packet.front.open.push_back({Id<Closing>{1},
                                     closing,
                                     {"{0}: open", {"Crack " + std::to_string(number)}},
                                     {},
                                     RecordType::Squawk,
                                     true});
    for (int number = 1; number <= 30; ++number)
        packet.front.open.push_back({Id<Closing>{1},
                                     closing,
                                     {"{0}: not done", {"Lesser step " + std::to_string(number)}},
                                     {},
                                     RecordType::Step,
                                     false});
    const QString text = PrintedFolder::text(folder.print(packet)).simplified();
    CHECK(text.contains(QLatin1String("Crack 20: open")));
    CHECK_FALSE(text.contains(QLatin1String("Lesser step 1:")));
    CHECK(text.contains(QLatin1String("And 30 more: steps 30")));
    CHECK(text.contains(QLatin1String("50 points are open")));
    CHECK(text.contains(QLatin1String("20 of them are named here.")));
    packet.front.open.resize(20);
    CHECK_FALSE(
        PrintedFolder::text(folder.print(packet)).contains(QLatin1String("are named here")));
}

TEST_CASE("A video of which nobody knows when it was taken has the day of its intake, called that")
{
    const PrintedFolder folder;
    packet::Packet packet = wingPacket();
    packet::Photo film;
    film.file = "photos/film.mp4";
    film.taken_on = Moment::parse("2026-01-05T10:00");
    packet.videos = {film};
    const QLatin1String said("taken in on");
    CHECK_FALSE(PrintedFolder::text(folder.print(packet)).contains(said));
    packet.videos.front().is_day_of_intake = true;
    CHECK(PrintedFolder::text(folder.print(packet)).contains(said));
}

TEST_CASE("The front pages say what a bar before an open point means, where there is one")
{
    const PrintedFolder folder;
    packet::Packet packet = wingPacket();
    const QLatin1String said("What has a bar before it keeps its closing open.");
    packet.front.open.clear();
    CHECK_FALSE(PrintedFolder::text(folder.print(packet)).contains(said));
    packet.front.open.push_back(
        {Id<Closing>{1}, "Lower skin", {"{0}: open", {"Crack"}}, {}, RecordType::Squawk, true});
    CHECK(PrintedFolder::text(folder.print(packet)).contains(said));
}

TEST_CASE("What is open stands below its own closing where two bear one title")
{
    const PrintedFolder folder;
    packet::Packet packet = wingPacket();
    packet.front.open.clear();
    for (const std::int64_t id : {1, 2})
        packet.front.open.push_back({Id<Closing>{id},
                                     "Lower skin",
                                     {"{0}: open", {"Crack " + std::to_string(id)}},
                                     {},
                                     RecordType::Squawk,
                                     true});
    const QString text = PrintedFolder::text(folder.print(packet)).simplified();
    CHECK(text.contains(QLatin1String("Lower skin Crack 1: open")));
    CHECK(text.contains(QLatin1String("Lower skin Crack 2: open")));
}

TEST_CASE("A deviation that was rejected and is still built says so, with the day it was raised")
{
    const PrintedFolder folder;
    packet::Packet packet = wingPacket();
    REQUIRE(packet.deviations.size() == 1);
    packet::DeviationEntry &deviation = packet.deviations[0];
    deviation.built_on = Moment::parse("2026-01-10");
    const auto printed = [&] { return PrintedFolder::text(folder.print(packet)).simplified(); };
    CHECK(printed().contains(QLatin1String("raised 5 Jan 2026")));
    CHECK_FALSE(printed().contains(QLatin1String("still built")));
    deviation.decision = Decision::Rejected;
    CHECK(printed().contains(QLatin1String("still built")));
    deviation.undone_on = Moment::parse("2026-02-01");
    CHECK_FALSE(printed().contains(QLatin1String("still built")));
}

TEST_CASE("What was weighed up before a decision or a correction stands beside it")
{
    const PrintedFolder folder;
    packet::Packet packet = wingPacket();
    REQUIRE(packet.deviations.size() == 1);
    REQUIRE_FALSE(packet.squawks.empty());
    packet.deviations[0].alternatives = "a new rib";
    packet::SquawkEntry &squawk = packet.squawks[0];
    squawk.correction.clear();
    squawk.repair_options = {{"Blend it", "quick", "thinner", true},
                             {"Fit a patch", {}, {}, false}};
    // Columns stand side by side, so that the words of one are not in one line.
    QString text = PrintedFolder::text(folder.print(packet));
    for (const char *word :
         {"Alternatives:", "chosen:", "Blend", "quick", "against", "thinner", "patch"}) {
        INFO(word);
        CHECK(text.contains(QLatin1String(word)));
    }
    squawk.correction = "Blended";
    text = PrintedFolder::text(folder.print(packet));
    CHECK(text.contains(QLatin1String("Blended")));
    CHECK_FALSE(text.contains(QLatin1String("thinner")));
}

TEST_CASE("The table of torques prints what counts, and a wrench out of calibration")
{
    const PrintedFolder folder;
    packet::Packet packet = wingPacket();
    REQUIRE(packet.fasteners.size() == 1);
    packet.fasteners[0].torque_value = 8;
    packet.fasteners[0].torque_drag = 2;
    packet.fasteners[0].was_tool_uncalibrated = true;
    const QString text = PrintedFolder::text(folder.print(packet)).simplified();
    CHECK(text.contains(QLatin1String("8, drag 2")));
    CHECK(text.contains(QLatin1String("6 net")));
    CHECK(text.contains(QLatin1String("not in calibration")));
}

TEST_CASE("The boxes inside stand in the packet with their day and whether somebody signed")
{
    const PrintedFolder folder;
    packet::Packet packet = wingPacket();
    REQUIRE(packet.within.size() == 1);
    packet::Standing::Signature late;
    late.by = "Ines Inspector";
    late.credential = "No. 77";
    late.signed_on = Moment::parse("2026-02-01");
    late.remarks = "seen through the filler";
    late.has_sheet = true;
    packet.within[0].late_acceptances = {late};
    const QString text = PrintedFolder::text(folder.print(packet)).simplified();
    for (const char *words :
         {"Boxes inside, and who signed them", "closed with gaps", "10 Jan 2026, Berta Builder",
          "Accepted late", "Ines Inspector (No. 77)", "signed sheet filed",
          "seen through the filler"}) {
        INFO(words);
        CHECK(text.contains(QLatin1String(words)));
    }
}

TEST_CASE("What would clear a finding stands beside each, on whatever page it comes to")
{
    const PrintedFolder folder;
    packet::Packet packet = wingPacket();
    packet::Standing::RuleLine line;
    line.rule = readiness::Rule::UndoneStep;
    line.outcome = readiness::Outcome::NotMet;
    line.demand = {"every step is done or dropped", {}};
    line.looked_at = {"{0} steps", {"3"}};
    for (const char *title : {"First step: not done", "Next step: not done", "Last step: not done"})
        line.findings.push_back(
            {readiness::Weight::Must, {"{0}", {title}}, {"do it, or drop it", {}}, {}, {}});
    packet.standings[0].rules = {line};
    const QString text = PrintedFolder::text(folder.print(packet)).simplified();
    CHECK(text.count(QLatin1String("not done Do it, or drop it")) == 3);
}

TEST_CASE(
    "Lines for deficiencies give way so that the cautions do not stand alone behind the sheet")
{
    const PrintedFolder folder;
    packet::Packet packet = wingPacket();
    packet.signed_sheets.clear();
    packet::SheetToSign &sheet = packet.sheets[0];
    const auto open = std::ranges::find(sheet.hold_points, HoldPointKind::PreCover,
                                        &packet::Standing::HoldPointLine::kind);
    REQUIRE(open != sheet.hold_points.end());
    sheet.hold_points = {*open};
    packet::SheetToSign::Deficiency deficiency;
    deficiency.text = "Rivet set too deep";
    for (const std::size_t known : {std::size_t{0}, std::size_t{1}, std::size_t{2}}) {
        INFO(known);
        sheet.deficiencies.assign(known, deficiency);
        const QStringList pages = PrintedFolder::pageTexts(folder.print(packet));
        CHECK(pages.last().contains(QLatin1String("Cautions")));
        CHECK(pages.last().contains(QLatin1String("Builder, name")));
    }
}

TEST_CASE("Where the cautions would stand alone, the builder's own block comes to their page")
{
    const PrintedFolder folder;
    packet::Packet packet = wingPacket();
    packet.signed_sheets.clear();
    packet::SheetToSign &sheet = packet.sheets[0];
    const auto open = std::ranges::find(sheet.hold_points, HoldPointKind::PreCover,
                                        &packet::Standing::HoldPointLine::kind);
    REQUIRE(open != sheet.hold_points.end());
    packet::Standing::HoldPointLine own = *open;
    own.kind = HoldPointKind::ToolAndDebrisCheck;
    own.signer_role = SignerRole::Builder;
    sheet.hold_points = {*open, own};
    packet::SheetToSign::Deficiency deficiency;
    deficiency.text = "Rivet set too deep";
    for (const print::Paper paper : {print::Paper::A4, print::Paper::Letter}) {
        for (std::size_t known = 0; known < 8; ++known) {
            INFO(known);
            sheet.deficiencies.assign(known, deficiency);
            const QStringList pages =
                PrintedFolder::pageTexts(folder.print(packet, {.paper = paper, .wording = {}}));
            CHECK(pages.last().contains(QLatin1String("Cautions")));
            CHECK(pages.last().contains(QLatin1String("Builder, name")));
        }
    }
}

TEST_CASE("Where a sheet for two visitors leaves them no room, the cautions stand before it")
{
    const PrintedFolder folder;
    packet::Packet packet = wingPacket();
    packet.signed_sheets.clear();
    packet::SheetToSign &sheet = packet.sheets[0];
    const auto open = std::ranges::find(sheet.hold_points, HoldPointKind::PreCover,
                                        &packet::Standing::HoldPointLine::kind);
    REQUIRE(open != sheet.hold_points.end());
    sheet.hold_points = {*open, *open};
    packet::SheetToSign::Deficiency deficiency;
    deficiency.text = "Rivet set too deep";
    int before = 0;
    for (const print::Paper paper : {print::Paper::A4, print::Paper::Letter}) {
        for (std::size_t known = 0; known < 6; ++known) {
            INFO(known);
            sheet.deficiencies.assign(known, deficiency);
            const QStringList pages =
                PrintedFolder::pageTexts(folder.print(packet, {.paper = paper, .wording = {}}));
            CHECK(pages.last().contains(QLatin1String("Builder, name")));
            CHECK(
                pages.join(QLatin1Char(' ')).contains(QLatin1String("A caution of the profile.")));
            before += pages.last().contains(QLatin1String("Cautions")) ? 0 : 1;
        }
    }
    CHECK(before > 0);
}

TEST_CASE("The sources of an inspector's list stand on the page of its last line")
{
    const PrintedFolder folder;
    packet::Packet packet = wingPacket();
    REQUIRE_FALSE(packet.check_lists.empty());
    packet.check_lists.resize(1);
    packet::CheckList::Line line;
    line.item = "Look here";
    line.source = "Circular 43";
    int turned = 0;
    for (std::size_t count = 18; count < 34; ++count) {
        INFO(count);
        packet.check_lists[0].lines.assign(count, line);
        packet.check_lists[0].lines.back().item = "Look last";
        packet.check_lists[0].lines.back().source = "Handbook 7";
        const QStringList pages = PrintedFolder::pageTexts(folder.print(packet));
        const auto isNote = [](const QString &page) {
            return page.contains(QLatin1String("Circular 43"));
        };
        REQUIRE(std::count_if(pages.begin(), pages.end(), isNote) == 1);
        const QString page = *std::find_if(pages.begin(), pages.end(), isNote);
        CHECK(page.contains(QLatin1String("Look last")));
        CHECK(page.contains(QLatin1String("Handbook 7")));
        turned += page.contains(QLatin1String("The inspector's list")) ? 0 : 1;
    }
    CHECK(turned > 0);
}

TEST_CASE("A tool says how often it was used out of calibration, a measurement that it was")
{
    const PrintedFolder folder;
    packet::Packet packet = wingPacket();
    REQUIRE(packet.tools.size() == 1);
    REQUIRE(packet.measurements.size() == 1);
    const auto printed = [&] { return PrintedFolder::text(folder.print(packet)).simplified(); };
    packet.tools[0].uses = 3;
    CHECK_FALSE(printed().contains(QLatin1String("of 3 uses")));
    packet.tools[0].uncalibrated_uses = 2;
    CHECK(printed().contains(QLatin1String("2 of 3 uses")));
    const auto before = printed().count(QLatin1String("calibration"));
    packet.measurements[0].tool = "Gauge";
    packet.measurements[0].was_tool_uncalibrated = true;
    CHECK(printed().count(QLatin1String("calibration")) == before + 1);
}

TEST_CASE("What a rule looked at parts thousands as its points do")
{
    const PrintedFolder folder;
    packet::Packet packet = wingPacket();
    for (auto &line : packet.standings[0].rules)
        line.looked_at.arguments = {"1874"};
    const QString text = PrintedFolder::text(folder.print(packet));
    CHECK(text.contains(QLatin1String("1,874")));
    CHECK_FALSE(text.contains(QLatin1String("(1874 ")));
}

TEST_CASE("What is closed already is not said to be closed yet")
{
    const PrintedFolder folder;
    packet::Packet packet = wingPacket();
    CHECK(PrintedFolder::text(folder.print(packet)).contains(QLatin1String("To be closed")));
    packet.front.to_close[0].state = readiness::State::ClosedEarly;
    CHECK_FALSE(PrintedFolder::text(folder.print(packet)).contains(QLatin1String("To be closed")));
}

TEST_CASE("What is asked names its closing only where the packet is about several")
{
    const PrintedFolder folder;
    packet::Packet packet = wingPacket();
    // What is to be decided of a box inside names that.
    std::erase_if(packet.front.asked, [](const auto &request) { return !request.record; });
    REQUIRE_FALSE(packet.front.asked.empty());
    const auto first = [&] { return PrintedFolder::pageTexts(folder.print(packet)).first(); };
    CHECK_FALSE(first().contains(QLatin1String("For closing")));
    packet.front.to_close.push_back(packet.front.to_close[0]);
    CHECK(first().contains(QLatin1String("For closing")));
}

TEST_CASE("Of much that is asked the front pages name a part, what is grave in any case, and count")
{
    const PrintedFolder folder;
    packet::Packet packet = wingPacket();
    packet.front.asked.clear();
    const auto ask = [&](const std::string &what, bool isGrave) {
        packet.front.asked.push_back({SignerRole::Inspector,
                                      {"{0}: open", {what}},
                                      {"A", "B", "C", "D"},
                                      RecordRef{RecordType::Squawk, 1},
                                      isGrave});
    };
    for (int number = 1; number <= 300; ++number)
        ask("Scratch " + std::to_string(number), false);
    ask("Crack", true);
    packet.front.to_close.push_back(packet.front.to_close[0]);
    const QString text = PrintedFolder::text(folder.print(packet)).simplified();
    CHECK(text.contains(QLatin1String("301 points are asked; 21 of them are named here")));
    CHECK(text.contains(QLatin1String("Scratch 20: open")));
    CHECK_FALSE(text.contains(QLatin1String("Scratch 21: open")));
    CHECK(text.contains(QLatin1String("Crack: open")));
    CHECK(text.contains(QLatin1String("A, B and 2 more")));
    packet.front.asked.resize(20);
    CHECK_FALSE(
        PrintedFolder::text(folder.print(packet)).contains(QLatin1String("points are asked")));
}

TEST_CASE("Who is to sign a hold point is not said as if he had signed it")
{
    const PrintedFolder folder;
    const packet::Packet packet = wingPacket();
    const QString text = PrintedFolder::text(folder.print(packet)).simplified();
    CHECK(text.contains(QLatin1String("Who signs")));
    CHECK(text.contains(QLatin1String("Not signed")));
    CHECK_FALSE(text.contains(QLatin1String("Signed by")));
}

TEST_CASE("A rejection stays on the paper beside what was signed or waived after it")
{
    const PrintedFolder folder;
    packet::Packet packet = wingPacket();
    packet::Standing::Signature rejected;
    rejected.by = "Ines Inspector";
    rejected.signed_on = Moment::parse("2026-02-01");
    rejected.result = SignOffResult::Rejected;
    packet::Standing::Signature accepted = rejected;
    accepted.signed_on = Moment::parse("2026-03-01");
    accepted.result = SignOffResult::Accepted;
    packet::Standing::HoldPointLine line;
    line.signature = accepted;
    line.before = {rejected};
    packet.standings[0].hold_points = {line};
    const auto printed = [&] { return PrintedFolder::text(folder.print(packet)).simplified(); };
    CHECK(printed().contains(QLatin1String("Before: rejected, 1 Feb 2026")));
    line.signature = rejected;
    line.before.clear();
    line.waived_on = Moment::parse("2026-03-02");
    packet.standings[0].hold_points = {line};
    CHECK(printed().contains(QLatin1String("Before: rejected, 1 Feb 2026")));
}
