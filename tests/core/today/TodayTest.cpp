// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/today/Today.h"

#include "core/project/acts/ClosingUp.h"
#include "core/readiness/Readiness.h"
#include "tests/support/ActBench.h"

#include <algorithm>

namespace lastrivet::today {

namespace {

struct Bench : test::ActBench {
    Id<Closing> closing;

    Bench()
    {
        change([this](Edit &edit) {
            Closing skin;
            skin.component_id = wing;
            skin.title = "Upper skin";
            closing = acts::addClosing(edit, skin, {});
        });
    }

    void work(std::string_view began, std::int64_t minutes)
    {
        change([&](Edit &edit) {
            WorkSession session;
            session.component_id = wing;
            session.began = Moment::parse(began);
            session.minutes = Minutes{minutes};
            edit.put(session);
        });
    }
    Today page()
    {
        const auto answer = readiness::readiness(*records(), (**this).profile(), (**this).today());
        return today(*records(), answer);
    }
    bool hasAttention(AttentionKind kind)
    {
        return std::ranges::any_of(page().attention, [kind](const Attention &attention) {
            return attention.kind == kind;
        });
    }
};

std::string headlineOf(const Tally &tally)
{
    std::string words;
    for (const Message &sentence : headline(tally))
        words += english(sentence) + ' ';
    return words;
}

} // namespace

TEST_CASE("A closing counts as not begun until there is work in its reach")
{
    Bench bench;
    CHECK(bench.page().tally.not_begun == 1);
    CHECK(bench.page().tally.must_stay_open == 0);
    CHECK(bench.page().stays_open.empty());
    bench.work("2026-03-10", 60);
    CHECK(bench.page().tally.not_begun == 0);
    CHECK(bench.page().tally.must_stay_open == 1);
    CHECK(bench.page().tally.wait_for_signature == 1);
    REQUIRE(bench.page().stays_open.size() == 1);
    CHECK(bench.page().stays_open.front().more == 1);
}

TEST_CASE("Work that can be done comes before what waits for somebody's word")
{
    Bench bench;
    bench.work("2026-03-10", 60);
    Id<Step> first;
    bench.change([&](Edit &edit) {
        Step step;
        step.component_id = bench.wing;
        step.title = "Clamp the wires";
        first = edit.put(step);
        step.title = "Rivet the ribs";
        step.after = {first};
        edit.put(step);
    });
    const auto page = bench.page();
    REQUIRE(page.stays_open.size() == 1);
    CHECK(page.stays_open.front().nearest.record == RecordRef{RecordType::Step, first.value()});
    CHECK(page.stays_open.front().more == 3);
    REQUIRE(page.workable.size() == 1);
    CHECK(page.workable.front().step == first);
    CHECK(page.workable.front().unlocks == IdSet<Closing>{bench.closing});
}

TEST_CASE("The headline speaks of one, of many and of none, and never of safety")
{
    CHECK(headlineOf({7, 1, 2}) == "7 closings must stay open, 1 of them waits only for a "
                                   "signature. Against 2, nothing on record stands. ");
    CHECK(headlineOf({1, 0, 0}) == "1 closing must stay open. ");
    CHECK(headlineOf({1, 1, 0}) == "1 closing must stay open; it waits only for a signature. ");
    CHECK(headlineOf({3, 2, 0}) ==
          "3 closings must stay open, 2 of them wait only for a signature. ");
    CHECK(headlineOf({0, 0, 1}) == "No closing that was begun must stay open. Against 1, nothing "
                                   "on record stands. ");
    CHECK(headlineOf({0, 0, 0, 0, 4, 1}) ==
          "No closing that was begun must stay open. 1 was closed with gaps. ");
    CHECK(headlineOf({2, 0, 0, 0, 0, 3}) == "2 closings must stay open. 3 were closed with gaps. ");
}

TEST_CASE("Hours are those of the running week from Monday, of the month, and of all")
{
    // 14 March 2026 is a Saturday; its ISO week began on Monday the 9th.
    Bench bench;
    bench.work("2026-02-28", 100);
    bench.work("2026-03-08", 20);
    bench.work("2026-03-09T19:00", 3);
    bench.work("2026-03-14", 4);
    const auto hours = bench.page().hours;
    CHECK(hours.this_week == Minutes{7});
    CHECK(hours.this_month == Minutes{27});
    CHECK(hours.in_all == Minutes{127});
}

TEST_CASE("Weeks run from Monday to Sunday, the running one last, and tell work done again")
{
    Bench bench;
    bench.work("2026-03-08", 20);
    bench.work("2026-03-09", 3);
    // 25 weeks before the running one; its Monday is the first day shown.
    bench.work("2025-09-15", 7);
    bench.work("2025-09-14", 1000);
    bench.change([&](Edit &edit) {
        WorkSession again;
        again.component_id = bench.wing;
        again.began = Moment::parse("2026-03-08T10:00");
        again.minutes = Minutes{5};
        again.kind = WorkKind::Rework;
        edit.put(again);
    });
    const auto weeks = bench.page().hours.weeks;
    REQUIRE(weeks.size() == weeksShown);
    CHECK(weeks.back().monday == Moment::parse("2026-03-09")->day());
    CHECK(weeks.back().minutes == Minutes{3});
    CHECK(weeks[weeksShown - 2].minutes == Minutes{25});
    CHECK(weeks[weeksShown - 2].rework == Minutes{5});
    CHECK(weeks.front().minutes == Minutes{7});
}

TEST_CASE("Expiry is announced thirty days ahead and forgotten thirty days after")
{
    Bench bench;
    Id<MaterialLot> lot;
    const auto expires = [&](std::string_view day) {
        bench.change([&](Edit &edit) {
            MaterialLot sealant;
            sealant.id = lot;
            sealant.name = "Tank sealant";
            sealant.expires_on = Moment::parse(day);
            lot = edit.put(sealant);
        });
        return bench.hasAttention(AttentionKind::ExpiringMaterial);
    };
    CHECK(expires("2026-04-13"));
    // A lot whose number nobody wrote down is called by its name alone.
    const auto page = bench.page();
    const auto said =
        std::ranges::find(page.attention, AttentionKind::ExpiringMaterial, &Attention::kind);
    REQUIRE(said != page.attention.end());
    CHECK(english(said->sentence) == "Tank sealant: expires on 2026-04-13");
    CHECK_FALSE(expires("2026-04-14"));
    CHECK(expires("2026-02-12"));
    CHECK_FALSE(expires("2026-02-11"));
}

TEST_CASE("Bolts left finger-tight are told first, until they are torqued")
{
    Bench bench;
    Id<Fastener> hinge;
    Id<Fastener> horn;
    bench.change([&](Edit &edit) {
        Component wing;
        wing.name = "Wing";
        Fastener bolt;
        bolt.component_id = edit.put(wing);
        bolt.place = "Hinge";
        bolt.torque_min = 50;
        bolt.torque_max = 70;
        bolt.fitted_on = Moment::parse("2026-03-01");
        hinge = edit.put(bolt);
        bolt.place = "Horn";
        bolt.fitted_on = Moment::parse("2026-03-02");
        horn = edit.put(bolt);
    });
    const auto torque = [&](Id<Fastener> id) {
        bench.change([&](Edit &edit) {
            edit.update(id, [](Fastener &bolt) {
                bolt.torqued_on = Moment::parse("2026-03-10");
                bolt.torque_value = 60;
            });
        });
    };
    REQUIRE(bench.hasAttention(AttentionKind::FingerTight));
    CHECK(bench.page().attention.front().kind == AttentionKind::FingerTight);
    torque(hinge);
    CHECK(bench.hasAttention(AttentionKind::FingerTight));
    torque(horn);
    CHECK_FALSE(bench.hasAttention(AttentionKind::FingerTight));
}

TEST_CASE("Late parts and due calibrations need attention until they are settled")
{
    Bench bench;
    Id<PartLine> line;
    Id<Tool> wrench;
    bench.change([&](Edit &edit) {
        PartLine bolts;
        bolts.name = "Bolts";
        bolts.quantity = 4;
        bolts.expected_on = Moment::parse("2026-03-13");
        line = edit.put(bolts);
        Tool tool;
        tool.name = "Torque wrench";
        tool.needs_calibration = true;
        wrench = edit.put(tool);
    });
    CHECK(bench.hasAttention(AttentionKind::LatePart));
    CHECK(bench.hasAttention(AttentionKind::CalibrationDue));
    bench.change([&](Edit &edit) {
        edit.update(line, [](PartLine &bolts) {
            bolts.received_quantity = 4;
            bolts.received_on = Moment::parse("2026-03-14");
        });
        edit.update(wrench, [](Tool &tool) {
            tool.calibrations = {{Moment::parse("2026-03-01"), Moment::parse("2027-03-01"), {}}};
        });
    });
    CHECK_FALSE(bench.hasAttention(AttentionKind::LatePart));
    CHECK_FALSE(bench.hasAttention(AttentionKind::CalibrationDue));
}

TEST_CASE("A tool is due when its newest calibration says so, wherever that stands in the list")
{
    Bench bench;
    Id<Tool> wrench;
    bench.change([&](Edit &edit) {
        Tool tool;
        tool.name = "Torque wrench";
        tool.needs_calibration = true;
        tool.calibrations = {{Moment::parse("2026-03-01"), Moment::parse("2027-03-01"), {}},
                             {Moment::parse("2024-03-01"), Moment::parse("2025-03-01"), {}}};
        wrench = edit.put(tool);
    });
    CHECK_FALSE(bench.hasAttention(AttentionKind::CalibrationDue));
    bench.change([&](Edit &edit) {
        edit.update(wrench, [](Tool &tool) {
            tool.calibrations = {{Moment::parse("2026-03-01"), Moment::parse("2026-03-05"), {}},
                                 {Moment::parse("2024-03-01"), Moment::parse("2028-03-01"), {}}};
        });
    });
    CHECK(bench.hasAttention(AttentionKind::CalibrationDue));
}

} // namespace lastrivet::today
