// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/Kills.h"

#include "tests/faults/Copies.h"
#include "tests/faults/Report.h"
#include "tests/faults/Site.h"
#include "tests/faults/Worker.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>

#include <chrono>
#include <cstdlib>
#include <random>
#include <set>

namespace lastrivet::faults {

namespace {

constexpr int killsPerSite = 20;

std::set<std::string> hashesIn(const Project &project)
{
    std::set<std::string> hashes;
    for (const auto &entry : project.journal())
        hashes.insert(entry.hash);
    return hashes;
}

/// Answers how many acts they had finished.
std::size_t killAtWork(const Act &act, int count, unsigned seed)
{
    std::mt19937 random(seed);
    std::size_t done = 0;
    unsigned longest = 60'000;
    std::unique_ptr<Site> site;
    for (int i = 0; i < count; ++i) {
        if (i % killsPerSite == 0)
            site = std::make_unique<Site>();
        site->close();
        const std::chrono::microseconds until{2 + random() % longest};
        const bool alsoWhileOpening = random() % 10 == 0;
        Worker worker([&](const Worker::Say &say, const Worker::IsToEnd &isToEnd) {
            ::setenv("TMPDIR", site->supplies().folder().c_str(), 1);
            Supplies supplies(site->supplies().folder(), 2 + i);
            if (alsoWhileOpening)
                Worker::killLater(until / 2);
            const auto project = Project::open(site->folder(), {nullptr, "Worker"});
            if (!alsoWhileOpening)
                Worker::killLater(until);
            keepDoing(act, *project, supplies, say, isToEnd);
        });
        auto said = worker.said();
        std::erase(said, "ready");
        // Slow acts get more time, until some of them are finished.
        if (said.empty())
            longest = longest * 3 / 2;
        site->open();
        CAPTURE(act.name, i, said);
        // No stuck lock: the next program may write at once.
        REQUIRE(site->project().readOnlyReason() == "");
        const auto hashes = hashesIn(site->project());
        for (const auto &hash : said)
            REQUIRE(hashes.contains(hash));
        REQUIRE(damageIn(site->folder()) == "");
        REQUIRE(damageInCopies(site->root()) == "");
        if (act.name == "backup" && !said.empty())
            REQUIRE(hashesOnShelf(site->root()).contains(said.back()));
        addPart(site->project());
        done += said.size();
    }
    return done;
}

} // namespace

void killOften(const Act &act, unsigned seed)
{
    const int count = times(6, 180);
    const auto done = killAtWork(act, count, seed);
    report(fmt::format("kill -9: {}", act.name), count,
           fmt::format("0 lost of {} finished acts, 0 half", done));
    CHECK(done > 0);
}

} // namespace lastrivet::faults
