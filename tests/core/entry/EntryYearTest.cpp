// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/entry/EntryBench.h"

#include <catch2/catch.hpp>

namespace lastrivet::test {

TEST_CASE("Two figures behind a day are its year where a part, a time or nothing follows")
{
    const EntryBench bench;
    CHECK(bench.one("3 Mar 25 LA drilled 2h").began == Moment::parse("2025-03-03"));
    CHECK(bench.one("3 Mar 25 LA drilled 2h").component_id == Id<Component>{30});
    CHECK(bench.one("3 Mar 25 1h LA: x").began == Moment::parse("2025-03-03"));
    const auto count = bench.one("3 Mar 25 rivets bucked 2h");
    CHECK(count.began == Moment::parse("2026-03-03"));
    CHECK(count.note.starts_with("25 rivets bucked"));
    CHECK(bench.one("3 Mar 45 min LA: x").began == Moment::parse("2026-03-03"));
    CHECK(bench.one("3 Mar 45 min LA: x").minutes == Minutes{45});
}

} // namespace lastrivet::test
