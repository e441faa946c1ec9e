// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/IfClosed.h"

#include "tests/support/WingProject.h"

#include <catch2/catch.hpp>

#include <algorithm>

namespace lastrivet::readiness {

namespace {

using test::WingProject;

/// A fin of its own, signed for on one day.
struct Fin : WingProject {
    Id<Closing> skin{20};
    Id<HoldPoint> look{20};

    Fin()
    {
        const Id<Component> fin{20};
        records.components.put({.id = fin, .code = "F", .name = "Fin"});
        records.closings.put(
            {.id = skin, .component_id = fin, .title = "Fin skin", .encloses = {fin}});
        records.hold_points.put({.id = look,
                                 .closing_id = skin,
                                 .kind = HoldPointKind::PreCover,
                                 .signer_role = SignerRole::Inspector});
        records.sign_offs.put({.id = Id<SignOff>{20},
                               .hold_point_id = look,
                               .person_id = inspector,
                               .signed_on = at("2026-03-10")});
    }

    ClosingAnswer closed(std::string_view on) const
    {
        return ifClosed(records, profile, skin, at(on), as_of);
    }
};

} // namespace

TEST_CASE("What is signed by the day of the closing does not stand against it")
{
    CHECK(Fin().closed("2026-03-10").state == State::Closed);
    CHECK(Fin().closed("2026-03-12").state == State::Closed);
}

TEST_CASE("What is signed only after the day of the closing stands against it")
{
    const Fin fin;
    const ClosingAnswer answer = fin.closed("2026-03-09");
    CHECK(answer.state == State::ClosedEarly);
    CHECK(std::any_of(answer.blockers.begin(), answer.blockers.end(), [&](const Blocker &blocker) {
        return blocker.rule == Rule::UnsignedHoldPoint && blocker.record.id == fin.look.value();
    }));
}

} // namespace lastrivet::readiness
