// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/Violations.h"

#include <catch2/catch.hpp>

#include <chrono>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("Looking at one log entry of a long log takes no walk through the log")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    for (int i = 0; i < 100'000; ++i)
        project.session(wing, "2026-01-02T10:00", 60);
    const auto last = project.session(wing, "2026-01-02T10:00", 0);
    const auto begin = std::chrono::steady_clock::now();
    constexpr int times = 100;
    for (int i = 0; i < times; ++i)
        REQUIRE(wrongs(project, last).size() == 1);
    const std::chrono::duration<double, std::micro> took = std::chrono::steady_clock::now() - begin;
    INFO("microseconds each: " << took.count() / times);
    CHECK(took.count() / times < 1000);
    CHECK(wrongs(project).size() == 1);
}
