// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stores/Calibrations.h"
#include "core/stores/Lots.h"
#include "core/stores/Spending.h"
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::stores;
using test::on;

namespace {

MaterialLot lotUntil(std::string_view day)
{
    MaterialLot lot;
    lot.name = "Sealant";
    lot.expires_on = on(day);
    return lot;
}

MaterialUse use(Id<MaterialLot> lot, Id<Component> part, std::string_view day)
{
    MaterialUse made;
    made.lot_ids = {lot};
    made.component_id = part;
    made.used_on = on(day);
    return made;
}

Tool::Calibration calibration(std::string_view done, std::string_view due)
{
    return {on(done), on(due), {}};
}

Expense spent(std::string_view day, std::int64_t amount, std::string_view currency,
              std::string_view category)
{
    Expense made;
    made.spent_on = on(day);
    made.what = "Something";
    made.amount = amount;
    made.currency = currency;
    made.category = category;
    return made;
}

} // namespace

TEST_CASE("A lot is good through its last day, and says what it was used for after it")
{
    test::ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto lot = project.add(lotUntil("2026-04-30"));
    const auto first = project.add(use(lot, wing, "2026-03-01"));
    const auto late = project.add(use(lot, wing, "2026-05-02"));
    auto accepted = use(lot, wing, "2026-05-01");
    accepted.accepted_on = on("2026-05-03");
    const auto taken = project.add(accepted);
    const auto stand = [&](std::string_view day) {
        return standingOf(*project.records.find(lot), project.records, on(day));
    };
    CHECK(stand("2026-03-14").state == LotState::Good);
    CHECK(stand("2026-03-14").uses == std::vector{first});
    CHECK(stand("2026-03-31").state == LotState::ExpiresSoon);
    CHECK(stand("2026-03-30").state == LotState::Good);
    CHECK(stand("2026-04-30").state == LotState::ExpiresSoon);
    CHECK(stand("2026-04-30").days_left == 0);
    CHECK(stand("2026-05-01").state == LotState::Expired);
    const auto last = stand("2026-05-10");
    CHECK(last.uses == std::vector{late, taken, first});
    CHECK(last.used_expired == 1);
    CHECK(standingOf(MaterialLot{}, project.records, on("2026-05-10")).state ==
          LotState::WithoutDate);
}

TEST_CASE("A cure ends as the readiness answer counts it, and names the closings that it holds")
{
    test::RuleBench bench(readiness::Rule::CuringMaterial);
    const auto lot = bench.add(lotUntil("2027-01-01"));
    auto sealed = use(lot, bench.rib, "2026-03-14T10:00");
    sealed.cure_minutes = Minutes{48 * 60};
    const auto id = bench.add(sealed);
    const auto &record = *bench.records.find(id);
    CHECK(cureOf(record, on("2026-03-15T12:00")).ends == on("2026-03-16T10:00"));
    const auto atNoon = on("2026-03-16T09:59");
    const auto held = running(bench.records, bench.ask("2026-03-16T09:59"), atNoon);
    REQUIRE(held.size() == 1);
    CHECK(held.front().cure.use == id);
    CHECK(held.front().closings == IdSet<Closing>{bench.box});
    CHECK(bench.must(id, "2026-03-16T09:59"));
    CHECK(running(bench.records, bench.ask("2026-03-16T10:00"), on("2026-03-16T10:00")).empty());
    CHECK(bench.quiet(id, "2026-03-16T10:00"));

    // Without a time it counts to the last minute of its day.
    sealed.used_on = on("2026-03-14");
    CHECK(cureOf(sealed, atNoon).ends == on("2026-03-16T23:59"));
    sealed.cure_minutes.reset();
    CHECK_FALSE(cureOf(sealed, atNoon).is_running);
    CHECK_FALSE(cureOf(sealed, atNoon).ends.has_value());
    sealed.cure_minutes = Minutes{std::numeric_limits<std::int64_t>::max() / 2};
    CHECK(cureOf(sealed, atNoon).is_running);
}

TEST_CASE("A tool stands by its last calibration, and names what was done with it outside of one")
{
    test::ProjectBuilder project;
    Tool wrench;
    wrench.name = "Torque wrench";
    wrench.needs_calibration = true;
    wrench.calibrations = {calibration("2024-03-11", "2025-03-11"),
                           calibration("2025-04-01", "2026-04-01")};
    const auto id = project.add(wrench);
    const auto wing = project.part("Wing");
    const auto torqued = [&](std::string_view day) {
        Fastener fastener;
        fastener.component_id = wing;
        fastener.place = "Spar";
        fastener.fitted_on = fastener.torqued_on = on(day);
        fastener.tool_id = id;
        return project.add(fastener);
    };
    torqued("2025-03-11");
    const auto between = torqued("2025-03-20");
    torqued("2025-05-01");
    const auto stand = [&](std::string_view day) {
        return standingOf(*project.records.find(id), project.records, on(day));
    };
    CHECK(stand("2025-03-20").state == ToolState::Overdue);
    CHECK(stand("2026-02-01").state == ToolState::InCalibration);
    CHECK(stand("2026-03-02").state == ToolState::DueSoon);
    CHECK(stand("2026-04-01").state == ToolState::DueSoon);
    CHECK(stand("2026-04-02").state == ToolState::Overdue);
    CHECK(stand("2026-02-01").calibration == 1);
    CHECK(stand("2026-02-01").uses == 3);
    CHECK(stand("2026-02-01").outside ==
          std::vector<RecordRef>{{RecordType::Fastener, between.value()}});
    CHECK(stand("2024-01-01").state == ToolState::NeverCalibrated);
    CHECK(standingOf(Tool{}, project.records, on("2026-01-01")).state == ToolState::NeedsNone);
}

TEST_CASE("A weighing on scales out of calibration is one of their uses outside of it")
{
    test::ProjectBuilder project;
    Tool scale;
    scale.name = "Scale";
    scale.needs_calibration = true;
    scale.calibrations = {calibration("2025-01-01", "2026-01-01")};
    const auto id = project.add(scale);
    const auto weighed = [&](std::string_view day) {
        Weighing weighing;
        weighing.weighed_on = on(day);
        weighing.scale_readings = {{"left", 150, 0, 1800, id}, {"right", 152, 0, 1800, id}};
        return project.add(weighing);
    };
    weighed("2026-01-01");
    const auto late = weighed("2026-01-02");
    weighed("2026-03-01");
    const auto stands = standingOf(*project.records.find(id), project.records, on("2026-02-01"));
    CHECK(stands.uses == 2);
    CHECK(stands.outside == std::vector<RecordRef>{{RecordType::Weighing, late.value()}});
    project.withdraw(late);
    CHECK(standingOf(*project.records.find(id), project.records, on("2026-02-01")).outside.empty());
}

TEST_CASE("Expenses are added up by category and month, each currency for itself")
{
    test::ProjectBuilder project;
    project.add(spent("2026-01-15", 10, "CAD", "tools"));
    project.add(spent("2026-01-20", 20, "CAD", "Tools"));
    project.add(spent("2026-01-20", 5, "EUR", "tools"));
    project.add(spent("2026-03-01", 7, "CAD", ""));
    project.add(spent("2026-03-31", -2, "CAD", "kit"));
    project.add(spent("2026-04-01", 1000, "CAD", "kit"));
    const auto all = spending(project.records, on("2026-03-31"));
    CHECK(all.total.amounts() == std::vector<Money>{{35, "CAD"}, {5, "EUR"}});
    CHECK(all.expenses == 5);
    CHECK(all.below_zero == 1);
    CHECK(all.without_receipt == 5);
    REQUIRE(all.categories.size() == 3);
    CHECK(all.categories[0].category == "kit");
    CHECK(all.categories[1].category == "tools");
    CHECK(all.categories[1].sum.amounts() == std::vector<Money>{{30, "CAD"}, {5, "EUR"}});
    CHECK(all.categories[1].expenses == 3);
    CHECK(all.categories[2].category.empty());
    REQUIRE(all.months.size() == 3);
    using namespace std::chrono;
    CHECK(all.months[1].month == year{2026} / February);
    CHECK(all.months[1].sum.amounts().empty());
    CHECK(all.months[2].sum.of("CAD") == 5);
    CHECK(spending(project.records, on("2025-12-31")).months.empty());
}
