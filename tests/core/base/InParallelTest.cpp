// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/InParallel.h"

#include <catch2/catch.hpp>

#include <atomic>
#include <stdexcept>
#include <thread>

using namespace lastrivet;

TEST_CASE("Two things are done in parallel, and both are done afterwards")
{
    std::atomic<bool> isBegun = false;
    std::thread::id beside;
    inParallel(
        [&] {
            beside = std::this_thread::get_id();
            isBegun = true;
        },
        // Ends only when the other runs meanwhile.
        [&] {
            while (!isBegun)
                std::this_thread::yield();
        });
    CHECK(beside != std::thread::id());
    CHECK(beside != std::this_thread::get_id());
}

TEST_CASE("An exception of either of two parallel things is thrown, after the other has ended")
{
    std::atomic<bool> isDone = false;
    const auto finish = [&] { isDone = true; };
    const auto fail = [] { throw std::runtime_error("no"); };
    CHECK_THROWS_AS(inParallel(fail, finish), std::runtime_error);
    CHECK(isDone.exchange(false));
    CHECK_THROWS_AS(inParallel(finish, fail), std::runtime_error);
    CHECK(isDone);
}
