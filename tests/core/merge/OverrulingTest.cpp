// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/Project.h"

#include "tests/support/TwoCopies.h"

#include <catch2/catch.hpp>

namespace lastrivet::test {

TEST_CASE("Whoever overruled a decision and takes that back leaves the one that was before")
{
    TwoCopies two;
    const bool isTakenFirst = GENERATE(false, true);
    const auto first = isTakenFirst ? ConflictDecision::Taken : ConflictDecision::Kept;
    const auto second = isTakenFirst ? ConflictDecision::Kept : ConflictDecision::Taken;
    two.decideEach(first, second);
    two.later(two.kim());
    REQUIRE(two.kim()->undo());
    two.mergeBoth();
    for (auto *copy : {&two.robin, &two.kim()}) {
        CHECK(two.wingOf(*copy).name == (isTakenFirst ? "Port wing" : "Left wing"));
        REQUIRE((*copy)->conflicts().size() == 1);
        CHECK((*copy)->conflicts().front().decision == first);
    }
}

TEST_CASE("Whoever kept what stands, was overruled, and takes that back has nothing to decide")
{
    TwoCopies two;
    two.decideEach(ConflictDecision::Kept, ConflictDecision::Taken);
    two.later(two.robin);
    REQUIRE(two.robin->undo());
    two.mergeBoth();
    for (auto *copy : {&two.robin, &two.kim()}) {
        CHECK(two.wingOf(*copy).name == "Port wing");
        REQUIRE((*copy)->conflicts().size() == 1);
        CHECK((*copy)->conflicts().front().decision == ConflictDecision::Taken);
    }
}

} // namespace lastrivet::test
