// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/SchemaCheck.h"

#include "core/base/Error.h"
#include "core/base/Tongue.h"
#include "core/storage/Migration.h"
#include "core/storage/Schema.h"
#include "core/storage/Shape.h"

#include <SQLiteCpp/Statement.h>

#include <algorithm>
#include <map>
#include <mutex>
#include <set>

namespace lastrivet::storage {

namespace {

/// What acts unasked while rows are written. Not by table: a planted one may name a wrong one.
std::set<std::string> actorsOf(const Database &database)
{
    std::set<std::string> actors;
    // Indexes without a statement are SQLite's own, and part of their table.
    SQLite::Statement row(database.sql(), R"(SELECT "type" || ' ' || "name" FROM sqlite_schema
        WHERE "type" IN ('trigger','index') AND "sql" IS NOT NULL)");
    while (row.executeStep())
        actors.insert(row.getColumn(0).getString());
    return actors;
}

bool isOfActor(const std::string &line)
{
    return line.starts_with("trigger ") || line.starts_with("index ") ||
           line.starts_with("pragma_index_list ");
}

Database madeAt(int schema)
{
    const auto steps = schemaSteps();
    Database made;
    runSteps(made, steps.first(std::min(std::size_t(schema), steps.size())));
    return made;
}

/// What the database's tables, triggers and indexes were made with, word for word.
std::set<std::string> statementsOf(const Database &database)
{
    std::set<std::string> statements;
    SQLite::Statement row(
        database.sql(),
        R"(SELECT "type" || ' ' || "name" || ' ' || "tbl_name" || ' ' || ifnull("sql",'')
           FROM sqlite_schema)");
    while (row.executeStep())
        statements.insert(row.getColumn(0).getString());
    return statements;
}

/// Made once for each step, because opening a project compares more than once.
const std::set<std::string> &statementsMadeAt(int schema)
{
    static std::mutex mutex;
    static std::map<int, std::set<std::string>> known;
    const std::scoped_lock lock(mutex);
    const auto [made, isNew] = known.try_emplace(schema);
    if (isNew)
        made->second = statementsOf(madeAt(schema));
    return made->second;
}

/// True for nearly every project, and quickly found out: what SQLite makes of the same words is the
/// same. One that a later step altered has other words for the same tables.
bool isWordForWordOwn(const Database &database)
{
    return statementsOf(database) == statementsMadeAt(schemaOf(database));
}

[[noreturn]] void refuse(const Message &what)
{
    throw UnreadableInput(Message{
        "The database was altered by another program: {0}. Restore a backup.", {nested(what)}});
}

/// Further lines are those of further tables; a table that was altered lacks its own.
template <class Concerns>
void requireAll(const Shape &should, const Shape &has, const Concerns &concerns)
{
    for (const std::string &line : should) {
        if (concerns(line) && !has.contains(line))
            refuse({"it lacks “{0}”", {line}});
    }
}

} // namespace

void requireOwnTables(const Database &database)
{
    if (isWordForWordOwn(database))
        return;
    requireAll(shapeOf(madeAt(schemaOf(database))), shapeOf(database),
               [](const std::string &line) { return !isOfActor(line); });
}

void requireOwnTriggers(const Database &database)
{
    if (isWordForWordOwn(database))
        return;
    const auto made = madeAt(schemaOf(database));
    requireAll(shapeOf(made), shapeOf(database), isOfActor);
    const auto own = actorsOf(made);
    for (const std::string &actor : actorsOf(database)) {
        if (!own.contains(actor))
            refuse({"the {0} is not Lastrivet's, and could change or hide records; until it is "
                    "removed the project can only be read",
                    {actor}});
    }
}

} // namespace lastrivet::storage
