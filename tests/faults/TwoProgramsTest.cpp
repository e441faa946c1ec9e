// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
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

struct Said {
    std::set<std::string> saved;
    std::size_t told = 0;
};

Said heard(Worker &worker, pid_t other)
{
    Said said;
    const auto telling = fmt::format("Process {} on ", other);
    for (const auto &line : worker.said()) {
        if (line.starts_with(telling))
            ++said.told;
        else if (line != Worker::ready)
            said.saved.insert(line);
    }
    return said;
}

} // namespace

TEST_CASE("Of two programs at one project one writes, the other is told, and nothing is lost",
          "[two]")
{
    Site site;
    site.close();
    Worker first("logging", site.folder(), site.supplies().folder(), 2, Worker::Stay::ByTurns);
    Worker second("logging", site.folder(), site.supplies().folder(), 3, Worker::Stay::ByTurns);
    std::this_thread::sleep_for(std::chrono::seconds{times(3, 60)});
    first.askToEnd();
    second.askToEnd();
    const auto one = heard(first, second.process());
    const auto two = heard(second, first.process());
    CHECK(one.told > 0);
    CHECK(two.told > 0);
    CHECK(one.saved.size() > 10);
    CHECK(two.saved.size() > 10);

    site.open();
    std::set<std::string> hashes;
    std::int64_t newest = 0;
    for (const auto &entry : site.project().journal()) {
        hashes.insert(entry.hash);
        CHECK(entry.stamp > newest);
        newest = entry.stamp;
    }
    for (const auto *saved : {&one.saved, &two.saved}) {
        for (const auto &hash : *saved)
            REQUIRE(hashes.contains(hash));
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
