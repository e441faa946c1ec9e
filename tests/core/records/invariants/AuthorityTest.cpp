// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/Violations.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

namespace {

using Said = std::vector<std::string>;

} // namespace

namespace {

struct Crew {
    ProjectBuilder project;
    Id<Component> wing = project.part("Wing");
    Id<Person> helper = project.person("Bo", {Role::Helper, Role::EarlierBuilder});
    Id<Person> designer = project.person("Cy", {Role::Designer});
    Id<Person> adviser = project.person("Di", {Role::Adviser});
    Id<Person> inspector = project.person("Ed", {Role::Inspector});
};

} // namespace

TEST_CASE_METHOD(Crew, "A squawk is verified by the role it asks for, or a higher one")
{
    const auto id = project.squawk(wing, "2026-01-01");
    const auto verifiedBy = [&](std::optional<SignerRole> asked, Id<Person> person) {
        project.change(id, [&](Squawk &s) {
            s.correction = "Done";
            s.fixed_on = s.verified_on = on("2026-01-02");
            s.verify_by = asked;
            s.verified_by = person;
        });
        CHECK(wrongs(project) == wrongs(project, person));
        return wrongs(project, id);
    };
    CHECK(verifiedBy({}, project.builder).empty());
    CHECK(verifiedBy({}, helper) ==
          Said{"Squawk 1 “Overdriven rivet” is for builder or a higher role "
               "to verify, which person 3 “Bo” does not have."});
    CHECK(verifiedBy({}, designer).size() == 1);
    CHECK(verifiedBy(SignerRole::Builder, inspector).empty());
    CHECK(verifiedBy(SignerRole::Adviser, project.builder).size() == 1);
    CHECK(verifiedBy(SignerRole::Adviser, adviser).empty());
    CHECK(verifiedBy(SignerRole::Inspector, adviser).size() == 1);
    CHECK(verifiedBy(SignerRole::Inspector, inspector).empty());
}

TEST_CASE_METHOD(Crew, "An airworthiness squawk is accepted by a designer, adviser or inspector")
{
    const auto id = project.squawk(wing, "2026-01-01");
    const auto acceptedBy = [&](Severity severity, Id<Person> person) {
        project.change(id, [&](Squawk &s) {
            s.severity = severity;
            s.accepted_on = on("2026-01-02");
            s.accepted_by = person;
            s.accepted_basis = "Manual";
        });
        return wrongs(project, id);
    };
    CHECK(acceptedBy(Severity::Workmanship, project.builder).empty());
    CHECK(acceptedBy(Severity::Airworthiness, project.builder) ==
          Said{"Squawk 1 “Overdriven rivet” matters for airworthiness and is for a designer, "
               "adviser or "
               "inspector to accept, which person 1 “Ada Plank” is not."});
    CHECK(acceptedBy(Severity::Airworthiness, designer).empty());
    CHECK(acceptedBy(Severity::Airworthiness, adviser).empty());
    CHECK(acceptedBy(Severity::Airworthiness, inspector).empty());
}

TEST_CASE_METHOD(Crew, "A hold point is signed by the role it asks for, or a higher one")
{
    const auto point = project.holdPoint(project.closing(wing), HoldPointKind::TechnicalVisit,
                                         SignerRole::Adviser);
    const auto signOff = project.signOff(point, adviser, "2026-01-02");
    CHECK(wrongs(project).empty());
    project.change(signOff, [&](SignOff &s) { s.person_id = inspector; });
    CHECK(wrongs(project).empty());
    project.change(signOff, [&](SignOff &s) { s.person_id = project.builder; });
    const Said low{
        "Sign-off 9 of 2026-01-02 is for adviser or a higher role to sign, which person 1 “Ada "
        "Plank” does not have."};
    CHECK(wrongs(project) == low);
    CHECK(wrongs(project, point) == low);
    CHECK(wrongs(project, signOff) == low);
    CHECK(wrongs(project, project.builder) == low);
}

TEST_CASE_METHOD(Crew, "Only an inspector waives a required hold point of an inspector")
{
    const auto point =
        project.holdPoint(project.closing(wing), HoldPointKind::PreCover, SignerRole::Inspector);
    const auto waivedBy = [&](Id<Person> person) {
        project.change(point, [&](HoldPoint &p) {
            p.waived_on = on("2026-01-02");
            p.waived_by = person;
            p.waived_why = "Seen elsewhere";
        });
        return wrongs(project, point);
    };
    CHECK(waivedBy(inspector).empty());
    CHECK(waivedBy(adviser).size() == 1);
    project.change(point, [](HoldPoint &p) { p.required = false; });
    CHECK(waivedBy(adviser).empty());
}

TEST_CASE_METHOD(Crew, "Who accepts late depends on the profile")
{
    const auto acceptance = project.signOff({}, inspector, "2026-01-02");
    const auto closing = project.closing(wing);
    project.change(closing, [&](Closing &c) { c.late_acceptances = {acceptance}; });
    const auto signedBy = [&](Id<Person> person, std::string_view remarks) {
        project.change(acceptance, [&](SignOff &s) {
            s.person_id = person;
            s.remarks = std::string(remarks);
        });
        CHECK(wrongs(project, closing) == wrongs(project, acceptance));
        return wrongs(project, closing).size();
    };
    CHECK(signedBy(inspector, "") == 0);
    CHECK(signedBy(adviser, "") == 0);
    CHECK(signedBy(project.builder, "Borescope through the root") == 0);
    CHECK(signedBy(project.builder, "") == 1);
    CHECK(signedBy(helper, "Looked inside") == 1);
    project.profile.late_acceptance_by = {SignerRole::Inspector};
    CHECK(signedBy(inspector, "") == 0);
    CHECK(signedBy(adviser, "") == 1);
    CHECK(signedBy(project.builder, "Borescope through the root") == 1);
}

TEST_CASE_METHOD(Crew, "A late acceptance is no sign-off of a hold point")
{
    const auto closing = project.closing(wing);
    const auto point = project.holdPoint(closing, HoldPointKind::PreCover, SignerRole::Inspector);
    const auto signOff = project.signOff(point, inspector, "2026-01-02");
    project.change(closing, [&](Closing &c) { c.late_acceptances = {signOff}; });
    CHECK(wrongs(project) == Said{"Closing 7 “Skin on Wing” is accepted late by sign-off 9 of "
                                  "2026-01-02, which is of a hold point."});
}
