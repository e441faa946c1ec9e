// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/DocumentWriter.h"
#include "core/exchange/ImportDocument.h"
#include "core/profiles/ProfileLibrary.h"
#include "tests/support/ProjectBuilder.h"
#include "tests/support/RandomRecords.h"

#include <catch2/catch.hpp>

#include <sstream>

using namespace lastrivet;
using namespace lastrivet::exchange;
using namespace lastrivet::test;

namespace {

std::string written(const Records &records)
{
    std::ostringstream out;
    writeDocument(records, out);
    return out.str();
}

} // namespace

TEST_CASE("A document that was written reads as the same records and is written the same again")
{
    for (unsigned seed = 1; seed <= 20; ++seed) {
        auto records = RandomRecords(seed, 1 + seed % 7).all();
        if (seed % 2 == 0)
            records.profile_copy = ProfileLibrary::standard().profile("gb").json;
        const auto text = written(records);
        const auto reading = readDocument(text);
        INFO("seed " << seed);
        for (const auto &error : reading.errors)
            UNSCOPED_INFO(english(error, "document"));
        REQUIRE(reading.errors.empty());
        CHECK(reading.isComplete);
        CHECK(reading.document.hold_points_given);
        CHECK(reading.document.records == records);
        CHECK(written(reading.document.records) == text);
    }
}

TEST_CASE("A document has every array, one-space indent, no nulls, no empty lists and a line end")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    project.session(wing, "2026-03-14T10:00", 90);
    const auto text = written(project.records);
    CHECK(text.starts_with("{\n \"format\": \"lastrivet-records\",\n \"version\": 1,\n"
                           " \"hold_points_given\": true,\n \"project\": {\n"
                           "  \"name\": \"Two-seater\",\n  \"profile\": \"plain\",\n"
                           "  \"builder_id\": 1,\n  \"time_zone\": \"UTC\",\n"
                           "  \"units\": \"metric\"\n },\n \"people\": [\n"));
    CHECK(
        text.find(" \"work_sessions\": [\n  {\n   \"id\": 3,\n   \"began\": \"2026-03-14T10:00\",\n"
                  "   \"approximate\": false,\n   \"minutes\": 90,\n   \"component_id\": 2,\n"
                  "   \"kind\": \"other\",\n   \"workers\": [\n    {\n     \"person_id\": 1,\n"
                  "     \"paid\": false\n    }\n   ]\n  }\n ],\n \"closings\": [],\n") !=
        std::string::npos);
    CHECK(text.ends_with(" \"flights\": []\n}\n"));
    CHECK(text.find("null") == std::string::npos);
}

TEST_CASE("Missing arrays are empty, an explicit null is the default")
{
    const auto reading = readDocument(R"({"format": "lastrivet-records", "version": 1,
        "project": {"name": "A", "profile": "ca", "time_zone": null, "note": null},
        "components": [{"id": 9007199254740991, "name": "Wing", "kind": null}],
        "steps": [{"id": 1, "component_id": 9007199254740991, "title": "T", "after": null}],
        "tools": null})");
    CHECK(reading.errors.empty());
    CHECK_FALSE(reading.document.hold_points_given);
    CHECK(reading.document.records.project.time_zone == "UTC");
    CHECK(reading.document.records.components.begin()->kind == ComponentKind::Part);
    CHECK(reading.document.records.components.size() == 1);
    CHECK(reading.document.records.tools.isEmpty());
}
