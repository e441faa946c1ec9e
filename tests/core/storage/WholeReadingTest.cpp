// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/WholeReading.h"

#include "core/storage/Journal.h"
#include "core/storage/Migration.h"
#include "core/storage/RecordReader.h"
#include "core/storage/RecordWriter.h"
#include "core/storage/Schema.h"
#include "core/storage/Transaction.h"
#include "tests/support/RandomRecords.h"
#include "tests/support/TemporaryFolder.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::storage;

namespace {

constexpr std::int64_t idsPerType = 40;
constexpr std::int64_t always = 0;

/// Writes the records in one transaction, with a row of the journal, as every program of ours does.
void write(Database &database, const Records *before, const Records &after)
{
    RecordWriter writer(database.sql());
    Transaction transaction(database, ReferenceCheck::AtTheEnd);
    for (std::size_t i = 0; i < recordTypeCount; ++i) {
        const auto type = RecordType(i);
        for (std::int64_t id = 1; id <= (type == RecordType::Project ? 1 : idsPerType); ++id)
            writer.write(type, before ? before->find(type, id) : nullptr, after.find(type, id));
    }
    NewChange change;
    change.label = "Written";
    Journal(database).append(change, 1);
    transaction.commit();
}

Database fileIn(const test::TemporaryFolder &folder)
{
    auto database = Database::create(folder / "records.db");
    runSteps(database);
    database.use(Database::Safety::WriteAhead);
    return database;
}

} // namespace

TEST_CASE("Two threads read what one reads")
{
    const test::TemporaryFolder folder;
    auto database = fileIn(folder);
    const auto records = test::RandomRecords(31, idsPerType).all();
    write(database, nullptr, records);
    for (int i = 0; i < 20; ++i) {
        const ReadTransaction reading(database);
        const auto whole = readWhole(database, always);
        REQUIRE(whole == RecordReader(database.sql()).readAll());
        REQUIRE(whole == records);
    }
    const Database again(folder / "records.db", Database::Access::ReadOnly,
                         Database::Safety::WriteAhead);
    CHECK(readWhole(again, always) == records);
}

TEST_CASE("What another program writes in between is not mixed in")
{
    const test::TemporaryFolder folder;
    auto database = fileIn(folder);
    const auto records = test::RandomRecords(32, idsPerType).all();
    write(database, nullptr, records);
    const Database reader(folder / "records.db", Database::Access::ReadOnly,
                          Database::Safety::WriteAhead);
    const ReadTransaction reading(reader);
    REQUIRE(reader.number(R"(SELECT count(*) FROM "journal")") == 1);
    const auto later = test::RandomRecords(33, idsPerType).all();
    write(database, &records, later);
    CHECK(readWhole(reader, always) == records);
    CHECK(readWhole(database, always) == later);
}

TEST_CASE("A value that no program of ours wrote is named, whichever thread meets it")
{
    for (const auto *table : {"media", "person", "work_session", "closing_events"}) {
        const test::TemporaryFolder folder;
        auto database = fileIn(folder);
        write(database, nullptr, test::RandomRecords(34, idsPerType).all());
        database.run("PRAGMA ignore_check_constraints=ON");
        database.run(
            std::string("PRAGMA foreign_keys=OFF; UPDATE \"") + table + "\" SET " +
            (std::string(table) == "closing_events" ? "\"closed_on\"" : "\"withdrawn_on\"") +
            "='no day'");
        CHECK_THROWS_WITH(readWhole(database, always), Catch::Contains("The database is damaged") &&
                                                           Catch::Contains("impossible"));
    }
}
