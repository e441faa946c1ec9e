// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fasteners/FastenerLine.h"

#include "core/fasteners/SpokenWords.h"
#include "core/fasteners/TorqueProposal.h"
#include "core/fasteners/TorqueUnits.h"

#include <catch2/catch.hpp>

#include <optional>
#include <string>
#include <vector>

using namespace lastrivet;
using namespace lastrivet::fasteners;

namespace {

Fastener read(std::string_view line)
{
    const auto fastener = readFastenerLine(line);
    INFO(line);
    REQUIRE(fastener);
    return *fastener;
}

std::string why(std::string_view line)
{
    const auto fastener = readFastenerLine(line);
    INFO(line);
    REQUIRE_FALSE(fastener);
    return english(fastener.reason());
}

} // namespace

TEST_CASE("Twelve equal bolts are one line, with the limits of the table for their thread")
{
    const auto bolts = read("12 x rear spar hinge, AN4-7A, 1/4-28, drag 6, split pin");
    CHECK(bolts.quantity == 12);
    CHECK(bolts.place == "rear spar hinge");
    CHECK(bolts.hardware == "AN4-7A");
    CHECK(bolts.thread == "1/4-28");
    // AC 43.13-1B (9/8/98) table 7-1: 50 to 70 in tension, 30 to 40 in shear.
    CHECK(bolts.torque_min == 50.0);
    CHECK(bolts.torque_max == 70.0);
    CHECK(bolts.torque_drag == 6.0);
    CHECK(bolts.torque_unit == TorqueUnit::InchPounds);
    CHECK(bolts.locking == Locking::SplitPin);
    const auto shear = read("2 × horn, 1/4-28 shear");
    CHECK(shear.torque_min == 30.0);
    CHECK(shear.torque_max == 40.0);
    CHECK(read("horn, 1/4-28, shear").torque_max == 40.0);
}

TEST_CASE("A thread keeps its torques whether its series stands behind a blank or not")
{
    for (const auto *thread :
         {"1/4-28UNF", "1/4-28unf", "1/4-28UNF-3A", "1/4-28 UNF-3A", "1/4-28"}) {
        INFO(thread);
        const auto bolt = read("hinge, " + std::string(thread));
        CHECK(bolt.thread == "1/4-28");
        CHECK(bolt.torque_max == 70.0);
        CHECK(bolt.hardware.empty());
        CHECK(read("hinge, " + std::string(thread) + " shear").torque_max == 40.0);
    }
    CHECK(read("hinge, m6, 8-10 N-m").thread == "M6");
    CHECK(read("hinge, m10x1.25, 8-10 N-m").thread == "M10x1.25");
    CHECK(why("hinge, m6").find("no thread “M6”") != std::string::npos);
    CHECK(read("tank, M2-T20, m2-t20, R-28UNF").hardware == "M2-T20, m2-t20, R-28UNF");
}

TEST_CASE("A thread is one with blanks in it, and a bolt's length is none")
{
    for (const auto *thread : {"1/4 - 28", "1/4 -28", "1/4–28", "1/4 - 28 UNF-3A"}) {
        INFO(thread);
        const auto bolt = read("hinge, " + std::string(thread));
        CHECK(bolt.thread == "1/4-28");
        CHECK(bolt.hardware.empty());
        CHECK(read("hinge, " + std::string(thread) + " shear").torque_max == 40.0);
    }
    for (const auto *thread : {"No. 10-32", "no 10 - 32", "Nr. 10-32", "# 10-32", "10-32"})
        CHECK(read("hinge, " + std::string(thread)).thread == "10-32");
    CHECK(read("hinge, #10-32").thread == "#10-32");
    for (const auto *thread : {"M6 x 1", "m6 × 1", "M6X1", "M6x1"}) {
        INFO(thread);
        const auto bolt = read("hinge, " + std::string(thread) + ", 8-10 N-m");
        CHECK(bolt.thread == "M6x1");
        CHECK(bolt.hardware.empty());
    }
    CHECK(read("hinge, M10 x 1,25, 35-40 N-m").thread == "M10x1.25");
    CHECK(read("hinge, no, nr., M, M x").hardware == "no, nr., M, M x");
    const auto screw = read("hinge, M6, M6 x 20, 8-10 N-m");
    CHECK(screw.thread == "M6");
    CHECK(screw.hardware == "M6 x 20");
}

TEST_CASE("Dashes, a minus sign and a hyphen at which no line ends are hyphens in a thread")
{
    for (const auto *dash : {"-", "\u2010", "\u2011", "\u2012", "–", "—", "−"}) {
        const std::string sign(dash);
        for (const auto &thread :
             {"1/4" + sign + "28", "1/4" + sign + "28 UNF", "1/4" + sign + "28 UNF-3A",
              "1/4" + sign + "28 UNF" + sign + "3A", "1/4 " + sign + " 28 UNF-3A",
              "1/4" + sign + "28UNF" + sign + "2B", "1/4" + sign + "28 UNF 3A"}) {
            INFO(thread);
            const auto bolt = read("hinge, AN4" + sign + "7A, " + thread);
            CHECK(bolt.thread == "1/4-28");
            CHECK(bolt.torque_max == 70.0);
            CHECK(bolt.hardware == "AN4-7A");
        }
    }
    CHECK(workshop::torque("1/4–28", workshop::Nut::Tension, 0)->thread == "1/4-28");
}

TEST_CASE("A shear nut is one in the words of all three languages, and no hardware")
{
    for (const auto *words : {"shear nut", "in shear", "Schermutter", "auf Scherung",
                              "en cisaillement", "écrou de cisaillement"}) {
        INFO(words);
        const auto apart = read("hinge, 1/4-28, " + std::string(words));
        CHECK(apart.torque_max == 40.0);
        CHECK(apart.hardware.empty());
        CHECK(read("hinge, 1/4-28 " + std::string(words)).torque_max == 40.0);
    }
    CHECK(read("hinge, 1/4-28 tension nut").torque_max == 70.0);
}

TEST_CASE("Drag is read in the words of all three languages, and French locking is not drag")
{
    for (const auto *words : {"drag 6", "Laufmoment 6", "frottement 6"})
        CHECK(read("rear hinge, 1/4-28, " + std::string(words)).torque_drag == 6.0);
    for (const auto *words : {"drag: 6", "Laufmoment: 6 in-lb", "frottement : 6"})
        CHECK(read("rear hinge, 1/4-28, " + std::string(words)).torque_drag == 6.0);
    CHECK_FALSE(behindDrag("freinage 6"));
    CHECK_FALSE(behindDrag("dragging 6"));
    CHECK_FALSE(behindDrag("drag"));
}

TEST_CASE("A comma before decimals belongs to its number")
{
    const auto metric = read("4 x engine mount, M8x1, 8,5-10 N-m, drag 1,5");
    CHECK(metric.torque_min == 8.5);
    CHECK(metric.torque_max == 10.0);
    CHECK(metric.torque_drag == 1.5);
    CHECK(metric.hardware.empty());
}

TEST_CASE("Limits of the drawing stand in place of the table's, in their own unit")
{
    const auto metric = read("4 x engine mount, M8x1, 20-24 N-m, drag 1.5");
    CHECK(metric.thread == "M8x1");
    CHECK(metric.torque_min == 20.0);
    CHECK(metric.torque_max == 24.0);
    CHECK(metric.torque_unit == TorqueUnit::NewtonMetres);
    CHECK(metric.torque_drag == 1.5);
    const auto own = read("leg bolt, 3/8-24, 180 to 190 in-lb");
    CHECK(own.torque_min == 180.0);
    CHECK(own.torque_max == 190.0);
}

TEST_CASE("A place alone is a line, and what is nothing else is the hardware")
{
    const auto pin = read("Trim tab hinge pin");
    CHECK(pin.quantity == 1);
    CHECK(pin.place == "Trim tab hinge pin");
    CHECK_FALSE(pin.torque_min.has_value());
    CHECK(read("tank, M2-T20, MS20470AD4-5").hardware == "M2-T20, MS20470AD4-5");
    CHECK(read("2 x Flügelanschluss, Splint").locking == Locking::SplitPin);
}

TEST_CASE("A wrong line says in one sentence what is wrong with it")
{
    CHECK(why(" , ") == "Say where the fastener is.");
    CHECK(why("0 x hinge") == "A line is for one fastener or more.");
    CHECK(why("hinge, M6") ==
          "The torque table has no thread “M6”: write the limits of the drawing "
          "behind it, like 8-10 N-m.");
    CHECK(why("hinge, 1/4-29").find("no thread “1/4-29”") != std::string::npos);
    CHECK(why("hinge, 10-32, drag 30") ==
          "A drag of 30 in-lb is more than the 25 in-lb that the nut is tightened to: something is "
          "wrong with the nut, the bolt or the reading.");
    CHECK(why("hinge, 10-32, drag -2") == "A drag is a torque of 0 or more.");
    CHECK(why("hinge, 70-50 in-lb") == "The lower limit 70 is above the upper limit 50.");
}

TEST_CASE("A torque that is not read as limits is told, and the table's do not stand in its place")
{
    for (const auto *torque : {"30 in-lb", "torque 30 in-lb", "min 20 max 30 in-lb", "30 in lb dry",
                               "max 3 N·m", "1-1.2 daN·m", "80-90 Ncm"}) {
        CHECK(why("strap, AN4-7A, 1/4-28, " + std::string(torque)).find("was not understood") !=
              std::string::npos);
        CHECK(why("strap " + std::string(torque) + ", 1/4-28").find("was not understood") !=
              std::string::npos);
    }
    CHECK(why("strap, 1/4-28, drag 6 lb").find("was not understood") != std::string::npos);
    for (const auto *limits : {"20-30 lb-in", "20–30 in·lb", "20 to 30 in lbs", "20-30 In-Lb"}) {
        const auto strap = read("strap, 1/4-28, " + std::string(limits));
        CHECK(strap.torque_min == 20.0);
        CHECK(strap.torque_max == 30.0);
        CHECK(strap.torque_unit == TorqueUnit::InchPounds);
    }
    CHECK(read("strap, M6, 8-10 N.m").torque_unit == TorqueUnit::NewtonMetres);
    // As a drawing has it: taken for hardware, its limits would give way to the table's.
    CHECK(read("strap, M6, 8-10 N\u22C5m").torque_max == 10.0);
    CHECK(read("strap, 1/4-28, 50-60 in\u2011lb").torque_max == 60.0);
    CHECK(read("drag strut bolt, drag strut, 1/4-28").hardware == "drag strut");
    CHECK(read("hinge, 1/4-28 UNF, shear").torque_max == 40.0);
    CHECK(read("hinge, 1/4-28 UNJF shear").torque_max == 40.0);
    CHECK(read("hinge, 1/4-28 unf").thread == "1/4-28");
}

TEST_CASE("A torque is read in its own unit, and comes in the fastener's")
{
    using enum TorqueUnit;
    CHECK(*readTorque("60", InchPounds) == 60);
    CHECK(*readTorque("60 in-lb", InchPounds) == 60);
    CHECK(*readTorque("5 ft-lb", InchPounds) == 60);
    CHECK(*readTorque("9 Nm", NewtonMetres) == 9);
    CHECK(*readTorque("60 in-lb", FootPounds) == 5);
    // NIST SP 811: 1 lbf·in = 1.129 848 E-01 N·m.
    CHECK(*readTorque("0,1129848 N·m", InchPounds) == Approx(1).epsilon(1e-6));
    for (const auto *wrong : {"hard", "", "-5", "0", "0 in-lb", "60 mm", "6 2", "1e9", "50-70"})
        CHECK(english(readTorque(wrong, InchPounds).reason()) ==
              "“" + std::string(wrong) +
                  "” is no torque; write it as 20 in-lb, 2 ft-lb or 2.3 N·m.");
}

TEST_CASE("A proposal is in the fastener's unit, with the drag added to what the wrench is set to")
{
    Fastener bolt;
    bolt.thread = "1/4-28";
    bolt.torque_drag = 6;
    const auto tension = proposalFor(bolt, workshop::Nut::Tension);
    REQUIRE(tension);
    CHECK(tension->least == 50);
    CHECK(tension->setLeast() == 56);
    CHECK(tension->setMost() == 76);
    CHECK(tension->allowed == 100);
    CHECK(tension->source.document.find("AC 43.13-1B") != std::string::npos);

    // NIST SP 811: 1 lbf·in = 1.129 848 E-01 N·m.
    CHECK(converted(1, TorqueUnit::InchPounds, TorqueUnit::NewtonMetres) ==
          Approx(0.1129848).epsilon(1e-6));
    CHECK(converted(12, TorqueUnit::InchPounds, TorqueUnit::FootPounds) == Approx(1));
    // NIST SP 811: 1 lbf·ft = 1.355 818 N·m.
    CHECK(converted(1, TorqueUnit::FootPounds, TorqueUnit::NewtonMetres) ==
          Approx(1.355818).epsilon(1e-6));
    bolt.torque_unit = TorqueUnit::NewtonMetres;
    bolt.torque_drag = 0.7;
    const auto metric = proposalFor(bolt, workshop::Nut::Tension);
    REQUIRE(metric);
    CHECK(metric->least == Approx(50 * 0.1129848).epsilon(1e-6));
    CHECK(metric->setMost() == Approx(70 * 0.1129848 + 0.7).epsilon(1e-6));

    bolt.torque_drag = 8;
    CHECK_FALSE(proposalFor(bolt, workshop::Nut::Tension));
    bolt.thread = "M6";
    CHECK(english(proposalFor(bolt, workshop::Nut::Tension).reason()) ==
          "The torque table has no thread “M6”: take the limits from the drawing.");
    bolt.thread = {};
    CHECK_FALSE(proposalFor(bolt, workshop::Nut::Tension));
}

TEST_CASE("A project's own limit stands in the place of the table's, in any unit")
{
    Fastener bolt;
    bolt.thread = "1/4-28";
    bolt.torque_drag = 6;
    auto proposal = *proposalFor(bolt, workshop::Nut::Tension);
    const auto table = proposal;
    CHECK(english(*takeOwnLimit(proposal, {"torque 1/4-28 tension", 5, 6, "turns", "Letter"})) ==
          "The project's own limit of 1/4-28 is in “turns”, which is no unit of torque.");
    CHECK(proposal.most == table.most);
    proposal.remark = "estimated";
    REQUIRE_FALSE(takeOwnLimit(proposal, {"torque 1/4-28 tension", 4, 5, "ft-lb", "Letter"}));
    CHECK(proposal.least == 48);
    CHECK(proposal.setMost() == 66);
    CHECK(proposal.source.document == "Letter");
    CHECK_FALSE(proposal.allowed.has_value());
    CHECK(proposal.remark.empty());
}

TEST_CASE("An own limit of one end leaves the table the other, as long as that goes with it")
{
    Fastener bolt;
    bolt.thread = "1/4-28";
    const auto with = [&](std::optional<double> least, std::optional<double> most) {
        return proposalFor(bolt, workshop::Nut::Tension,
                           {{"torque 1/4-28 tension", least, most, "in-lb", "Letter"}});
    };
    const auto upper = with({}, 55);
    REQUIRE(upper);
    CHECK(upper->least == 50);
    CHECK(upper->most == 55);
    CHECK(upper->is_most_own);
    CHECK_FALSE(upper->is_least_own);
    CHECK_FALSE(upper->allowed.has_value());
    CHECK(upper->source.document.find("AC 43.13-1B") != std::string::npos);
    const auto lower = with(60, {});
    REQUIRE(lower);
    CHECK(lower->least == 60);
    CHECK(lower->most == 70);
    CHECK(lower->allowed == 100.0);
    CHECK(english(with({}, 45).reason()) ==
          "The project's own limit of 1/4-28, from Letter, does not go with the table's 50 to 70 "
          "in-lb: write down both its ends.");
    // Of another kind of nut it says nothing, and a larger one allows for a larger drag.
    CHECK(proposalFor(bolt, workshop::Nut::Shear, {{"torque 1/4-28 tension", 5, 6, "in-lb", "L"}})
              ->most == 40);
    bolt.torque_drag = 80;
    CHECK_FALSE(proposalFor(bolt, workshop::Nut::Tension));
    CHECK(with(90, 100));
}

TEST_CASE("A typed fastener takes the project's own limits before the table's")
{
    const std::vector<workshop::OwnLimit> own{{"torque 1/4-28 tension", 45, 55, "in-lb", "Letter"},
                                              {"torque 10-32 tension", {}, 10, "in-lb", "Letter"}};
    const auto hinge = readFastenerLine("hinge, 1/4-28UNF", own);
    REQUIRE(hinge);
    CHECK(hinge->torque_min == 45.0);
    CHECK(hinge->torque_max == 55.0);
    CHECK(readFastenerLine("hinge, 1/4-28 shear", own)->torque_max == 40.0);
    CHECK(readFastenerLine("hinge, 1/4-28, 60-65 in-lb", own)->torque_max == 65.0);
    CHECK(
        english(readFastenerLine("hinge, 10-32", own).reason()).find("write down both its ends") !=
        std::string::npos);
}

TEST_CASE("A typed fastener has the unit of the project's own limits, and its drag says one")
{
    const std::vector<workshop::OwnLimit> own{{"torque 1/4-28 tension", 6.5, 7.5, "Nm", "Letter"}};
    const auto hinge = readFastenerLine("hinge, 1/4-28, drag 6 in-lb", own);
    REQUIRE(hinge);
    CHECK(hinge->torque_unit == TorqueUnit::NewtonMetres);
    CHECK(*hinge->torque_min == Approx(6.5));
    CHECK(*hinge->torque_max == Approx(7.5));
    CHECK(*hinge->torque_drag == Approx(0.678).margin(0.001));
    CHECK(english(readFastenerLine("hinge, 1/4-28, drag 6", own).reason()) ==
          "The project's own limit of 1/4-28 is in N-m: write the unit of the drag, too.");
    CHECK(readFastenerLine("hinge, 1/4-28 shear, drag 6", own)->torque_drag == 6.0);
}

TEST_CASE("Threads, counts and foreign torques are read as Germans write them")
{
    CHECK(read("Scharnier, 1/4\"-28").torque_max == 70.0);
    CHECK(read("Scharnier; M10×1,25; 30-35 Nm").thread == "M10x1.25");
    CHECK(read("Scharnier, strip 3\"").hardware == "strip 3\"");
    const auto hinge = read("6 Stück Scharnier; AN3-5A; 10-32");
    CHECK(hinge.quantity == 6);
    CHECK(hinge.place == "Scharnier");
    CHECK(hinge.hardware == "AN3-5A");
    CHECK(hinge.torque_max == 25.0);
    CHECK(why("Scharnier, 1/4-28, 0,6-0,8 mkg").find("was not understood") != std::string::npos);
}

TEST_CASE("Locking and torques are read as French builders write them, in Canada, too")
{
    CHECK(read("charnière, AN3-5A, fil à freiner").locking == Locking::SafetyWire);
    CHECK(read("charnière, AN3-5A, frein filet").locking == Locking::ThreadLocker);
    CHECK(read("charnière, écrou autofreiné").locking == Locking::SelfLockingNut);
    for (const auto *limits : {"30 à 35 po-lb", "30-35 lb-po", "30–35 po·lb"}) {
        const auto hinge = read("charnière, 1/4-28, " + std::string(limits));
        CHECK(hinge.torque_max == 35.0);
        CHECK(hinge.torque_unit == TorqueUnit::InchPounds);
    }
    CHECK(read("charnière, 1/4-28, 3-4 pi-lb").torque_unit == TorqueUnit::FootPounds);
    CHECK(why("charnière, 1/4-28, 30 po-lb").find("was not understood") != std::string::npos);
}

TEST_CASE("Torques with three decimals are read where a comma is no thousand, or told")
{
    const auto mount =
        readFastenerLine("mount, M8x1, 8,125-10 N-m, drag 1,250", {}, DecimalSign::Comma);
    REQUIRE(mount);
    CHECK(mount->torque_min == 8.125);
    CHECK(mount->torque_drag == 1.25);
    CHECK(why("mount, 1/4-28, drag 1,250").find("was not understood") != std::string::npos);
}

TEST_CASE("The wrench is set lower by an extension, with the drag in the sum")
{
    // TM 1-1500-204-23-9 para 8 works 300 in-lb with a lever of 10 and an extension of 4: 214.
    const auto setting = wrenchFor(294, 6, 10, 4);
    REQUIRE(setting);
    CHECK(*setting == Approx(214.29).epsilon(1e-4));
    CHECK_FALSE(wrenchFor(294, 6, 0, 4));
}
