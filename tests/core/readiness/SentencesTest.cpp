// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Sentences.h"

#include "core/readiness/Names.h"
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

#include <map>
#include <set>
#include <string>
#include <string_view>

using namespace lastrivet;
using namespace lastrivet::test;
using readiness::Rule;
using readiness::State;

namespace {

constexpr auto day = "2026-03-20";

/// A box with whatever can be wrong in it, one thing for each rule; and one beside it of which
/// nothing is on record.
struct Troubled : RuleBench {
    Id<Closing> bare;

    Troubled()
        : RuleBench(Rule::UndoneStep)
        , bare(closing(fuselage))
    {
        profile.interior_photos = 2;
        step(rib, "Deburr");
        partLine(rib, "Bracket", 4);
        add(Check{.closing_id = box, .item = "Drains open"});
        addPapers();
        addFasteners();
        addMeasurements();
        addMaterials();
        addSignatures();
        addBoxes();
    }

    void addPapers()
    {
        squawk(rib, "2026-03-01");
        squawk(wing, "2026-03-01");
        bulletin(rib, "2026-03-01");
        deviation(rib, "2026-03-01");
        change(deviation(rib, "2026-03-01"), [](Deviation &d) {
            d.built_on = d.decided_on = on("2026-03-02");
            d.decision = Decision::Rejected;
        });
    }
    void addFasteners()
    {
        fastener(rib, "Hinge");
        change(fastener(rib, "Root"), [](Fastener &f) {
            f.torque_min = 20;
            f.fitted_on = on("2026-03-02");
            f.locking = Locking::SplitPin;
        });
        const auto wrench = add(Tool{.name = "Torque wrench", .needs_calibration = true});
        change(fastener(rib, "Tip"), [&](Fastener &f) {
            f.torque_min = 20;
            f.torque_value = 10;
            f.tool_id = wrench;
            f.fitted_on = f.torqued_on = on("2026-03-02");
        });
    }
    void addMeasurements()
    {
        measurement(rib, "Travel");
        change(measurement(rib, "Gap"), [](Measurement &m) {
            m.maximum = 1;
            m.value = 2;
            m.measured_on = on("2026-03-02");
        });
    }
    void addMaterials()
    {
        const auto resin = lot("Resin");
        change(resin, [](MaterialLot &l) {
            l.cures = true;
            l.expires_on = on("2026-03-01");
        });
        change(materialUse(rib, resin, "2026-03-02"), [](MaterialUse &u) {
            u.sample = Sample::Failed;
            u.sample_on = on("2026-03-03");
        });
        change(materialUse(rib, lot("Sealant"), day),
               [](MaterialUse &u) { u.cure_minutes = Minutes{90}; });
    }
    void addSignatures()
    {
        holdPoint(box, HoldPointKind::Stage, SignerRole::Inspector);
        signedPoint(HoldPointKind::PreCover, SignerRole::Inspector, "2026-03-10");
        photo("2026-03-10", {{RecordType::Component, rib.value()}});
        session(rib, "2026-03-11", 60);
    }
    void addBoxes()
    {
        closing(panel, {rib});
        change(closing(rib), [](Closing &c) {
            c.title = "Cap of the rib";
            c.events = {{.closed_on = on("2026-03-10")}};
        });
    }
};

bool holds(const std::string &text, const std::string &words)
{
    return text.find(words) != std::string::npos;
}

} // namespace

TEST_CASE("Each rule finds its trouble, names the record in a sentence of its own, and says what "
          "clears it")
{
    const Troubled bench;
    const auto answer = bench.ask(day);
    std::set<Rule> found;
    std::map<std::string_view, Rule> patterns;
    for (const auto &closing : answer.closings) {
        for (const auto &blocker : closing.blockers) {
            found.insert(blocker.rule);
            const Message message = readiness::sentence(blocker, bench.records);
            CHECK(patterns.try_emplace(message.pattern, blocker.rule).first->second ==
                  blocker.rule);
            const std::string said = english(message);
            INFO(word(blocker.rule) << ": " << said);
            CHECK_FALSE(holds(said, "{"));
            // The closing itself is on the screen already; of a name the first letter may change.
            const RecordRef itself{RecordType::Closing, closing.id.value()};
            if (blocker.record != itself)
                CHECK(holds(said, readiness::nameOf(bench.records, blocker.record).substr(1)));
            const auto cleared = readiness::clearedBy(blocker, bench.records, bench.profile);
            CHECK_FALSE(cleared.pattern.empty());
            CHECK_FALSE(holds(english(cleared), "{"));
        }
    }
    for (std::size_t i = 0; i < Words<Rule>::list.size(); ++i) {
        INFO(Words<Rule>::list[i]);
        CHECK(found.contains(Rule(i)));
    }
}

TEST_CASE("No state and no sentence calls a closing safe or ready")
{
    for (std::size_t i = 0; i < Words<State>::list.size(); ++i) {
        const std::string said = english(readiness::stateInWords(State(i)));
        INFO(said);
        CHECK_FALSE(said.empty());
        CHECK_FALSE(holds(said, "safe"));
        CHECK_FALSE(holds(said, "ready"));
        CHECK_FALSE(holds(said, "OK"));
        // Whatever is neither closed nor clear stays open, and says so.
        CHECK(holds(said, "stays open") == readiness::mustStayOpen(State(i)));
    }
}
