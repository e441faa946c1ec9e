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

Said wrongsOf(std::int64_t kit, std::int64_t commercial, std::int64_t assembly,
              std::int64_t fabrication, bool notApplicable = false)
{
    ProjectBuilder project;
    project.add(CreditTask{.task = "Wing spars",
                           .not_applicable = notApplicable,
                           .kit_tenths = kit,
                           .commercial_tenths = commercial,
                           .assembly_tenths = assembly,
                           .fabrication_tenths = fabrication});
    return wrongs(project);
}

} // namespace

TEST_CASE("The tenths of a credit task add up to ten")
{
    CHECK(wrongsOf(10, 0, 0, 0).empty());
    CHECK(wrongsOf(2, 1, 3, 4).empty());
    CHECK(wrongsOf(2, 1, 3, 3) ==
          Said{"Credit task 2 “Wing spars” has shares that add up to 9 tenths instead of 10."});
    CHECK(wrongsOf(2, 1, 3, 5).size() == 1);
    CHECK(wrongsOf(0, 0, 0, 0).size() == 1);
}

TEST_CASE("Each share is between 0 and 10 tenths")
{
    CHECK(wrongsOf(-1, 0, 6, 5) ==
          Said{"Credit task 2 “Wing spars” has a share that is not between 0 and 10 tenths."});
    CHECK(wrongsOf(11, -1, 0, 0).size() == 1);
}

TEST_CASE("A task that does not apply has no tenths")
{
    CHECK(wrongsOf(0, 0, 0, 0, true).empty());
    CHECK(wrongsOf(0, 0, 0, 10, true) ==
          Said{"Credit task 2 “Wing spars” does not apply, but has 10 tenths instead of none."});
}
