// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/print/PrintedFolder.h"

#include <catch2/catch.hpp>

#include <string>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("What is to be decided of closings with gaps names each, and counts them where many are")
{
    const PrintedFolder folder;
    packet::Packet packet = wingPacket();
    packet.front.asked.clear();
    const auto ask = [&](int number) {
        packet.front.asked.push_back({SignerRole::Inspector,
                                      {"decide whether it may stay closed or must be opened", {}},
                                      {"Inner box " + std::to_string(number) + "."},
                                      {},
                                      true});
    };
    ask(1);
    const auto text = [&] { return PrintedFolder::text(folder.print(packet)).simplified(); };
    CHECK(text().contains(QLatin1String("Inner box 1.")));
    for (int number = 2; number <= 1300; ++number)
        ask(number);
    const QString many = text();
    CHECK(many.contains(QLatin1String("1,300 closings")));
    CHECK_FALSE(many.contains(QLatin1String("Inner box")));
    CHECK_FALSE(many.contains(QLatin1String("points are asked")));
}

TEST_CASE("What is not on record is said by closing, or by kind where there are many closings")
{
    const PrintedFolder folder;
    packet::Packet packet = wingPacket();
    REQUIRE(packet.front.not_on_record.size() == 1);
    const auto row = packet.front.not_on_record[0];
    packet.front.lacking = {packet::FrontPages::Lacking{row.kinds[0], {}}};
    for (int number = 1; number <= 300; ++number)
        packet.front.lacking[0].closings.push_back("Box " + std::to_string(number) + ".");
    const auto text = [&] { return PrintedFolder::text(folder.print(packet)).simplified(); };
    packet.front.not_on_record.assign(30, row);
    CHECK_FALSE(text().contains(QLatin1String("300 of 1")));
    packet.front.not_on_record.assign(300, row);
    const QString many = text();
    CHECK(many.contains(QLatin1String("300 of 1")));
    CHECK(many.contains(QLatin1String("Box 8.")));
    CHECK_FALSE(many.contains(QLatin1String("Box 9.")));
    CHECK(many.contains(QLatin1String("292 more")));
    CHECK(many.contains(QLatin1String("is on record for a closing stands under Readiness.")));
}
