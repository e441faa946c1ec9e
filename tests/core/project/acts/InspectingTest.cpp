// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/Inspecting.h"

#include "core/project/acts/ClosingUp.h"
#include "core/readiness/Readiness.h"
#include "tests/support/ActBench.h"

#include <algorithm>

namespace lastrivet::acts {

namespace {

struct Bench : test::ActBench {
    Id<Closing> closing;
    IdSet<HoldPoint> points;

    Bench()
    {
        change([this](Edit &edit) {
            Closing skin;
            skin.component_id = wing;
            for (const auto title : {"Upper skin", "Lower skin"}) {
                skin.title = title;
                closing = addClosing(edit, skin, {});
            }
            for (const HoldPoint &made : edit.records().hold_points) {
                if (made.kind == HoldPointKind::PreCover)
                    points.push_back(made.id);
            }
        });
    }

    HeldInspection held() const
    {
        HeldInspection held{{}, InspectionKind::PreCover, *Moment::parse("2026-03-12"), {}, {}};
        held.inspector_id = inspector;
        for (const auto point : points)
            held.verdicts.push_back({point, SignOffResult::AcceptedWithFindings, {}});
        return held;
    }
};

} // namespace

TEST_CASE("A visit is open from asking until it is held or cancelled")
{
    Bench bench;
    Id<Inspection> visit;
    bench.change([&](Edit &edit) {
        Inspection asked;
        asked.hold_point_ids = bench.points;
        visit = askForInspection(edit, asked);
    });
    const Moment now = (*bench).now();
    REQUIRE(openRequests(*bench.records(), now).size() == 1);
    CHECK(bench.records()->find(visit)->asked_on == (*bench).today());
    bench.change([&](Edit &edit) { cancelInspection(edit, visit, edit.today()); });
    CHECK(openRequests(*bench.records(), now).empty());
}

TEST_CASE("Holding the visit that was asked for keeps it one record")
{
    Bench bench;
    Id<Inspection> visit;
    bench.change([&](Edit &edit) {
        Inspection asked;
        asked.reference = "R-7";
        asked.asked_on = *Moment::parse("2026-03-01");
        visit = askForInspection(edit, asked);
        HeldInspection held = bench.held();
        held.id = visit;
        holdInspection(edit, held);
    });
    REQUIRE(bench.records()->inspections.size() == 1);
    const Inspection &record = *bench.records()->find(visit);
    CHECK(record.reference == "R-7");
    CHECK(record.held_on == Moment::parse("2026-03-12"));
    CHECK(record.hold_point_ids == bench.points);
    CHECK(openRequests(*bench.records(), (*bench).now()).empty());
}

TEST_CASE("One sheet signs every hold point of the visit, and findings wait for an inspector")
{
    Bench bench;
    bench.change([&](Edit &edit) {
        HeldInspection held = bench.held();
        held.findings = {{"Chafed wire", bench.tank, Severity::Airworthiness, "1"},
                         {"Burr at rib", bench.wing, Severity::Workmanship, "2"}};
        holdInspection(edit, held);
    });
    const auto records = bench.records();
    CHECK(records->sign_offs.size() == 2);
    REQUIRE(records->squawks.size() == 2);
    for (const Squawk &squawk : records->squawks) {
        CHECK(squawk.verify_by == SignerRole::Inspector);
        CHECK(squawk.found_by == bench.inspector);
        CHECK(squawk.number == squawk.finding_number);
    }
    // The findings of a visit do not outdate the signatures given at it.
    const auto answer = readiness::readiness(*records, (*bench).profile(), (*bench).today());
    for (const auto &closing : answer.closings) {
        CHECK(std::ranges::none_of(closing.blockers, [](const readiness::Blocker &blocker) {
            return blocker.rule == readiness::Rule::OutdatedSignOff;
        }));
    }
}

TEST_CASE("An adviser's finding may be cleared by an adviser")
{
    Bench bench;
    Id<Squawk> found;
    bench.change([&](Edit &edit) {
        Inspection visit;
        visit.kind = InspectionKind::TechnicalVisit;
        visit.inspector_id = bench.adviser;
        visit.held_on = edit.today();
        found = addFinding(edit, askForInspection(edit, visit), {"Loose nut", bench.wing});
    });
    CHECK(bench.records()->find(found)->verify_by == SignerRole::Adviser);
}

TEST_CASE("A visit that was held is unfinished until it is complete")
{
    Bench bench;
    Id<Inspection> visit;
    const auto unfinished = [&] {
        return unfinishedVisits(*bench.records(), (*bench).now()).size();
    };
    CHECK(unfinished() == 0);
    bench.change([&](Edit &edit) { visit = holdInspection(edit, bench.held()); });
    CHECK(openRequests(*bench.records(), (*bench).now()).empty());
    CHECK(unfinished() == 1);
    bench.change([&](Edit &edit) { completeInspection(edit, visit, edit.today()); });
    CHECK(unfinished() == 0);
}

TEST_CASE("A request that was made takes further hold points, each once")
{
    Bench bench;
    Id<Inspection> visit;
    bench.change([&](Edit &edit) {
        Inspection asked;
        asked.hold_point_ids = {bench.points[1]};
        visit = askForInspection(edit, asked);
        extendRequest(edit, visit, bench.points);
    });
    CHECK(bench.records()->find(visit)->hold_point_ids == bench.points);
}

TEST_CASE("A finding says who may verify it, and whether a photograph is enough")
{
    Bench bench;
    bench.change([&](Edit &edit) {
        HeldInspection held = bench.held();
        held.findings = {{"On site", bench.wing, Severity::Workmanship, "1"},
                         {"Photo", bench.wing, Severity::Workmanship, "2",
                          Verifying::InspectorByPhoto, "Ein Foto genügt."},
                         {"Adviser", bench.wing, Severity::Workmanship, "3", Verifying::Adviser},
                         {"Builder", bench.wing, Severity::Workmanship, "4", Verifying::Builder}};
        const auto visit = holdInspection(edit, held);
        CHECK(openFindings(edit.records(), visit, edit.now()).size() == 4);
    });
    std::vector<std::pair<SignerRole, bool>> said;
    for (const Squawk &squawk : bench.records()->squawks)
        said.emplace_back(*squawk.verify_by, squawk.note == "Ein Foto genügt.");
    CHECK(said == std::vector<std::pair<SignerRole, bool>>{{SignerRole::Inspector, false},
                                                           {SignerRole::Inspector, true},
                                                           {SignerRole::Adviser, false},
                                                           {SignerRole::Builder, false}});
}

TEST_CASE(
    "Who was asked to be there stays with the visit, and a finding keeps the day of its sheet")
{
    Bench bench;
    Id<Inspection> visit;
    bench.change([&](Edit &edit) {
        Inspection asked;
        asked.asked_on = Moment::parse("2026-03-05");
        asked.present = {bench.adviser};
        visit = askForInspection(edit, asked);
        HeldInspection held = bench.held();
        held.id = visit;
        held.findings = {{"Chafed wire",
                          bench.wing,
                          Severity::Workmanship,
                          "1",
                          {},
                          {},
                          Moment::parse("2026-03-10")}};
        holdInspection(edit, held);
    });
    CHECK(bench.records()->find(visit)->present == IdSet<Person>{bench.adviser});
    CHECK(bench.records()->squawks.begin()->found_on == Moment::parse("2026-03-10"));
}

} // namespace lastrivet::acts
