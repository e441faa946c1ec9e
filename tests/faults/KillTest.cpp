// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/Acts.h"
#include "tests/faults/Copies.h"
#include "tests/faults/Report.h"
#include "tests/faults/Site.h"
#include "tests/faults/Worker.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <random>
#include <set>
#include <thread>

using namespace lastrivet;
using namespace lastrivet::faults;

namespace {

namespace fs = std::filesystem;

constexpr int killsPerSite = 20;

/// Acts that are killed, and after which every finished one has to be found.
std::vector<Act> killedActs()
{
    std::vector<Act> acts(changingActs().begin(), changingActs().end());
    acts.insert(acts.end(), copyingActs().begin(), copyingActs().end());
    return acts;
}

std::set<std::string> hashesIn(const Project &project)
{
    std::set<std::string> hashes;
    for (const auto &entry : project.journal())
        hashes.insert(entry.hash);
    return hashes;
}

/// Kills one worker at a random moment, most often while it works and now and then while it opens
/// the project; answers the hashes that it said were saved.
std::vector<std::string> killOne(Worker &worker, std::mt19937 &random)
{
    const bool whileOpening = random() % 10 == 0;
    if (!whileOpening)
        REQUIRE(worker.hello() == Worker::ready);
    std::this_thread::sleep_for(std::chrono::microseconds{random() % 30'000});
    worker.kill();
    auto said = worker.said();
    std::erase(said, Worker::ready);
    return said;
}

/// Kills `count` workers at one act after another; answers how many acts they had finished.
std::size_t killWhile(std::string_view act, int count, unsigned seed)
{
    std::mt19937 random(seed);
    std::size_t done = 0;
    std::unique_ptr<Site> site;
    for (int i = 0; i < count; ++i) {
        if (i % killsPerSite == 0)
            site = std::make_unique<Site>();
        site->close();
        Worker worker(act, site->folder(), site->supplies().folder(), 2 + i);
        const auto said = killOne(worker, random);
        site->open();
        CAPTURE(act, i, said);
        // No stuck lock: the next program may write at once.
        REQUIRE(site->project().readOnlyReason() == "");
        const auto hashes = hashesIn(site->project());
        for (const auto &hash : said)
            REQUIRE(hashes.contains(hash));
        REQUIRE(damageIn(site->folder()) == "");
        REQUIRE(damageInCopies(site->root()) == "");
        if (act == "backup" && !said.empty())
            REQUIRE(hashesOnShelf(site->root()).contains(said.back()));
        addPart(site->project());
        done += said.size();
    }
    return done;
}

} // namespace

TEST_CASE("A program that is killed loses nothing that it said was saved, and leaves no half",
          "[kill]")
{
    unsigned seed = 1;
    for (const auto &each : killedActs()) {
        DYNAMIC_SECTION(each.name)
        {
            const int count = times(6, 300);
            const auto done = killWhile(each.name, count, seed++);
            report(fmt::format("kill -9: {}", each.name), count,
                   fmt::format("0 lost of {} finished acts, 0 half", done));
            CHECK(done > 0);
        }
    }
}
