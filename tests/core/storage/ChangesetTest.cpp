// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/Changeset.h"

#include "core/base/Error.h"
#include "core/storage/JournalChanges.h"
#include "core/storage/Migration.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>

using namespace lastrivet;
using namespace lastrivet::storage;

namespace {

/// Somebody's role, in a table with a key of two columns.
Blob recorded()
{
    Database database;
    runSteps(database);
    ChangeRecording recording(database);
    database.run(R"(INSERT INTO "person" ("id","name") VALUES (5,'Robin');
                    INSERT INTO "person_roles" VALUES (5,'builder');)");
    return recording.changeset();
}

Database with(const std::string &person, const std::string &roles)
{
    Database database;
    database.run("CREATE TABLE \"person\" (" + person + ") STRICT;" +
                 "CREATE TABLE \"person_roles\" (" + roles + ") STRICT, WITHOUT ROWID;");
    return database;
}

constexpr const char *person = R"("id" INTEGER PRIMARY KEY, "name" TEXT, "credential" TEXT,
    "contact" TEXT, "note" TEXT, "withdrawn_on" TEXT, "withdrawn_why" TEXT)";
constexpr const char *roles =
    R"("person_id" INTEGER, "item" TEXT, PRIMARY KEY ("person_id","item"))";

} // namespace

TEST_CASE("A change fits tables that have got more columns since, which are at their defaults then")
{
    auto database = with(std::string(person) + R"(, "mood" TEXT NOT NULL DEFAULT 'calm')", roles);
    CHECK_FALSE(storage::apply(database, recorded()).conflict);
    CHECK(database.text(R"(SELECT "mood" FROM "person" WHERE "name"='Robin')") == "calm");
    CHECK_FALSE(storage::apply(database, inverted(recorded())).conflict);
    CHECK(database.number(R"(SELECT count(*) FROM "person")") == 0);
}

TEST_CASE(
    "A change to tables with fewer columns or another key is an error, and nothing is changed")
{
    const auto [people, theirRoles] = GENERATE(table<std::string, std::string>({
        {R"("id" INTEGER PRIMARY KEY, "name" TEXT)", roles},
        {person, R"("person_id" INTEGER PRIMARY KEY, "item" TEXT)"},
        {person, R"("person_id" INTEGER, "item" TEXT, "more" TEXT,
                    PRIMARY KEY ("person_id","item","more"))"},
    }));
    auto database = with(people, theirRoles);
    CHECK_THROWS_AS(storage::apply(database, recorded()), UnreadableInput);
    CHECK(database.number(R"(SELECT count(*) FROM "person")") == 0);
    CHECK(database.number(R"(SELECT count(*) FROM "person_roles")") == 0);
}

TEST_CASE("Numbers that nest without end, or are none, are told as the text that they are")
{
    Database database;
    runSteps(database);
    database.checkReferences(false);
    const std::string deep(200'000, '[');
    ChangeRecording recording(database);
    database.run(R"(INSERT INTO "media_annotations" VALUES (5,0,'arrow','[0.25,0.5]',NULL))");
    database.run(R"(INSERT INTO "media_annotations" VALUES (5,1,'arrow',')" + deep + "',NULL)");
    database.run(R"(INSERT INTO "media_annotations" VALUES (5,2,'arrow','0.25 and 0.5',NULL))");
    const auto changes = journalChanges(recording.changeset());
    REQUIRE(changes.size() == 1);
    REQUIRE(changes.front().fields.size() == 1);
    const auto &added = changes.front().fields.front().added;
    REQUIRE(added.size() == 3);
    CHECK(added[0].find("[0.25,0.5]") != std::string::npos);
    CHECK(added[1].find('"' + deep + '"') != std::string::npos);
    CHECK(added[2].find(R"("0.25 and 0.5")") != std::string::npos);
}

TEST_CASE("A record is touched once, however many of its rows a change has")
{
    CHECK(touchedBy(recorded()) == std::vector<RecordRef>{{RecordType::Person, 5}});
}

TEST_CASE("Of a change of many records some are read, the one that is asked for first")
{
    Database database;
    runSteps(database);
    ChangeRecording recording(database);
    for (const int id : {3, 4, 5, 6})
        database.run(
            fmt::format(R"(INSERT INTO "person" ("id","name") VALUES ({0},'Robin {0}'))", id));
    database.run(R"(INSERT INTO "person_roles" VALUES (6,'builder'))");
    const auto bytes = recording.changeset();
    const auto some = someJournalChanges(bytes, 2, RecordRef{RecordType::Person, 6});
    REQUIRE(some.changes.size() == 2);
    CHECK(some.others == 2);
    CHECK(some.changes[0].record == RecordRef{RecordType::Person, 6});
    CHECK(some.changes[0].fields.size() == 2);
    CHECK(some.changes[1].record == RecordRef{RecordType::Person, 3});
    const auto whole = someJournalChanges(bytes, 9, RecordRef{RecordType::Person, 7});
    CHECK(whole.changes.size() == 4);
    CHECK(whole.changes.front().record == RecordRef{RecordType::Person, 3});
    CHECK(whole.others == 0);
    CHECK(someJournalChanges(bytes, 0, std::nullopt).others == 4);
}

TEST_CASE("A change of a table with more columns than there are is not read")
{
    auto database = with(std::string(person) + R"(, "mood" TEXT)", roles);
    ChangeRecording recording(database);
    database.run(R"(INSERT INTO "person" ("id","name") VALUES (5,'Robin'))");
    CHECK_THROWS_AS(touchedBy(recording.changeset()), UnreadableInput);
}
