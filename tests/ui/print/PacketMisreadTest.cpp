// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/print/PrintedFolder.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("Several closings have a sum of what keeps them open, a single one has none")
{
    const PrintedFolder folder;
    packet::Packet packet = wingPacket();
    REQUIRE(packet.front.to_close.size() == 1);
    const auto printed = [&] { return PrintedFolder::text(folder.print(packet)).simplified(); };
    CHECK_FALSE(printed().contains(QLatin1String("each point once")));
    packet.front.to_close[0].musts = 21;
    packet.front.to_close[0].shoulds = 2;
    packet.front.to_close.resize(3, packet.front.to_close[0]);
    CHECK(printed().contains(QLatin1String("In all 3 closings each point once")));
    CHECK(printed().contains(QLatin1String("63 6")));
}

TEST_CASE("Limits of a torque stand on one line, however narrow their column")
{
    const PrintedFolder folder;
    packet::Packet packet = wingPacket();
    REQUIRE(packet.fasteners.size() == 1);
    packet.fasteners[0].torque_min = 1000;
    packet.fasteners[0].torque_max = 1400;
    CHECK(PrintedFolder::text(folder.print(packet)).contains(QStringLiteral("1000 – 1400")));
}

TEST_CASE("What was missing at a closing with gaps begins with a capital, whichever it was")
{
    const PrintedFolder folder;
    packet::Packet packet = wingPacket();
    packet::FrontPages::ClosedWithGaps gaps;
    gaps.title = "Strut";
    gaps.missing = {{"no document on record in which the maker names it as closed", {}}};
    packet.front.closed_with_gaps = {gaps};
    const QString text = PrintedFolder::text(folder.print(packet));
    CHECK(text.contains(QLatin1String("No document on record")));
}

TEST_CASE("How many points a rule found is not taken for how many records it looked at")
{
    const PrintedFolder folder;
    packet::Packet packet = wingPacket();
    packet::Standing::RuleLine line;
    line.rule = readiness::Rule::UndoneStep;
    line.demand = {"every step is done or dropped", {}};
    line.looked_at = {"{0} steps", {"32"}};
    const auto printed = [&] {
        packet.standings[0].rules = {line};
        return PrintedFolder::text(folder.print(packet)).simplified();
    };
    CHECK(printed().contains(QLatin1String("met (32 steps)")));
    line.outcome = readiness::Outcome::NotMet;
    line.findings.push_back(
        {readiness::Weight::Must, {"{0}", {"Step: not done"}}, {"do it, or drop it", {}}, {}, {}});
    const QString text = printed();
    CHECK(text.contains(QLatin1String("not met: 1 point Every step")));
    CHECK(text.contains(QLatin1String("on record: 32 steps")));
    CHECK_FALSE(text.contains(QLatin1String("(32 steps)")));
    line.findings.push_back(line.findings.front());
    line.looked_at = {"{0} photographs", {"0"}};
    line.has_none = true;
    const QString none = printed();
    CHECK(none.contains(QLatin1String("not met: 2 points")));
    CHECK_FALSE(none.contains(QLatin1String("0 photographs")));
}
