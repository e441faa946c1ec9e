// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/Violations.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

namespace {

using Said = std::vector<std::string>;

} // namespace

TEST_CASE("What the factory closed has no hold points and no checks")
{
    ProjectBuilder project;
    const auto closing = project.closing(project.part("Spar"));
    const auto point = project.holdPoint(closing, HoldPointKind::OwnCheck, SignerRole::Builder);
    const auto check = project.add(Check{.closing_id = closing, .item = "Drains open"});
    CHECK(wrongs(project).empty());
    project.change(closing, [](Closing &c) { c.made_by = MadeBy::Factory; });
    const Said both{
        "Hold point 4 “own check” is of closing 3 “Skin on Spar”, which was made in the "
        "factory and has no hold points.",
        "Check 5 “Drains open” is of closing 3 “Skin on Spar”, which was made in the "
        "factory and has no checks."};
    CHECK(wrongs(project) == both);
    CHECK(wrongs(project, closing) == both);
    CHECK(wrongs(project, check) == Said{both[1]});
    project.withdraw(check);
    project.withdraw(point);
    CHECK(wrongs(project).empty());
}
