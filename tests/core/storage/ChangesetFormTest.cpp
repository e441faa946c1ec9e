// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/ChangesetForm.h"

#include "core/base/Error.h"
#include "core/storage/Changeset.h"
#include "core/storage/JournalChanges.h"
#include "core/storage/Migration.h"
#include "core/storage/RecordWriter.h"
#include "core/storage/Schema.h"
#include "core/storage/Transaction.h"
#include "tests/support/RandomRecords.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::storage;

namespace {

/// Everything of every kind that SQLite writes: made, changed and removed.
std::vector<Blob> realChangesets()
{
    constexpr std::int64_t ids = 5;
    const Records one = test::RandomRecords(3, ids).all();
    const Records other = test::RandomRecords(4, ids).all();
    Database database;
    runSteps(database);
    RecordWriter writer(database.sql());
    std::vector<Blob> changesets;
    const auto change = [&](const Records *before, const Records *after) {
        Transaction transaction(database, ReferenceCheck::AtTheEnd);
        ChangeRecording recording(database);
        for (std::size_t i = std::size_t(RecordType::Person); i < recordTypeCount; ++i) {
            for (std::int64_t id = 1; id <= ids; ++id)
                writer.write(RecordType(i), before ? before->find(RecordType(i), id) : nullptr,
                             after ? after->find(RecordType(i), id) : nullptr);
        }
        changesets.push_back(recording.changeset());
        transaction.commit();
    };
    change(nullptr, &one);
    change(&one, &other);
    change(&other, nullptr);
    return changesets;
}

} // namespace

TEST_CASE("What SQLite writes as changes is taken for changes, and no beginning of it is")
{
    CHECK(isWellFormedChangeset({}));
    for (const Blob &changeset : realChangesets()) {
        REQUIRE(changeset.size() > 1000);
        CHECK(isWellFormedChangeset(changeset));
        CHECK_FALSE(isWellFormedChangeset(std::span(changeset).first(changeset.size() - 1)));
        CHECK_FALSE(isWellFormedChangeset(std::span(changeset).first(3)));
        CHECK_FALSE(isWellFormedChangeset(std::span(changeset).subspan(1)));
    }
}

TEST_CASE("A table whose name has no end is refused, and not looked at for ever")
{
    const Blob endless{'T', 4};
    const Blob nameless{'T', 2, 1, 0, 'm', 'e', 'd', 'i', 'a'};
    Database database;
    runSteps(database);
    for (const Blob &bytes : {endless, nameless}) {
        CHECK_FALSE(isWellFormedChangeset(bytes));
        CHECK_THROWS_AS(touchedBy(bytes), UnreadableInput);
        CHECK_THROWS_AS(inverted(bytes), UnreadableInput);
        CHECK_THROWS_AS(storage::apply(database, bytes), UnreadableInput);
    }
}

TEST_CASE("A row that was made or removed and lacks a value is refused, and not applied in part")
{
    Database database;
    runSteps(database);
    for (const std::uint8_t operation : {std::uint8_t(18), std::uint8_t(9)}) {
        const Blob lacking{'T', 2, 1, 0, 'p', 'e', 'r', 's', 'o', 'n', 0, operation,
                           0,   1, 0, 0, 0,   0,   0,   0,   0,   7,   0};
        CHECK_FALSE(isWellFormedChangeset(lacking));
        CHECK_THROWS_AS(storage::apply(database, lacking), UnreadableInput);
        CHECK_THROWS_AS(inverted(lacking), UnreadableInput);
    }
    CHECK(database.number(R"(SELECT count(*) FROM "person")") == 0);
}

TEST_CASE("A change of a table that no change is ever of is refused")
{
    // "local_state" gets the key k with the value v.
    const Blob foreign{'T', 2,   1,   0, 'l', 'o', 'c', 'a', 'l', '_', 's', 't',
                       'a', 't', 'e', 0, 18,  0,   3,   1,   'k', 3,   1,   'v'};
    Database database;
    runSteps(database);
    CHECK(isWellFormedChangeset(foreign));
    CHECK_THROWS_AS(storage::apply(database, foreign), UnreadableInput);
    CHECK(database.number(R"(SELECT count(*) FROM "local_state")") == 0);
}

TEST_CASE("A changed row without its whole key is refused")
{
    // A table with two columns in its key, told with one, and with the second left out.
    const Blob oneColumn{'T', 1, 1,  'p', 'e', 'r', 's', 'o', 'n', '_', 'r', 'o', 'l', 'e',
                         's', 0, 18, 0,   1,   0,   0,   0,   0,   0,   0,   0,   7};
    const Blob noItem{'T', 2, 1,  1, 'p', 'e', 'r', 's', 'o', 'n', '_', 'r', 'o', 'l', 'e',
                      's', 0, 18, 0, 1,   0,   0,   0,   0,   0,   0,   0,   7,   5};
    for (const Blob &bytes : {oneColumn, noItem}) {
        CHECK(isWellFormedChangeset(bytes));
        CHECK_THROWS_AS(journalChanges(bytes), UnreadableInput);
    }
}
