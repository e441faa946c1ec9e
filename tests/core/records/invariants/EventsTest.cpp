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

Closing::Event closed(std::string_view moment)
{
    return {.closed_on = on(moment)};
}

Closing::Event opened(std::string_view moment)
{
    return {.opened_on = on(moment)};
}

Said wrongsOf(std::vector<Closing::Event> events)
{
    ProjectBuilder project;
    const auto closing = project.closing(project.part("Wing"));
    project.change(closing, [&](Closing &c) { c.events = std::move(events); });
    CHECK(wrongs(project) == wrongs(project, closing));
    return wrongs(project);
}

} // namespace

TEST_CASE("A closing is closed and opened in turn, beginning with closed")
{
    CHECK(wrongsOf({}).empty());
    CHECK(wrongsOf({closed("2026-01-01"), opened("2026-01-02"), closed("2026-01-03")}).empty());
    CHECK(wrongsOf({opened("2026-01-01")}) ==
          Said{"Closing 3 “Skin on Wing”: event 1 opens it while it is open."});
    CHECK(wrongsOf({closed("2026-01-01"), closed("2026-01-02")}) ==
          Said{"Closing 3 “Skin on Wing”: event 2 closes it while it is closed."});
}

TEST_CASE("An event has exactly one moment")
{
    const Said one{
        "Closing 3 “Skin on Wing”: event 1 must say either when it was closed or when it "
        "was opened."};
    CHECK(wrongsOf({{}}) == one);
    CHECK(wrongsOf({{.closed_on = on("2026-01-01"), .opened_on = on("2026-01-01")}}) == one);
}

TEST_CASE("No event is after any later one")
{
    CHECK(wrongsOf({closed("2026-01-02"), opened("2026-01-02")}).empty());
    CHECK(wrongsOf({closed("2026-01-02T10:00"), opened("2026-01-02T10:00")}).empty());
    CHECK(wrongsOf({closed("2026-01-02T10:00"), opened("2026-01-02")}).empty());
    CHECK(
        wrongsOf({closed("2026-01-02"), opened("2026-01-01")}) ==
        Said{"Closing 3 “Skin on Wing”: event 2 of 2026-01-01 is listed after one of 2026-01-02."});
    CHECK(wrongsOf({closed("2026-01-02T10:01"), opened("2026-01-02T10:00")}).size() == 1);
}

TEST_CASE("A day without time between two times does not hide their order")
{
    CHECK(
        wrongsOf({closed("2026-01-02T15:00"), opened("2026-01-02"), closed("2026-01-02T09:00")}) ==
        Said{"Closing 3 “Skin on Wing”: event 3 of 2026-01-02T09:00 is listed after one of "
             "2026-01-02T15:00."});
}
