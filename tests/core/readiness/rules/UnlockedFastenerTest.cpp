// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("Split pins, wire, jam nuts and tabs are set by hand; nylon and glue lock themselves")
{
    RuleBench bench(readiness::Rule::UnlockedFastener);
    const auto locked = [&](Locking locking) {
        const auto bolt = bench.fastener(bench.rib, "Bellcrank");
        bench.change(bolt, [&](Fastener &f) {
            f.locking = locking;
            f.fitted_on = on("2026-03-10");
            f.locked_on = on("2026-03-12");
        });
        return bolt;
    };
    for (const auto byHand :
         {Locking::SplitPin, Locking::SafetyWire, Locking::JamNut, Locking::LockTab}) {
        const auto bolt = locked(byHand);
        CHECK(bench.quiet(bolt, "2026-03-09"));
        CHECK(bench.must(bolt, "2026-03-10"));
        CHECK(bench.must(bolt, "2026-03-11"));
        CHECK(bench.quiet(bolt, "2026-03-12"));
    }
    for (const auto byItself : {Locking::SelfLockingNut, Locking::ThreadLocker, Locking::None})
        CHECK(bench.quiet(locked(byItself), "2026-03-11"));
}
