// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/Schema.h"
#include "core/storage/Migration.h"
#include "core/storage/RecordTable.h"

#include <SQLiteCpp/Statement.h>

#include <catch2/catch.hpp>
#include <fmt/format.h>

#include <set>

using namespace lastrivet;
using namespace lastrivet::storage;

namespace {

Database fresh()
{
    Database database;
    runSteps(database);
    return database;
}

/// Name, type, whether null is refused, place in the key.
std::string columnText(std::string_view name, std::string_view type, bool refusesNull,
                       std::size_t key)
{
    return fmt::format("{} {}{}{}", name, type, refusesNull ? " NOT NULL" : "",
                       key ? fmt::format(" key {}", key) : "");
}

/// What SQLite says of a table's columns.
std::vector<std::string> columnsOf(const Database &database, const std::string &table)
{
    std::vector<std::string> columns;
    SQLite::Statement row(database.sql(), "SELECT * FROM pragma_table_info(?)");
    row.bind(1, table);
    while (row.executeStep()) {
        const std::string type = row.getColumn("type").getString();
        const auto key = std::size_t(row.getColumn("pk").getInt());
        columns.push_back(
            columnText(row.getColumn("name").getString(), type,
                       row.getColumn("notnull").getInt() || (key && type == "INTEGER"), key));
    }
    return columns;
}

std::string_view typeName(const Field *field)
{
    if (!field)
        return "INTEGER";
    switch (field->type) {
    case FieldType::Id:
    case FieldType::Ref:
    case FieldType::Refs:
    case FieldType::Int:
    case FieldType::Bool:
        return "INTEGER";
    case FieldType::Real:
        return "REAL";
    default:
        return "TEXT";
    }
}

bool refusesNull(const RecordTable &table, const Field *field)
{
    if (!field || field == table.collection() || field->isCollection() || field->required)
        return true;
    const void *defaults =
        table.collection() ? table.collection()->rows->defaults : table.record().defaults;
    return !isNull(field->value(defaults));
}

std::vector<std::string> described(const RecordTable &table)
{
    std::vector<std::string> columns;
    for (const auto &column : table.columns()) {
        const auto place = columns.size() < table.keyColumns() ? columns.size() + 1 : 0;
        columns.push_back(columnText(column.name, typeName(column.field),
                                     refusesNull(table, column.field), place));
    }
    return columns;
}

std::multiset<std::string> referencesIn(const Database &database, const std::string &table)
{
    std::multiset<std::string> references;
    SQLite::Statement row(database.sql(),
                          R"(SELECT "from","table","on_update","on_delete"
                             FROM pragma_foreign_key_list(?))");
    row.bind(1, table);
    while (row.executeStep()) {
        references.insert(fmt::format("{} {} {} {}", row.getColumn(0).getString(),
                                      row.getColumn(1).getString(), row.getColumn(2).getString(),
                                      row.getColumn(3).getString()));
    }
    return references;
}

std::multiset<std::string> describedReferences(const RecordTable &table)
{
    std::multiset<std::string> references;
    const auto add = [&](std::string_view column, std::string_view target) {
        references.insert(fmt::format("{} {} NO ACTION NO ACTION", column, target));
    };
    if (table.collection())
        add(table.columns().front().name, table.record().name());
    for (const auto &column : table.columns()) {
        const auto *field = column.field;
        if (field && field->target)
            add(column.name, word(*field->target));
    }
    return references;
}

} // namespace

TEST_CASE("A new database has a strict table for every record, set and list, as described")
{
    const auto database = fresh();
    for (const auto &table : recordTables()) {
        INFO(table.name() << ", first the steps, then the fields");
        CHECK(columnsOf(database, table.name()) == described(table));
        CHECK(referencesIn(database, table.name()) == describedReferences(table));
        SQLite::Statement row(database.sql(),
                              R"(SELECT "wr","strict" FROM pragma_table_list WHERE "name"=?)");
        row.bind(1, table.name());
        REQUIRE(row.executeStep());
        CHECK(row.getColumn(0).getInt() == (table.collection() != nullptr));
        CHECK(row.getColumn(1).getInt() == 1);
    }
}

TEST_CASE("Every reference waits for the end of the transaction")
{
    const auto database = fresh();
    const auto count = [&](const std::string &words) {
        return database.number(
            fmt::format(R"(SELECT sum((length("sql") - length(replace("sql", '{0}', '')))
                           / length('{0}')) FROM sqlite_schema)",
                        words));
    };
    CHECK(count("REFERENCES") > 80);
    CHECK(count("REFERENCES") == count("DEFERRABLE INITIALLY DEFERRED"));
}

TEST_CASE("Schema steps number 1, 2, 3 and so on")
{
    int expected = 0;
    for (const auto &step : schemaSteps())
        CHECK(step.number == ++expected);
    CHECK(newestSchema() == expected);
}

TEST_CASE("Every field was added by a step that there is")
{
    for (const auto &table : recordTables()) {
        for (const auto &column : table.columns()) {
            if (column.field) {
                INFO(table.name() << "." << column.name);
                CHECK(column.field->schema >= 1);
                CHECK(column.field->schema <= newestSchema());
            }
        }
    }
}

TEST_CASE("A database that goes through the steps one by one equals a new one")
{
    const SchemaStep steps[] = {
        {1, R"(CREATE TABLE "shelf" ("id" INTEGER PRIMARY KEY) STRICT;)"},
        {2, R"(ALTER TABLE "shelf" ADD COLUMN "name" TEXT;)"},
    };
    const auto schema = [](const Database &database) {
        return database.text("SELECT group_concat(\"sql\") FROM sqlite_schema");
    };
    Database stepwise;
    runSteps(stepwise, std::span(steps).first(1));
    REQUIRE(schemaOf(stepwise) == 1);
    stepwise.run(R"(INSERT INTO "shelf" VALUES (4))");
    runSteps(stepwise, steps);
    Database atOnce;
    runSteps(atOnce, steps);
    CHECK(schemaOf(stepwise) == 2);
    CHECK(schema(stepwise) == schema(atOnce));
    CHECK(stepwise.number(R"(SELECT "id" FROM "shelf" WHERE "name" IS NULL)") == 4);
}

TEST_CASE("A step that fails leaves the database at the step before")
{
    const SchemaStep steps[] = {
        {1, R"(CREATE TABLE "shelf" ("id" INTEGER PRIMARY KEY) STRICT;)"},
        {2,
         R"(CREATE TABLE "bin" ("id" INTEGER PRIMARY KEY) STRICT; CREATE TABLE "bin" (nonsense);)"},
    };
    Database database;
    CHECK_THROWS(runSteps(database, steps));
    CHECK(schemaOf(database) == 1);
    CHECK(database.number("SELECT count(*) FROM sqlite_schema") == 1);
}
