// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/EarlierProject.h"

#include "core/storage/Changeset.h"
#include "core/storage/Journal.h"
#include "core/storage/Migration.h"
#include "core/storage/Schema.h"
#include "core/storage/Transaction.h"

#include <SQLiteCpp/Database.h>

namespace lastrivet::test {

namespace {

constexpr std::string_view column = ",\n    \"withdrawn_why\" TEXT";

std::string withoutColumn(std::string statements)
{
    const auto table = statements.find("CREATE TABLE \"component\"");
    return statements.erase(statements.find(column, table), column.size());
}

std::chrono::sys_time<std::chrono::milliseconds> at(std::int64_t now)
{
    return std::chrono::sys_time<std::chrono::milliseconds>(std::chrono::milliseconds(now));
}

} // namespace

EarlierProject::EarlierProject()
    : m_first(withoutColumn(std::string(storage::schemaSteps().front().statements)))
{
    m_folder.make("Old");
    auto steps = stepsWith();
    steps.pop_back();
    auto made = storage::Database::create(m_folder.database());
    storage::runSteps(made, steps);
    made.use(storage::Database::Safety::WriteAhead);
    change("Project begun",
           R"(INSERT INTO "project" ("id","name","profile","time_zone","units")
              VALUES (1,'Old','plain','UTC','metric'))",
           ChangeKind::Migration);
}

storage::Database EarlierProject::open() const
{
    return {m_folder.database(), storage::Database::Access::ReadWrite,
            storage::Database::Safety::WriteAhead};
}

void EarlierProject::change(const std::string &label, const std::string &statements,
                            ChangeKind kind)
{
    auto database = open();
    storage::Transaction transaction(database);
    storage::ChangeRecording recording(database);
    database.run(statements);
    storage::NewChange made{kind, label};
    made.changeset = recording.changeset();
    storage::Journal(database).append(made, 0);
    transaction.commit();
}

void EarlierProject::tamper(const std::string &statements)
{
    SQLite::Database(m_folder.database().string(), SQLite::OPEN_READWRITE).exec(statements);
}

int EarlierProject::lastSchema()
{
    return storage::newestSchema() + 1;
}

std::vector<storage::SchemaStep> EarlierProject::stepsWith(const std::string &more)
{
    m_last = R"(ALTER TABLE "component" ADD COLUMN "withdrawn_why" TEXT;)" + more;
    const auto known = storage::schemaSteps();
    std::vector<storage::SchemaStep> steps(known.begin(), known.end());
    steps.front().statements = m_first;
    steps.push_back({lastSchema(), m_last});
    return steps;
}

void EarlierProject::migrate(const std::string &more, std::int64_t now)
{
    auto database = open();
    const auto steps = stepsWith(more);
    storage::migrate(database, m_folder, at(now), steps);
    database.run("PRAGMA user_version=" + std::to_string(storage::newestSchema()));
}

} // namespace lastrivet::test
