// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/Database.h"

#include "core/base/Error.h"
#include "core/base/Tongue.h"
#include "core/storage/Integrity.h"
#include "core/storage/Migration.h"
#include "core/storage/Opening.h"
#include "core/storage/Schema.h"
#include "core/storage/Transaction.h"

#include <SQLiteCpp/Exception.h>
#include <catch2/catch.hpp>

#include <filesystem>
#include <sqlite3.h>
#include <string>
#include <system_error>

using namespace lastrivet;
using namespace lastrivet::storage;

TEST_CASE("The journal's rows can be neither changed, nor removed, nor replaced")
{
    Database database;
    runSteps(database);
    database.run(R"(INSERT INTO "journal" VALUES (1,'a',1,'change',NULL,NULL,'x',1,NULL,NULL,
                                                  x'00',x'01'))");
    const auto *statement = GENERATE(
        R"(UPDATE "journal" SET "label"='y')", R"(DELETE FROM "journal")",
        R"(INSERT OR REPLACE INTO "journal" VALUES (1,'b',1,'change',NULL,NULL,'y',1,NULL,NULL,
                                                    x'00',x'01'))");
    CHECK_THROWS_WITH(database.run(statement), Catch::Contains("append-only"));
    CHECK(database.text(R"(SELECT "label" FROM "journal")") == "x");
}

TEST_CASE("What a hostile database could use is switched off")
{
    Database database;
    runSteps(database);
    CHECK_THROWS(database.run(R"(SELECT "no such column" FROM "step")"));
    CHECK_THROWS(database.run(R"(UPDATE "sqlite_schema" SET "sql"='')"));
    CHECK_THROWS(database.run(R"(DELETE FROM "search_data")"));
    CHECK(database.number("PRAGMA trusted_schema") == 0);
    CHECK(database.number("PRAGMA cell_size_check") == 1);
    CHECK(database.number("PRAGMA foreign_keys") == 1);
    database.run("CREATE VIEW parts AS SELECT * FROM component");
    CHECK_THROWS(database.run("SELECT * FROM parts"));
    CHECK_THROWS_WITH(database.run("SELECT load_extension('x')"),
                      Catch::Contains("not authorized") || Catch::Contains("no such function"));
}

TEST_CASE("A value that no project can need is refused before it takes memory")
{
    Database database;
    try {
        withFaults([&] { database.run("SELECT length(zeroblob(300000000))"); });
        FAIL("it was taken");
    } catch (const UnreadableInput &complaint) {
        CHECK(std::string(complaint.what()).find("larger than any") != std::string::npos);
    }
}

TEST_CASE("A fault of a copy names both files, since either may be the one that failed")
{
    const auto refused = [](const std::filesystem::path &to) {
        withFaults([&] {
            throw std::filesystem::filesystem_error(
                "copy", "/from/records.db", to,
                std::make_error_code(std::errc::no_space_on_device));
        });
    };
    CHECK_THROWS_WITH(refused("/to/records.db"),
                      Catch::StartsWith("/from/records.db or /to/records.db could not be read or "
                                        "written: "));
    CHECK_THROWS_WITH(refused({}),
                      Catch::StartsWith("/from/records.db could not be read or written: "));
}

TEST_CASE("What is unreadable is told with its place, unless it says that itself")
{
    const auto refused = [](const UnreadableInput &fault) {
        withFaultsAt("/kim/Bench.lastrivet", [&] { throw fault; });
    };
    CHECK_THROWS_WITH(refused(UnreadableInput("It is damaged.")),
                      "/kim/Bench.lastrivet: It is damaged.");
    CHECK_THROWS_WITH(refused(UnreadableInput("/kim/records.db is cut short.", "/kim/records.db")),
                      "/kim/records.db is cut short.");
    CHECK_THROWS_AS(withFaultsAt("/kim", [] { throw NotWritable("Not now."); }), NotWritable);
}

TEST_CASE("A fault is said in the language of whoever reads it, and in English on a terminal")
{
    const Tongue german{[](std::string_view pattern) -> std::string {
                            if (pattern == "{0} could not be read or written: {1}.")
                                return "{0} ließ sich nicht lesen oder schreiben: {1}.";
                            if (pattern == "It is damaged.")
                                return "Sie ist beschädigt.";
                            return std::string(pattern);
                        },
                        {}};
    try {
        throwFault(std::filesystem::filesystem_error(
            "copy", "/from/records.db", std::make_error_code(std::errc::no_space_on_device)));
    } catch (const NotSaved &fault) {
        CHECK_THAT(said(fault.message(), german),
                   Catch::StartsWith("/from/records.db ließ sich nicht lesen oder schreiben: "));
        CHECK_THAT(fault.what(),
                   Catch::StartsWith("/from/records.db could not be read or written: "));
    }
    try {
        throwNamed("/kim/Bench.lastrivet", UnreadableInput("It is damaged."));
    } catch (const UnreadableInput &fault) {
        CHECK(said(fault.message(), german) == "/kim/Bench.lastrivet: Sie ist beschädigt.");
    }
}

TEST_CASE("A local project writes ahead and syncs fully; one on a network folder keeps a rollback "
          "journal")
{
    const TemporaryFolder folder;
    const auto file = folder.path() / "records.db";
    {
        auto made = Database::create(file);
        runSteps(made);
        made.use(Database::Safety::WriteAhead);
    }
    {
        const Database local(file, Database::Access::ReadWrite, Database::Safety::WriteAhead);
        CHECK(local.text("PRAGMA journal_mode") == "wal");
        CHECK(local.number("PRAGMA synchronous") == 2);
    }
    Database shared(file, Database::Access::ReadWrite, Database::Safety::RollbackJournal);
    CHECK(shared.text("PRAGMA journal_mode") == "delete");
    CHECK(shared.number("PRAGMA synchronous") == 2);
    const Database reader(file, Database::Access::ReadOnly, Database::Safety::RollbackJournal);
    CHECK(reader.number("PRAGMA user_version") == newestSchema());
    shared.run(R"(INSERT INTO "local_state" VALUES ('a','b'))");
    CHECK(reader.text(R"(SELECT "value" FROM "local_state")") == "b");
}

TEST_CASE("A path that begins with two slashes names a file of this computer")
{
    const TemporaryFolder folder;
    const auto file = folder.path() / "what%20 #is?.db";
    {
        auto made = Database::create(file);
        runSteps(made);
    }
    const auto access = GENERATE(Database::Access::ReadOnly, Database::Access::Immutable);
    const Database reader("/" + file.string(), access, Database::Safety::RollbackJournal);
    CHECK(reader.number("PRAGMA user_version") == newestSchema());
}

TEST_CASE("A dangling reference is named when many rows are checked at the end")
{
    Database database;
    runSteps(database);
    Transaction transaction(database, ReferenceCheck::AtTheEnd);
    database.run(R"(INSERT INTO "tool" VALUES (5,'Wrench',NULL,0,NULL,NULL,NULL);
                    INSERT INTO "sign_off" ("id","person_id","signed_on","result","seen")
                    VALUES (3,77,'2026-01-01','accepted','on_site'))");
    CHECK_THROWS_WITH(transaction.commit(),
                      Catch::Contains("sign_off 3 names a person that does not exist"));
}

TEST_CASE("A transaction that is not committed leaves nothing, and the checks on again")
{
    Database database;
    runSteps(database);
    {
        Transaction transaction(database, ReferenceCheck::AtTheEnd);
        database.run(R"(INSERT INTO "local_state" VALUES ('a','b'))");
    }
    CHECK(database.number(R"(SELECT count(*) FROM "local_state")") == 0);
    CHECK(database.number("PRAGMA foreign_keys") == 1);
}

TEST_CASE("The checks are on again after a fault for which SQLite itself has rolled back")
{
    Database database;
    runSteps(database);
    {
        Transaction transaction(database, ReferenceCheck::AtTheEnd);
        // As it does when the disk is full at the end of a transaction.
        database.run("ROLLBACK");
        CHECK_THROWS(transaction.commit());
    }
    CHECK(database.number("PRAGMA foreign_keys") == 1);
}

TEST_CASE("A table of somebody's own may be called anything when the pages are looked over")
{
    Database database;
    runSteps(database);
    database.run(R"(CREATE TABLE "Robin's list" ("item" TEXT))");
    CHECK_FALSE(firstDamageOf(database, {}));
}

TEST_CASE("A fault that says itself that nothing was changed is marked, and no other is")
{
    const auto isMarked = [](int code) -> bool {
        try {
            throwFault(SQLite::Exception("as SQLite says it", code));
        } catch (const Fault &fault) {
            const std::string sentence = fault.what();
            CHECK(fault.saysNothingWasChanged() ==
                  (sentence.find("nothing was changed") != std::string::npos));
            return fault.saysNothingWasChanged();
        }
    };
    CHECK(isMarked(SQLITE_FULL));
    CHECK(isMarked(SQLITE_IOERR));
    CHECK_FALSE(isMarked(SQLITE_BUSY));
    CHECK_FALSE(isMarked(SQLITE_CORRUPT));
}
