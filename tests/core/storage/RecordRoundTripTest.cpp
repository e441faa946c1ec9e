// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/Changeset.h"
#include "core/storage/Migration.h"
#include "core/storage/RecordReader.h"
#include "core/storage/RecordWriter.h"
#include "core/storage/Schema.h"
#include "core/storage/Transaction.h"
#include "tests/support/RandomRecords.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::storage;

namespace {

constexpr std::int64_t idsPerType = 25;

/// A database in memory, and what happens to it.
struct Fixture {
    Fixture() { runSteps(database); }

    Database database;
    RecordWriter writer{database.sql()};
    RecordReader reader{database.sql()};

    /// Makes the database hold `after` instead of `before`; null for nothing.
    Blob write(const Records *before, const Records *after)
    {
        Transaction transaction(database, ReferenceCheck::AtTheEnd);
        ChangeRecording recording(database);
        for (std::size_t i = 0; i < recordTypeCount; ++i) {
            const auto type = RecordType(i);
            for (std::int64_t id = 1; id <= (type == RecordType::Project ? 1 : idsPerType); ++id)
                writer.write(type, before ? before->find(type, id) : nullptr,
                             after ? after->find(type, id) : nullptr);
        }
        auto changeset = recording.changeset();
        transaction.commit();
        return changeset;
    }
};

std::vector<ChangedRow> rowsOf(const Blob &changeset, std::vector<std::string> &tables)
{
    std::vector<ChangedRow> rows;
    forEachChange(changeset, [&](const ChangedRow &row) {
        rows.push_back(row);
        tables.emplace_back(row.table);
    });
    return rows;
}

} // namespace

TEST_CASE("Every field of every record type comes back from the database as it was")
{
    for (const unsigned seed : {1u, 2u, 3u}) {
        Fixture fixture;
        const auto first = test::RandomRecords(seed, idsPerType).all();
        fixture.write(nullptr, &first);
        REQUIRE(fixture.reader.readAll() == first);
    }
}

TEST_CASE("A rewritten record is read again alone as it is read with all others")
{
    Fixture fixture;
    const auto first = test::RandomRecords(4, idsPerType).all();
    const auto second = test::RandomRecords(5, idsPerType).all();
    fixture.write(nullptr, &first);
    const auto changeset = fixture.write(&first, &second);
    CHECK(fixture.reader.readAll() == second);
    auto again = first;
    for (const auto ref : touchedBy(changeset))
        fixture.reader.readAgain(again, ref);
    CHECK(again == second);
}

TEST_CASE("An inverted changeset brings back what was, and takes away what was not")
{
    Fixture fixture;
    const auto first = test::RandomRecords(6, idsPerType).all();
    const auto second = test::RandomRecords(7, idsPerType).all();
    const auto made = fixture.write(nullptr, &first);
    const auto rewritten = fixture.write(&first, &second);
    fixture.database.run("PRAGMA foreign_keys=OFF");
    REQUIRE_FALSE(storage::apply(fixture.database, inverted(rewritten)).conflict);
    CHECK(fixture.reader.readAll() == first);
    REQUIRE_FALSE(storage::apply(fixture.database, inverted(made)).conflict);
    for (const auto &table : recordTables())
        CHECK(fixture.database.number("SELECT count(*) FROM \"" + table.name() + "\"") == 0);
}

TEST_CASE("Adding one item to a set writes one row and nothing else")
{
    Fixture fixture;
    auto before = test::RandomRecords(8, idsPerType).all();
    Step step = *before.steps.find(Id<Step>{3});
    step.after = {Id<Step>{4}, Id<Step>{6}, Id<Step>{9}};
    before.steps.put(step);
    fixture.write(nullptr, &before);
    auto after = before;
    step.after.insert(step.after.begin() + 1, Id<Step>{5});
    after.steps.put(step);
    std::vector<std::string> tables;
    const auto rows = rowsOf(fixture.write(&before, &after), tables);
    REQUIRE(tables == std::vector<std::string>{"step_after"});
    CHECK(rows.front().kind == RowChange::Insert);
    CHECK(rows.front().after ==
          std::vector<std::optional<Cell>>{Cell{std::int64_t{3}}, Cell{std::int64_t{5}}});
}

TEST_CASE("Changing one field of one list row writes that field of that row")
{
    Fixture fixture;
    auto before = test::RandomRecords(9, idsPerType).all();
    Closing closing = *before.closings.find(Id<Closing>{2});
    closing.events = {{*Moment::parse("2026-01-02"), {}, {}, "riveted", false},
                      {{}, *Moment::parse("2026-02-03"), {}, "a dent", false}};
    before.closings.put(closing);
    fixture.write(nullptr, &before);
    auto after = before;
    closing.events[1].reason = "a crack";
    after.closings.put(closing);
    std::vector<std::string> tables;
    const auto rows = rowsOf(fixture.write(&before, &after), tables);
    REQUIRE(tables == std::vector<std::string>{"closing_events"});
    CHECK(rows.front().kind == RowChange::Update);
    // Columns: closing_id, position, closed_on, opened_on, by, reason, approximate.
    CHECK(rows.front().key(1) == Cell{std::int64_t{1}});
    CHECK(rows.front().after[5] == Cell{std::string("a crack")});
    CHECK_FALSE(rows.front().after[2]);
    CHECK_FALSE(rows.front().after[6]);
}

TEST_CASE("A changeset that does not fit changes nothing and says which record was in the way")
{
    Fixture fixture;
    const auto first = test::RandomRecords(10, idsPerType).all();
    auto second = first;
    Person person = *first.people.find(Id<Person>{5});
    person.name = "Second";
    second.people.put(person);
    fixture.write(nullptr, &first);
    const auto changeset = fixture.write(&first, &second);
    auto third = second;
    person.name = "Third";
    third.people.put(person);
    fixture.write(&second, &third);
    const auto conflict = storage::apply(fixture.database, inverted(changeset)).conflict;
    REQUIRE(conflict);
    CHECK(conflict->record == RecordRef{RecordType::Person, 5});
    CHECK(fixture.reader.readAll() == third);
}

TEST_CASE("A value that no program of ours writes is named when it is read")
{
    Fixture fixture;
    const auto all = test::RandomRecords(11, idsPerType).all();
    fixture.write(nullptr, &all);
    const auto [statement, complaint] = GENERATE(table<std::string, std::string>({
        {R"(UPDATE "step" SET "done_on"='2026-02-30' WHERE "id"=7)",
         "step 7 has an impossible done_on"},
        {R"(UPDATE "component" SET "kind"='kite' WHERE "id"=7)",
         "component 7 has an impossible kind"},
        {R"(UPDATE "closing" SET "permanent"=2 WHERE "id"=7)",
         "closing 7 has an impossible permanent"},
        {R"(INSERT INTO "media_annotations" VALUES (7,99,'arrow','[0.1,',NULL))",
         "media 7 has an impossible points"},
        {R"(UPDATE "person" SET "id"=-4 WHERE "id"=7)", "person -4 has an impossible id"},
    }));
    fixture.database.run("PRAGMA foreign_keys=OFF");
    fixture.database.run(statement);
    CHECK_THROWS_WITH(fixture.reader.readAll(), Catch::Contains(complaint));
}

TEST_CASE("A text with bytes that are none is read with signs in their place")
{
    Fixture fixture;
    const auto all = test::RandomRecords(11, idsPerType).all();
    fixture.write(nullptr, &all);
    fixture.database.run(R"(UPDATE "person" SET "name"=CAST(x'4164FF6100' AS TEXT) WHERE "id"=7)");
    const Records records = fixture.reader.readAll();
    CHECK(records.find(Id<Person>{7})->name == "Ad\uFFFDa\uFFFD");
    CHECK(records.find(Id<Person>{8})->name == all.find(Id<Person>{8})->name);
}
