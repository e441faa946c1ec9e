// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/today/Reminders.h"

#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <set>
#include <string>
#include <vector>

using namespace lastrivet;
using namespace lastrivet::test;
using today::AttentionKind;

namespace {

constexpr auto day = "2026-03-20";

struct Site : RuleBench {
    Site()
        : RuleBench(readiness::Rule::OpenSquawk)
    {
    }

    std::vector<today::Attention> rows() const { return today::reminders(records, ask(day)); }
    /// The sentences of one kind.
    std::vector<std::string> said(AttentionKind kind) const
    {
        std::vector<std::string> sentences;
        for (const auto &row : rows()) {
            if (row.kind == kind)
                sentences.push_back(english(row.sentence));
        }
        return sentences;
    }
    void closeBox()
    {
        change(box, [](Closing &c) { c.events = {{.closed_on = on("2026-03-10")}}; });
    }
};

using Said = std::vector<std::string>;

} // namespace

TEST_CASE("What is open behind a closed skin is told, and that the skin was closed over it")
{
    Site site;
    const auto squawk = site.squawk(site.rib, "2026-03-01");
    CHECK(site.rows().empty());
    site.closeBox();
    CHECK(site.said(AttentionKind::OutOfReach) ==
          Said{"Open behind “Skin on Wing”, which is closed: squawk 1, Overdriven rivet in Rib"});
    CHECK(site.rows().front().record == RecordRef{RecordType::Squawk, squawk.value()});
    const auto early = site.said(AttentionKind::ClosedEarly);
    REQUIRE(early.size() == 1);
    CHECK_THAT(early.front(), Catch::StartsWith("Skin on Wing was closed with gaps: ") &&
                                  Catch::Contains("Overdriven rivet"));
    site.change(squawk, [](Squawk &s) { s.accepted_on = on("2026-03-05"); });
    CHECK(site.rows().empty());
}

TEST_CASE("Of what others closed it is told who has to say something about it")
{
    Site site;
    site.profile.factory_closing_needs_document = true;
    site.squawk(site.rib, "2026-03-01");
    site.closeBox();
    site.change(site.box, [](Closing &c) { c.made_by = MadeBy::EarlierBuilder; });
    CHECK(site.said(AttentionKind::ClosedEarly) ==
          Said{"Skin on Wing was closed before these records began; the inspector decides"});
    site.change(site.box, [](Closing &c) { c.made_by = MadeBy::Factory; });
    CHECK(site.said(AttentionKind::ClosedEarly) ==
          Said{"Skin on Wing was closed by the factory; its document is not on record"});
}

TEST_CASE("A signature that work came after is told while the closing is open")
{
    Site site;
    site.signedPoint(HoldPointKind::OwnCheck, SignerRole::Builder, "2026-03-05");
    CHECK(site.said(AttentionKind::OutdatedSignature).empty());
    site.session(site.rib, "2026-03-06", 30);
    const auto outdated = site.said(AttentionKind::OutdatedSignature);
    REQUIRE(outdated.size() == 1);
    CHECK_THAT(outdated.front(),
               Catch::StartsWith("Skin on Wing: ") &&
                   Catch::EndsWith("after the signature came work on 2026-03-06 in Rib"));
    site.closeBox();
    CHECK(site.said(AttentionKind::OutdatedSignature).empty());
}

TEST_CASE("A visit is told from asking for it until it was held or cancelled")
{
    Site site;
    const auto visit = site.add(Inspection{.asked_on = on("2026-03-10")});
    CHECK(site.said(AttentionKind::Visit) ==
          Said{"A visit was asked for on 2026-03-10; no day is set yet"});
    site.change(visit, [](Inspection &i) { i.planned_for = on("2026-03-25"); });
    CHECK(site.said(AttentionKind::Visit) == Said{"A visit is planned for 2026-03-25"});
    site.change(visit, [](Inspection &i) { i.held_on = on("2026-03-18"); });
    CHECK(site.said(AttentionKind::Visit).empty());
    site.change(visit, [](Inspection &i) {
        i.held_on.reset();
        i.cancelled_on = on("2026-03-18");
    });
    CHECK(site.said(AttentionKind::Visit).empty());
}

TEST_CASE("Of what the records lack one is named, of several the first and how many they are")
{
    Site site;
    const auto addWithoutPart = [&] {
        site.change(site.deviation(site.rib, "2026-03-01"),
                    [](Deviation &d) { d.component_ids.clear(); });
    };
    addWithoutPart();
    CHECK(site.said(AttentionKind::ToComplete) == Said{"deviation 1, Longer bolt names no part"});
    addWithoutPart();
    CHECK(site.said(AttentionKind::ToComplete) ==
          Said{"2 open papers name no part; the first is deviation 1, Longer bolt"});
}

TEST_CASE("What can hurt somebody stands before what can wait, and every kind has its row")
{
    Site site;
    site.change(site.fastener(site.rib, "Hinge"), [](Fastener &f) {
        f.torque_min = 20;
        f.fitted_on = on("2026-03-01");
    });
    site.closeBox();
    const auto other = site.closing(site.fuselage);
    const auto point = site.holdPoint(other, HoldPointKind::OwnCheck, SignerRole::Builder);
    site.signOff(point, site.builder, "2026-03-05");
    site.session(site.fuselage, "2026-03-06", 30);
    site.add(Inspection{.asked_on = on("2026-03-10")});
    site.change(site.lot("Sealant"), [](MaterialLot &l) { l.expires_on = on("2026-03-25"); });
    site.add(Tool{.name = "Torque wrench", .needs_calibration = true});
    site.change(site.partLine({}, "Bolts", 4),
                [](PartLine &l) { l.expected_on = on("2026-03-15"); });
    site.change(site.bulletin(site.rib, "2026-03-15"),
                [](Bulletin &b) { b.component_ids.clear(); });
    const auto rows = site.rows();
    std::vector<AttentionKind> kinds;
    for (const auto &row : rows)
        kinds.push_back(row.kind);
    CHECK(std::is_sorted(kinds.begin(), kinds.end()));
    // From finger-tight bolts to gaps in the records there are nine.
    CHECK(std::set(kinds.begin(), kinds.end()).size() == 9);
    CHECK(kinds.front() == AttentionKind::FingerTight);
    CHECK(kinds.back() == AttentionKind::ToComplete);
}
