// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/SquawkLine.h"

#include <catch2/catch.hpp>

namespace lastrivet::entry {

TEST_CASE("A squawk told in one line gives part, severity and title")
{
    Records records;
    const Component part{.id = Id<Component>{3}, .code = "LA", .name = "Left aileron"};
    records.put(RecordType::Component, &part);
    const PartFinder parts(records);
    const auto whole = readSquawk("left aileron airworthiness: crack at hinge 2", parts);
    CHECK(whole.component_id == part.id);
    CHECK(whole.severity == Severity::Airworthiness);
    CHECK(whole.title == "crack at hinge 2");
    const auto plain = readSquawk("scratch on the spinner", parts);
    CHECK_FALSE(plain.component_id);
    CHECK(plain.severity == Severity::Workmanship);
    CHECK(plain.title == "scratch on the spinner");
    CHECK(readSquawk("cosmetic: scratch", parts).title == "scratch");
    CHECK(readSquawk("note to self: look again", parts).title == "note to self: look again");
}

} // namespace lastrivet::entry
