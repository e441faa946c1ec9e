// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/merge/ChangeContent.h"

#include "core/base/Error.h"

#include <catch2/catch.hpp>

#include <cstdint>
#include <utility>
#include <variant>
#include <vector>

using namespace lastrivet;
using namespace lastrivet::merge;

namespace {

/// What is recorded of `change` in a stranger's tables, whose columns take values of any kind.
storage::Blob recorded(const std::string &table, const std::string &before,
                       const std::string &change)
{
    storage::Database database;
    database.run(table);
    database.run(before);
    storage::ChangeRecording recording(database);
    database.run(change);
    return recording.changeset();
}

constexpr const char *links = R"(CREATE TABLE "media_links" ("media_id", "position", "subject",
    "id", PRIMARY KEY ("media_id","position")))";
constexpr const char *workers = R"(CREATE TABLE "work_session_workers" ("work_session_id",
    "person_id", "minutes", "paid", PRIMARY KEY ("work_session_id","person_id")))";
constexpr const char *profile = R"(CREATE TABLE "profile_copy" ("id" INTEGER PRIMARY KEY,
    "content"))";

} // namespace

TEST_CASE("A change to a list tells where in it, and of what record")
{
    const auto content =
        contentOf(recorded(links, "", R"(INSERT INTO "media_links" VALUES (7,0,'component',3))"));
    REQUIRE(content.records.size() == 1);
    CHECK(content.records.front().record == RecordRef{RecordType::Media, 7});
    CHECK(content.records.front().rows.front().key(1) == storage::Cell{std::int64_t{0}});
}

TEST_CASE("A stranger's change whose key is of another kind is refused in a sentence")
{
    const auto [table, change] = GENERATE(Catch::Generators::table<std::string, std::string>({
        {links, R"(INSERT INTO "media_links" VALUES (7,'first','component',3))"},
        {links, R"(INSERT INTO "media_links" VALUES (7,0.5,'component',3))"},
        {workers, R"(INSERT INTO "work_session_workers" VALUES (7,'Robin',60,0))"},
    }));
    CHECK_THROWS_AS(contentOf(recorded(table, "", change)), UnreadableInput);
}

TEST_CASE("A stranger's rule profile that is no text is refused in a sentence")
{
    CHECK_THROWS_AS(contentOf(recorded(profile, "", R"(INSERT INTO "profile_copy" VALUES (1,5))")),
                    UnreadableInput);
    CHECK_THROWS_AS(contentOf(recorded(profile, R"(INSERT INTO "profile_copy" VALUES (1,'{}'))",
                                       R"(UPDATE "profile_copy" SET "content"=NULL)")),
                    UnreadableInput);
    // A row without the text at all.
    CHECK_THROWS_AS(contentOf(recorded(R"(CREATE TABLE "profile_copy" ("id" INTEGER PRIMARY KEY))",
                                       "", R"(INSERT INTO "profile_copy" VALUES (1))")),
                    UnreadableInput);
    const auto content =
        contentOf(recorded(profile, R"(INSERT INTO "profile_copy" VALUES (1,'{}'))",
                           R"(UPDATE "profile_copy" SET "content"='{ }')"));
    REQUIRE(content.profile);
    CHECK(*content.profile->after[1] == storage::Cell{std::string("{ }")});
}

TEST_CASE("Of a list updates come first, then insertions, and deletions from its end backwards")
{
    const auto content = contentOf(recorded(links,
                                            R"(INSERT INTO "media_links" VALUES (7,0,'component',1),
            (7,1,'component',2), (7,2,'component',3), (7,3,'component',4), (8,0,'component',1))",
                                            R"(DELETE FROM "media_links" WHERE "position">1;
            UPDATE "media_links" SET "id"=9 WHERE "media_id"=7;
            INSERT INTO "media_links" VALUES (7,5,'component',6), (7,4,'component',5))"));
    REQUIRE(content.records.size() == 1);
    std::vector<std::pair<RowChange, std::int64_t>> told;
    for (const RowEdit &edit : content.records.front().rows)
        told.emplace_back(edit.kind, std::get<std::int64_t>(edit.key(1)));
    CHECK(told == std::vector<std::pair<RowChange, std::int64_t>>{{RowChange::Update, 0},
                                                                  {RowChange::Update, 1},
                                                                  {RowChange::Insert, 4},
                                                                  {RowChange::Insert, 5},
                                                                  {RowChange::Delete, 3},
                                                                  {RowChange::Delete, 2}});
    CHECK_FALSE(content.records.front().own());
}
