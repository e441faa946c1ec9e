// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/SchemaRules.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using Catch::Contains;

namespace {

constexpr const char *first = R"(
    CREATE TABLE "bin" ("id" INTEGER PRIMARY KEY, "name" TEXT NOT NULL) STRICT;
    CREATE TABLE "bin_words" ("bin_id" INTEGER NOT NULL, "item" TEXT NOT NULL,
                              PRIMARY KEY ("bin_id", "item")) STRICT, WITHOUT ROWID;
    CREATE VIRTUAL TABLE "search" USING fts5 ("title");)";

std::vector<std::string> breachesOf(const char *statements)
{
    const storage::SchemaStep steps[] = {{1, first}, {2, statements}};
    return test::breaches(steps);
}

} // namespace

TEST_CASE("No step of the schema makes what earlier journals say unreadable")
{
    CHECK(test::breaches(storage::schemaSteps()) == std::vector<std::string>{});
}

TEST_CASE("A step may add tables, columns that can be left out, indexes, and data; and search anew")
{
    const auto *statements = GENERATE(
        R"(CREATE TABLE "shelf" ("id" INTEGER PRIMARY KEY) STRICT;)",
        R"(-- Where it stands.
           ALTER TABLE "bin" ADD COLUMN "place" TEXT;)",
        R"(ALTER TABLE "bin" ADD COLUMN "count" INTEGER NOT NULL DEFAULT 0;)",
        R"(CREATE INDEX "bin_name" ON "bin" ("name");)",
        R"(UPDATE "bin" SET "name"='; none' WHERE "name"='';)",
        R"(DROP TABLE "search"; CREATE VIRTUAL TABLE "search" USING fts5 ("title", "body");)");
    CHECK(breachesOf(statements) == std::vector<std::string>{});
}

TEST_CASE("A step that drops, renames, reorders, or empties what was journalled is found")
{
    CHECK_THAT(breachesOf(R"(DROP TABLE "bin_words";)").back(), Contains("takes bin_words away"));
    CHECK_THAT(breachesOf(R"(ALTER TABLE "bin" RENAME TO "box";)").back(),
               Contains("takes bin away"));
    CHECK_THAT(breachesOf(R"(ALTER TABLE "bin" RENAME COLUMN "name" TO "title";)").back(),
               Contains("changes columns that bin had"));
    CHECK_THAT(breachesOf(R"(ALTER TABLE "bin" DROP COLUMN "name";)").back(),
               Contains("changes columns that bin had"));
    CHECK_THAT(breachesOf(R"(DROP TABLE "bin";
                             CREATE TABLE "bin" ("name" TEXT, "id" INTEGER PRIMARY KEY) STRICT;)")
                   .back(),
               Contains("changes columns that bin had"));
    CHECK(breachesOf(R"(DELETE FROM "bin";)").size() == 1);
    CHECK(breachesOf(R"(INSERT INTO "bin" VALUES (1,'x');)").size() == 1);
    CHECK(breachesOf(R"(CREATE UNIQUE INDEX "one" ON "bin" ("name");)").size() == 1);
}
