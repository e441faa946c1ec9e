// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/StoreActs.h"

#include "tests/support/ActBench.h"

using namespace lastrivet;

namespace {

PartLine line(std::string_view name, std::int64_t quantity)
{
    PartLine made;
    made.shipment = "Crate 1";
    made.name = name;
    made.quantity = quantity;
    return made;
}

} // namespace

TEST_CASE("Lines are counted one by one or as listed, and uncounted again")
{
    test::ActBench bench;
    Id<PartLine> ribs;
    Id<PartLine> bolts;
    bench.change([&](Edit &edit) {
        ribs = edit.put(line("Ribs", 4));
        bolts = edit.put(line("Bolts", 80));
        acts::countLine(edit, bolts, 60, 2);
    });
    bench.change([&](Edit &edit) { acts::countAsListed(edit, {ribs, bolts}); });
    const auto records = bench.records();
    CHECK(records->find(ribs)->received_quantity == 4);
    CHECK(records->find(ribs)->received_on.has_value());
    CHECK(records->find(bolts)->received_quantity == 60);
    CHECK(records->find(bolts)->damaged_quantity == 2);
    bench.change([&](Edit &edit) { acts::uncount(edit, {bolts}); });
    CHECK_FALSE(bench.records()->find(bolts)->received_on.has_value());
    CHECK(bench.records()->find(bolts)->received_quantity == 0);

    CHECK_FALSE(acts::whyNotCount(3, 3).has_value());
    CHECK(english(*acts::whyNotCount(3, 4)) == "4 cannot be damaged when 3 came.");
    CHECK(english(*acts::whyNotCount(-1, 0)) == "A count is 0 or more.");
    CHECK(bench.isRefused([&](Edit &edit) { acts::countLine(edit, bolts, -1, 0); }));
}

TEST_CASE("Counting as listed keeps a number that was written down without a day")
{
    test::ActBench bench;
    Id<PartLine> pins;
    bench.change([&](Edit &edit) {
        auto made = line("Pins", 12);
        made.received_quantity = 8;
        made.damaged_quantity = 1;
        pins = edit.put(made);
    });
    bench.change([&](Edit &edit) { acts::countAsListed(edit, {pins}); });
    const auto records = bench.records();
    CHECK(records->find(pins)->received_quantity == 8);
    CHECK(records->find(pins)->damaged_quantity == 1);
    CHECK(records->find(pins)->received_on.has_value());
}

TEST_CASE("A packing line becomes a lot, and lines become an expense for each currency")
{
    test::ActBench bench;
    Id<PartLine> ribs;
    Id<PartLine> glue;
    Id<PartLine> free;
    bench.change([&](Edit &edit) {
        auto made = line("Ribs", 4);
        made.unit_price = 2100;
        made.currency = "CAD";
        made.ordered_on = Moment::parse("2026-01-15");
        ribs = edit.put(made);
        made.name = "Glue";
        made.part_number = "G-14";
        made.quantity = 1;
        made.unit_price = 999;
        made.currency = "EUR";
        glue = edit.put(made);
        free = edit.put(line("Washers", 10));
    });
    Id<MaterialLot> lot;
    bench.change([&](Edit &edit) { lot = acts::lotFrom(edit, glue); });
    CHECK(bench.records()->find(lot)->name == "Glue");
    CHECK(bench.records()->find(lot)->specification == "G-14");
    const auto today = *Moment::parse("2026-03-14");
    const auto made = acts::expensesFor(*bench.records(), {ribs, glue}, "Crate 1", today);
    REQUIRE(made);
    REQUIRE(made->size() == 2);
    CHECK(made->front().amount == 8400);
    CHECK(made->front().currency == "CAD");
    CHECK(made->front().spent_on == Moment::parse("2026-01-15"));
    CHECK(made->back().amount == 999);
    const auto without = acts::expensesFor(*bench.records(), {ribs, free}, "Crate 1", today);
    REQUIRE_FALSE(without);
    CHECK(english(without.reason()) == "Washers has no price on record.");
    const auto gone =
        acts::expensesFor(*bench.records(), {ribs, Id<PartLine>{4711}}, "Crate 1", today);
    REQUIRE_FALSE(gone);
    CHECK(english(gone.reason()) == "What was to be changed is not there any more.");
    bench.change([&](Edit &edit) {
        edit.update(ribs, [](PartLine &changed) { changed.unit_price = largestId; });
    });
    const auto beyond = acts::expensesFor(*bench.records(), {ribs}, "Crate 1", today);
    REQUIRE_FALSE(beyond);
    CHECK(english(beyond.reason()) == "The prices add up to more than can be kept.");
}

TEST_CASE("A calibration is kept in the order of its days, with its certificate")
{
    test::ActBench bench;
    Id<Tool> wrench;
    Id<Media> card;
    bench.change([&](Edit &edit) {
        wrench = edit.put(Tool{.name = "Torque wrench"});
        Media paper;
        paper.kind = MediaKind::Document;
        paper.file = "documents/card.pdf";
        card = edit.put(paper);
        acts::calibrate(edit, wrench,
                        {Moment::parse("2026-01-10"), Moment::parse("2027-01-10"), {}});
        acts::calibrate(edit, wrench,
                        {Moment::parse("2025-01-10"), Moment::parse("2026-01-10"), {}});
        acts::attachCertificate(edit, wrench, 1, card);
    });
    const Tool &tool = *bench.records()->find(wrench);
    CHECK(tool.needs_calibration);
    REQUIRE(tool.calibrations.size() == 2);
    CHECK(tool.calibrations[0].calibrated_on == Moment::parse("2025-01-10"));
    CHECK(tool.calibrations[1].certificate_id == card);
    CHECK(bench.isRefused([&](Edit &edit) {
        acts::calibrate(edit, wrench,
                        {Moment::parse("2026-02-10"), Moment::parse("2026-02-09"), {}});
    }));
}
