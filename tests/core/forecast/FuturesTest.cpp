// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/Futures.h"

#include "tests/support/ProjectBuilder.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <vector>

using namespace lastrivet;
using namespace lastrivet::forecast;
using test::on;

namespace {

/// A builder whose four hundred steps took what they were thought to take: little is left to chance
/// but the rework.
PastWork wellKnown()
{
    PastWork past;
    past.log_ratios.assign(400, 0);
    return past;
}

double meanOf(const PastWork &past, const std::vector<AssemblyWork> &work)
{
    constexpr int draws = 500;
    Futures futures(past, work, {}, 11);
    double sum = 0;
    for (int i = 0; i < draws; ++i) {
        futures.next();
        sum += futures.whole();
    }
    return sum / draws;
}

} // namespace

TEST_CASE("Who is slow is slow everywhere: two parts of the aeroplane take long together")
{
    const std::vector<AssemblyWork> work{{Id<Component>{1}, std::vector<double>(30, 100), 0},
                                         {Id<Component>{2}, std::vector<double>(30, 100), 0}};
    Futures futures({}, work, {}, 5);
    constexpr int draws = 2000;
    double sums[2]{};
    double squares[2]{};
    double products = 0;
    for (int i = 0; i < draws; ++i) {
        futures.next();
        const double logs[2]{std::log(futures.parts()[0]), std::log(futures.parts()[1])};
        for (int part = 0; part < 2; ++part) {
            sums[part] += logs[part];
            squares[part] += logs[part] * logs[part];
        }
        products += logs[0] * logs[1];
    }
    const auto variance = [&](int part) {
        return squares[part] / draws - sums[part] * sums[part] / draws / draws;
    };
    const double together = products / draws - sums[0] * sums[1] / draws / draws;
    // Of the builder's mean the variance is half of that of one step (k0 = 2), which counts for
    // both parts; of thirty steps about a thirtieth remains to each.
    CHECK(together / std::sqrt(variance(0) * variance(1)) > 0.8);
}

TEST_CASE("Rework is what the log says, drawn towards 8 % with the weight of a hundred hours")
{
    const std::vector<AssemblyWork> work{{Id<Component>{1}, {1000}, 0}};
    PastWork past = wellKnown();
    CHECK(meanOf(past, work) == Approx(1000 * 1.08).epsilon(0.01));
    past.other_minutes = 1000 * 60;
    past.rework_minutes = 500 * 60;
    CHECK(meanOf(past, work) == Approx(1000 * (1 + (8 + 500.) / (100 + 1000))).epsilon(0.01));
    // A squawk is rework already, and takes what it was thought to take.
    CHECK(meanOf(past, {{Id<Component>{1}, {}, 1000}}) == 1000);
}

TEST_CASE("Weeks come again in blocks of four, as they followed each other")
{
    // Work in every fourth week: four weeks in a row hold exactly one of those, wherever they
    // begin.
    const std::vector<AssemblyWork> work{{Id<Component>{1}, {}, 400}};
    Futures futures({}, work, {100, 0, 0, 0, 100, 0, 0, 0}, 3);
    for (int i = 0; i < 200; ++i) {
        futures.next();
        REQUIRE(futures.length());
        CHECK(*futures.length() > 12);
        CHECK(*futures.length() <= 16);
    }
}

TEST_CASE("Wherever the weeks of work lie in the half year, the pace is that of the whole")
{
    // An hour in one of 26 weeks: a hundred hours take 2,600 weeks, also when it is the newest.
    const std::vector<AssemblyWork> work{{Id<Component>{1}, {}, 6000}};
    for (const auto worked : {0U, 1U, 13U, 25U}) {
        std::vector<double> weeks(26);
        weeks[worked] = 60;
        Futures futures({}, work, weeks, 3);
        constexpr int draws = 40;
        double sum = 0;
        for (int i = 0; i < draws; ++i) {
            futures.next();
            REQUIRE(futures.length());
            sum += *futures.length();
        }
        CHECK(sum / draws == Approx(2600).epsilon(0.07));
    }
}

TEST_CASE("A step without an estimate takes what steps on that kind of part took, else any step")
{
    test::ProjectBuilder project;
    const auto part = [&](ComponentKind kind) {
        const auto id = project.part("Part");
        project.change(id, [&](Component &c) { c.kind = kind; });
        return id;
    };
    const auto wing = part(ComponentKind::LiftingSurface);
    const auto tank = part(ComponentKind::FuelTank);
    const auto cabin = part(ComponentKind::Cabin);
    const auto finish = [&](Id<Component> where, std::int64_t minutes) {
        const auto step = project.step(where, "Done");
        project.change(step, [](Step &s) { s.done_on = on("2026-03-02"); });
        const auto session = project.session(where, "2026-03-02", minutes);
        project.change(session, [&](WorkSession &s) { s.step_id = step; });
    };
    finish(wing, 90);
    finish(tank, 500);
    finish(tank, 700);
    for (const auto where : {wing, tank, cabin})
        project.step(where, "Left");
    const auto left = workLeft(project.records, on("2026-04-01"), {});
    CHECK(left.guessed_estimates == 3);
    REQUIRE(left.assemblies.size() == 3);
    CHECK(left.assemblies[0].steps == std::vector<double>{90});
    CHECK(left.assemblies[1].steps == std::vector<double>{600});
    // Nothing was finished on a cabin: the middle of 90, 500 and 700.
    CHECK(left.assemblies[2].steps == std::vector<double>{500});
}
