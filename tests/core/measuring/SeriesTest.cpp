// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measuring/Series.h"

#include "core/measuring/MeasurementLine.h"
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::measuring;
using test::on;

TEST_CASE("What is measured again is one series; only its last value can be outside")
{
    test::RuleBench bench(readiness::Rule::MeasurementOutOfLimits);
    const auto measure = [&](std::string_view what, std::string_view day, double value) {
        Measurement made;
        made.component_id = bench.rib;
        made.what = what;
        made.minimum = 28;
        made.maximum = 36;
        made.value = value;
        made.measured_on = on(day);
        return bench.add(made);
    };
    const auto late = measure("Sender, full", "2026-03-05", 30);
    const auto first = measure("Sender, full", "2026-03-01", 88);
    const auto other = measure("Sender, empty", "2026-03-02", 240);
    const auto stand = [&](Id<Measurement> id, std::string_view day) {
        return stateOf(*bench.records.find(id), bench.records, on(day));
    };
    const auto series = seriesOf(*bench.records.find(late), bench.records, on("2026-03-10"));
    REQUIRE(series.size() == 2);
    CHECK(series[0]->id == first);
    CHECK(series[1]->id == late);
    CHECK(stand(first, "2026-02-28") == MeasurementState::ToMeasure);
    CHECK(stand(first, "2026-03-03") == MeasurementState::Outside);
    CHECK(bench.must(first, "2026-03-03"));
    CHECK(stand(first, "2026-03-05") == MeasurementState::Repeated);
    CHECK(bench.quiet(first, "2026-03-05"));
    CHECK(stand(late, "2026-03-05") == MeasurementState::Inside);
    CHECK(stand(other, "2026-03-05") == MeasurementState::Outside);
    bench.change(other, [](Measurement &made) { made.accepted_on = on("2026-03-06"); });
    CHECK(stand(other, "2026-03-06") == MeasurementState::Accepted);
    CHECK(stand(other, "2026-03-05") == MeasurementState::Outside);
}

TEST_CASE("A measurement is told in one line with its limits and their unit")
{
    const auto span = readMeasurementLine("Span of the stabiliser, 2740-2746 mm");
    REQUIRE(span);
    CHECK(span->what == "Span of the stabiliser");
    CHECK(span->minimum == 2740.0);
    CHECK(span->maximum == 2746.0);
    CHECK(span->unit == "mm");
    const auto twist = readMeasurementLine("Twist, root to tip, -0.1 to 0.1 deg");
    REQUIRE(twist);
    CHECK(twist->what == "Twist, root to tip");
    CHECK(twist->minimum == -0.1);
    CHECK(readMeasurementLine("Bond, < 0.005 ohm")->maximum == 0.005);
    CHECK(readMeasurementLine("Wall, > 1.4 mm")->minimum == 1.4);
    const auto plain = readMeasurementLine("Bore, upper root bolt");
    REQUIRE(plain);
    CHECK(plain->what == "Bore, upper root bolt");
    CHECK_FALSE(plain->minimum.has_value());
    CHECK(english(readMeasurementLine(", 2-3 mm").reason()) == "Say what is measured.");
    CHECK(english(readMeasurementLine("Span, 9-3 mm").reason()) ==
          "The lower limit 9 is above the upper limit 3.");
}
