// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/Acts.h"
#include "tests/faults/Report.h"
#include "tests/faults/Site.h"
#include "tests/faults/Worker.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>

#include <chrono>
#include <set>
#include <thread>

using namespace lastrivet;
using namespace lastrivet::faults;

namespace {

/// Logs work, some entries at a time; while another program writes it says so and tries again.
Worker::Task byTurns(const Site &site, int series)
{
    return [&site, series](const Worker::Say &say, const Worker::IsToEnd &isToEnd) {
        Supplies supplies(site.supplies().folder(), series);
        while (!isToEnd()) {
            const auto project = Project::open(site.folder(), {nullptr, "Worker"});
            if (project->isReadOnly())
                say(project->readOnlyReason());
            int entries = 0;
            if (!project->isReadOnly())
                keepDoing(act("logging"), *project, supplies, say,
                          [&] { return isToEnd() || ++entries > 10; });
            std::this_thread::sleep_for(std::chrono::milliseconds{5});
        }
    };
}

struct Said {
    std::set<std::string> saved;
    std::size_t told = 0;
};

Said told(const std::vector<std::string> &lines, pid_t other)
{
    Said said;
    const auto telling = fmt::format("(process {} on ", other);
    for (const auto &line : lines) {
        if (line.find(telling) != std::string::npos)
            ++said.told;
        else if (line != "ready")
            said.saved.insert(line);
    }
    return said;
}

} // namespace

TEST_CASE("Of two programs at one project one writes, the other is told, and nothing is lost",
          "[two]")
{
    using namespace std::chrono;
    Site site;
    site.close();
    Worker first(byTurns(site, 2));
    Worker second(byTurns(site, 3));
    // A busy machine may need longer until each has had its turns.
    const auto begun = steady_clock::now();
    Said one;
    Said two;
    const auto isEnough = [](const Said &said) { return said.told > 2 && said.saved.size() > 20; };
    while (steady_clock::now() < begun + seconds{times(3, 60)} ||
           (!(isEnough(one) && isEnough(two)) && steady_clock::now() < begun + seconds{240})) {
        std::this_thread::sleep_for(milliseconds{100});
        one = told(first.linesSoFar(), second.process());
        two = told(second.linesSoFar(), first.process());
    }
    first.askToEnd();
    second.askToEnd();
    one = told(first.said(), second.process());
    two = told(second.said(), first.process());
    CHECK(isEnough(one));
    CHECK(isEnough(two));

    site.open();
    std::set<std::string> hashes;
    std::int64_t newest = 0;
    for (const auto &entry : site.project().journal()) {
        hashes.insert(entry.hash);
        CHECK(entry.stamp > newest);
        newest = entry.stamp;
    }
    for (const auto *saved : {&one.saved, &two.saved}) {
        for (const auto &hash : *saved) {
            CAPTURE(hash);
            REQUIRE(hashes.contains(hash));
        }
    }
    REQUIRE(damageIn(site.folder()) == "");
    report("two programs, entries", int(one.saved.size() + two.saved.size()),
           fmt::format("0 lost; told {} times who writes", one.told + two.told));
}

TEST_CASE("A clock that is set back two days leaves the journal in its order", "[two]")
{
    Site site;
    addPart(site.project());
    site.clock().advance(-std::chrono::days{2});
    for (int i = 0; i < 3; ++i)
        addPart(site.project());
    REQUIRE(site.project().undo());
    site.clock().advance(std::chrono::days{4});
    addPart(site.project());
    std::int64_t newest = 0;
    for (const auto &entry : site.project().journal()) {
        CHECK(entry.stamp > newest);
        newest = entry.stamp;
    }
    site.close();
    site.open();
    CHECK(site.project().records()->components.size() == 5);
    CHECK(damageIn(site.folder()) == "");
}
