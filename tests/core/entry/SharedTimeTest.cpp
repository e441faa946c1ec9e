// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/SharedTime.h"

#include <catch2/catch.hpp>

namespace lastrivet::entry {

TEST_CASE("Shares add up to the whole and the first gets the rest")
{
    CHECK(sharesOf(Minutes{91}, 2) == std::vector{Minutes{46}, Minutes{45}});
    CHECK(sharesOf(Minutes{5}, 3) == std::vector{Minutes{3}, Minutes{1}, Minutes{1}});
    CHECK(sharesOf(Minutes{2}, 3) == std::vector{Minutes{2}, Minutes{0}, Minutes{0}});
}

TEST_CASE("However a session is shared, no minute is lost and nobody works longer than it lasts")
{
    const std::vector parts{Id<Component>{1}, Id<Component>{2}, Id<Component>{3}};
    for (std::int64_t all = 1; all <= 40; ++all) {
        for (std::int64_t worked = 1; worked <= all; ++worked) {
            WorkSession session;
            session.minutes = Minutes{all};
            session.workers = {{Id<Person>{1}}, {Id<Person>{2}, Minutes{worked}, true}};
            std::int64_t minutes = 0;
            std::int64_t helped = 0;
            for (const WorkSession &share : sharedAmong(session, parts)) {
                const std::int64_t lasted = share.minutes ? share.minutes->count() : 0;
                minutes += lasted;
                for (const auto &worker : share.workers) {
                    if (!worker.minutes)
                        continue;
                    CHECK(worker.paid);
                    CHECK(worker.minutes->count() <= lasted);
                    CHECK(worker.minutes->count() > 0);
                    helped += worker.minutes->count();
                }
            }
            REQUIRE(minutes == all);
            REQUIRE(helped == worked);
        }
    }
}

TEST_CASE("Unknown time stays unknown in each share")
{
    WorkSession session;
    session.workers = {{Id<Person>{1}}};
    const auto shares = sharedAmong(session, {Id<Component>{1}, Id<Component>{2}});
    REQUIRE(shares.size() == 2);
    CHECK_FALSE(shares[0].minutes.has_value());
    CHECK(shares[1].component_id == Id<Component>{2});
    CHECK(shares[1].workers.size() == 1);
}

TEST_CASE("Stretches are taken as they are given")
{
    WorkSession session;
    session.minutes = Minutes{100};
    session.workers = {{Id<Person>{2}, Minutes{50}}};
    const auto shares = sharedInto(session, {Minutes{70}, Minutes{30}});
    REQUIRE(shares.size() == 2);
    CHECK(shares[0].minutes == Minutes{70});
    CHECK(shares[0].workers[0].minutes == Minutes{35});
    CHECK(shares[1].workers[0].minutes == Minutes{15});
}

TEST_CASE("Without a time of the whole, each worker's minutes are shared and counted once")
{
    WorkSession session;
    session.workers = {{Id<Person>{1}, Minutes{120}}, {Id<Person>{2}, Minutes{61}, true}};
    const auto shares = sharedAmong(session, {Id<Component>{1}, Id<Component>{2}});
    REQUIRE(shares.size() == 2);
    CHECK_FALSE(shares[0].minutes);
    CHECK(shares[0].workers ==
          std::vector<WorkSession::Worker>{{Id<Person>{1}, Minutes{60}},
                                           {Id<Person>{2}, Minutes{31}, true}});
    CHECK(shares[1].workers ==
          std::vector<WorkSession::Worker>{{Id<Person>{1}, Minutes{60}},
                                           {Id<Person>{2}, Minutes{30}, true}});
}

TEST_CASE("No share of a session falls to the builder because its worker has no minute for it")
{
    WorkSession session;
    session.minutes = Minutes{60};
    session.workers = {{Id<Person>{2}, Minutes{1}}};
    const std::vector parts{Id<Component>{1}, Id<Component>{2}, Id<Component>{3}};
    for (const WorkSession &share : sharedAmong(session, parts)) {
        REQUIRE(share.workers.size() == 1);
        CHECK(share.workers[0].person_id == Id<Person>{2});
        CHECK(share.workers[0].minutes == Minutes{1});
    }
    session.minutes = Minutes{1};
    const auto shares = sharedAmong(session, parts);
    CHECK_FALSE(shares[2].minutes);
    REQUIRE(shares[2].workers.size() == 1);
    CHECK_FALSE(shares[2].workers[0].minutes);
}

} // namespace lastrivet::entry
