// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/invariants/Bounds.h"
#include "tests/support/Violations.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

namespace {

using Said = std::vector<std::string>;

} // namespace

TEST_CASE("Minutes of a log entry are unknown or above nothing")
{
    ProjectBuilder project;
    const auto id = project.session(project.part("Wing"), "2026-01-02T10:00", 1);
    CHECK(wrongs(project).empty());
    project.change(id, [](WorkSession &s) { s.minutes.reset(); });
    CHECK(wrongs(project).empty());
    project.change(id, [](WorkSession &s) { s.minutes = Minutes{0}; });
    CHECK(wrongs(project) ==
          Said{"Log entry 3 of 2026-01-02T10:00 lasts 0 minutes; leave them empty "
               "when they are not known."});
}

TEST_CASE("Nobody worked longer than the log entry lasted")
{
    ProjectBuilder project;
    const auto id = project.session(project.part("Wing"), "2026-01-02T10:00", 60);
    const auto worked = [&](std::int64_t minutes) {
        project.change(id, [&](WorkSession &s) { s.workers[0].minutes = Minutes{minutes}; });
        return wrongs(project, id);
    };
    CHECK(worked(60).empty());
    CHECK(worked(61) ==
          Said{"Log entry 3 of 2026-01-02T10:00 has person 1 “Ada Plank” at work for 61 "
               "minutes, longer than it lasted."});
    CHECK(worked(0).size() == 1);
    project.change(id, [](WorkSession &s) { s.minutes.reset(); });
    CHECK(worked(61).empty());
}

TEST_CASE("No log entry, worker or flight lasts longer than 10,000 hours")
{
    ProjectBuilder project;
    const auto id = project.session(project.part("Wing"), "2026-01-02T10:00", 1);
    project.change(id, [](WorkSession &s) { s.minutes = Minutes{600'000}; });
    CHECK(wrongs(project).empty());
    project.change(id, [](WorkSession &s) { s.minutes = Minutes{600'001}; });
    CHECK(wrongs(project) ==
          Said{"Log entry 3 of 2026-01-02T10:00 lasts 600001 minutes; more than 10,000 hours do "
               "not fit into one entry."});
    project.change(id, [](WorkSession &s) {
        s.minutes.reset();
        s.workers[0].minutes = Minutes{600'001};
    });
    CHECK(wrongs(project).size() == 1);
    project.change(id, [](WorkSession &s) { s.workers[0].minutes = longestRecorded; });
    CHECK(wrongs(project).empty());
    const auto flight =
        project.add(Flight{.flown_on = on("2027-01-01"), .minutes = Minutes{600'000}});
    CHECK(wrongs(project).empty());
    project.change(flight, [](Flight &f) { f.minutes = Minutes{600'001}; });
    CHECK(wrongs(project).size() == 1);
}

TEST_CASE("Nobody is named twice in one log entry")
{
    ProjectBuilder project;
    const auto id = project.session(project.part("Wing"), "2026-01-02T10:00", 60);
    const Said twice{"Log entry 3 of 2026-01-02T10:00 names person 1 “Ada Plank” twice "
                     "among those who worked."};
    project.change(id, [&](WorkSession &s) { s.workers.push_back({project.builder}); });
    CHECK(wrongs(project) == twice);
    // A withdrawn one would not fit into the database either.
    project.change(id, [](WorkSession &s) { s.withdrawn_on = on("2026-01-03"); });
    CHECK(wrongs(project) == twice);
}

TEST_CASE("A flight lasts longer than nothing")
{
    ProjectBuilder project;
    const auto id = project.add(Flight{.flown_on = on("2027-01-01"), .minutes = Minutes{1}});
    CHECK(wrongs(project).empty());
    project.change(id, [](Flight &f) { f.minutes = Minutes{0}; });
    CHECK(wrongs(project).size() == 1);
}
