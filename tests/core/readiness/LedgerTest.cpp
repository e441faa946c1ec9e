// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Ledger.h"

#include "core/readiness/Readiness.h"
#include "tests/support/ProjectBuilder.h"
#include "tests/support/WingProject.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

using namespace lastrivet;
using namespace lastrivet::readiness;
using lastrivet::test::WingProject;

namespace {

std::vector<LedgerLine> wingLedger(const WingProject &project)
{
    const Answer answer = readiness::readiness(project.records, project.profile, project.as_of);
    return ledger(*answer.closing(project.wingSkin), project.records, project.as_of);
}

LedgerLine lineOf(const WingProject &project, Rule rule)
{
    const std::vector<LedgerLine> lines = wingLedger(project);
    return *std::find_if(lines.begin(), lines.end(),
                         [rule](const LedgerLine &line) { return line.rule == rule; });
}

} // namespace

TEST_CASE("The ledger has every rule once and loses no blocker")
{
    const WingProject project;
    std::set<Rule> rules;
    std::size_t blockers = 0;
    for (const LedgerLine &line : wingLedger(project)) {
        rules.insert(line.rule);
        blockers += line.blockers.size();
    }
    CHECK(rules.size() == Words<Rule>::list.size());
    const Answer answer = readiness::readiness(project.records, project.profile, project.as_of);
    CHECK(blockers == answer.closing(project.wingSkin)->blockers.size());
}

TEST_CASE("A squawk elsewhere that needs access through the reach is among those looked at")
{
    const WingProject project;
    const LedgerLine squawks = lineOf(project, Rule::OpenSquawk);
    // That of the rib, and that of the tail.
    REQUIRE(squawks.blockers.size() == 2);
    CHECK(squawks.looked_at == 2);
}

TEST_CASE("The ledger tells met from not met and from nothing on record")
{
    const WingProject project;
    CHECK(lineOf(project, Rule::FastenerNotFitted).outcome == Outcome::Met);
    CHECK(lineOf(project, Rule::FastenerNotFitted).looked_at == 1);
    CHECK(english(countedBy(Rule::FastenerNotFitted, 1)) == "1 line");
    CHECK(lineOf(project, Rule::MeasurementOutOfLimits).outcome == Outcome::NotMet);
    CHECK(lineOf(project, Rule::UntickedCheck).outcome == Outcome::Advice);
    CHECK(lineOf(project, Rule::MissingPart).outcome == Outcome::NothingOnRecord);
    // No fastener here is locked by hand, so that nothing can be said of locks.
    CHECK(lineOf(project, Rule::UnlockedFastener).outcome == Outcome::NothingOnRecord);
}

TEST_CASE("The ledger counts what a rule speaks of, not everything of its kind")
{
    WingProject project;
    project.records.fasteners.put({.id = Id<Fastener>{7},
                                   .component_id = project.rib,
                                   .place = "Nut plate",
                                   .fitted_on = WingProject::at("2026-02-20"),
                                   .locking = Locking::SplitPin,
                                   .locked_on = WingProject::at("2026-02-21")});
    CHECK(lineOf(project, Rule::FastenerNotFitted).looked_at == 2);
    CHECK(lineOf(project, Rule::LooseFastener).looked_at == 1);
    CHECK(lineOf(project, Rule::UnlockedFastener).looked_at == 1);
    CHECK(lineOf(project, Rule::UnlockedFastener).outcome == Outcome::Met);
    CHECK(lineOf(project, Rule::UncalibratedTool).looked_at == 1);
    CHECK(lineOf(project, Rule::InnerClosingOpen).looked_at == 1);
}

TEST_CASE("The ledger takes no rejection and no waiver for a signature")
{
    WingProject project;
    CHECK(lineOf(project, Rule::OutdatedSignOff).outcome == Outcome::NothingOnRecord);
    SignOff signOff{.id = Id<SignOff>{1},
                    .hold_point_id = project.preCover,
                    .person_id = project.inspector,
                    .signed_on = WingProject::at("2026-03-11"),
                    .result = SignOffResult::Rejected};
    project.records.sign_offs.put(signOff);
    // Waived, though the builder had signed there before.
    project.records.sign_offs.put({.id = Id<SignOff>{2},
                                   .hold_point_id = Id<HoldPoint>{2},
                                   .person_id = project.builder,
                                   .signed_on = WingProject::at("2026-02-27"),
                                   .result = SignOffResult::Accepted});
    CHECK(lineOf(project, Rule::OutdatedSignOff).looked_at == 0);
    CHECK(lineOf(project, Rule::SignatureWithoutSheet).outcome == Outcome::NothingOnRecord);
    signOff.id = Id<SignOff>{3};
    signOff.signed_on = WingProject::at("2026-03-13");
    signOff.result = SignOffResult::Accepted;
    project.records.sign_offs.put(signOff);
    CHECK(lineOf(project, Rule::OutdatedSignOff).looked_at == 1);
    CHECK(lineOf(project, Rule::SignatureWithoutSheet).looked_at == 1);
}

TEST_CASE("The ledger asks the builder's own signature for no sheet")
{
    WingProject project;
    HoldPoint own = *project.records.hold_points.find(Id<HoldPoint>{2});
    own.signer_role = SignerRole::Builder;
    own.waived_on.reset();
    project.records.hold_points.put(own);
    project.records.sign_offs.put({.id = Id<SignOff>{1},
                                   .hold_point_id = own.id,
                                   .person_id = project.builder,
                                   .signed_on = WingProject::at("2026-03-13"),
                                   .result = SignOffResult::Accepted});
    CHECK(lineOf(project, Rule::OutdatedSignOff).looked_at == 1);
    CHECK(lineOf(project, Rule::SignatureWithoutSheet).outcome == Outcome::NothingOnRecord);
}

TEST_CASE("The ledger finds nothing within limits that nobody set, and nothing cured unknown")
{
    WingProject project;
    Fastener fastener = *project.records.fasteners.find(Id<Fastener>{1});
    fastener.torque_min.reset();
    fastener.torque_max.reset();
    project.records.fasteners.put(fastener);
    Measurement measurement = *project.records.measurements.find(Id<Measurement>{1});
    measurement.minimum.reset();
    project.records.measurements.put(measurement);
    MaterialUse use = *project.records.material_uses.find(Id<MaterialUse>{1});
    use.cure_minutes.reset();
    project.records.material_uses.put(use);
    CHECK(lineOf(project, Rule::UnmarkedFastener).outcome == Outcome::Met);
    CHECK(lineOf(project, Rule::TorqueOutOfLimits).outcome == Outcome::NothingOnRecord);
    CHECK(lineOf(project, Rule::MeasurementOutOfLimits).outcome == Outcome::NothingOnRecord);
    CHECK(lineOf(project, Rule::CuringMaterial).outcome == Outcome::NothingOnRecord);
    CHECK(lineOf(project, Rule::CureTimeUnknown).looked_at == 1);
}

TEST_CASE("The ledger of a closed closing is that of its closing moment")
{
    const WingProject project;
    const Answer answer = readiness::readiness(project.records, project.profile, project.as_of);
    const ClosingAnswer &baffle = *answer.closing(project.tankBaffle);
    CHECK(judgedAt(baffle, project.records, project.as_of) == WingProject::at("2026-01-10"));
    const std::vector<LedgerLine> lines = ledger(baffle, project.records, project.as_of);
    const auto measured = std::find_if(lines.begin(), lines.end(), [](const LedgerLine &line) {
        return line.rule == Rule::MeasurementOutOfLimits;
    });
    // The leak test came six weeks later.
    CHECK(measured->looked_at == 0);
}

TEST_CASE("A closing at the same part is none of the boxes within that the ledger counts")
{
    test::ProjectBuilder project;
    const auto panel = project.part("Panel");
    const auto rib = project.part("Rib", panel);
    const auto outer = project.closing(panel);
    project.closing(panel, {rib});
    const auto asOf = test::on("2026-03-14");
    const auto boxes = [&] {
        const Answer answer = readiness::readiness(project.records, project.profile, asOf);
        const auto lines = ledger(*answer.closing(outer), project.records, asOf);
        return std::find_if(
                   lines.begin(), lines.end(),
                   [](const LedgerLine &line) { return line.rule == Rule::InnerClosingOpen; })
            ->looked_at;
    };
    CHECK(boxes() == 0);
    project.closing(rib);
    CHECK(boxes() == 1);
}
