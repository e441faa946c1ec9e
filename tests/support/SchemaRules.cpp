// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/SchemaRules.h"

#include "core/storage/Database.h"
#include "core/storage/Migration.h"

#include <SQLiteCpp/Statement.h>

#include <fmt/format.h>
#include <functional>
#include <map>
#include <regex>
#include <sqlite3.h>

namespace lastrivet::test {

namespace {

using storage::Database;
using storage::SchemaStep;

/// A column's name, type, refusal of null, default and place in the key; the first thing of each
/// is its name.
using Columns = std::vector<std::vector<std::string>>;

std::map<std::string, Columns> tablesIn(const Database &database)
{
    std::map<std::string, Columns> tables;
    SQLite::Statement row(database.sql(), R"(
        SELECT t."name", c."name", c."type", c."notnull", c."dflt_value" IS NOT NULL, c."pk",
               c."dflt_value", c."hidden"
        FROM pragma_table_list t, pragma_table_xinfo(t."name") c
        WHERE t."type"='table' AND t."name" NOT IN ('search','local_state')
              AND t."name" NOT LIKE 'sqlite\_%' ESCAPE '\' ORDER BY t."name", c."cid")");
    while (row.executeStep()) {
        auto &columns = tables[row.getColumn(0).getString()].emplace_back();
        for (int i = 1; i < row.getColumnCount(); ++i)
            columns.push_back(row.getColumn(i).getString());
    }
    return tables;
}

std::vector<std::string> statementsOf(const SchemaStep &step)
{
    const std::regex comment("--[^\n]*");
    const std::regex blanks("\\s+");
    const std::string text = std::regex_replace(std::string(step.statements), comment, "");
    std::vector<std::string> statements;
    std::string statement;
    for (const char c : text) {
        statement += c;
        if (c == ';' && sqlite3_complete(statement.c_str())) {
            statement = std::regex_replace(statement, blanks, " ");
            statements.push_back(statement.substr(statement.find_first_not_of(' ')));
            statement.clear();
        }
    }
    return statements;
}

bool mayBe(const std::string &statement)
{
    static const std::regex derived(
        R"re((DROP|CREATE|ALTER|DELETE|INSERT|UPDATE) [^(]*"(search|local_state)".*)re");
    static const std::regex making(
        R"re((CREATE (TABLE|INDEX|TRIGGER)|ALTER TABLE "\w+" ADD COLUMN|UPDATE "\w+" SET) .*)re");
    return std::regex_match(statement, derived) || std::regex_match(statement, making);
}

void compare(const std::string &table, const Columns &before, const Columns &after,
             const std::function<void(std::string)> &tell)
{
    if (after.size() < before.size() || !std::equal(before.begin(), before.end(), after.begin())) {
        tell(fmt::format("changes columns that {} had", table));
        return;
    }
    for (std::size_t i = before.size(); i < after.size(); ++i) {
        const auto &column = after[i];
        const bool isOptional = column[2] == "0" || column[3] == "1";
        if (!isOptional || column[4] != "0")
            tell(fmt::format("adds {} to {}, which may be neither null nor left out", column[0],
                             table));
    }
}

} // namespace

std::vector<std::string> breaches(std::span<const SchemaStep> steps)
{
    std::vector<std::string> found;
    Database database;
    storage::runSteps(database, steps.first(1));
    for (std::size_t i = 1; i < steps.size(); ++i) {
        const auto tell = [&](const std::string &what) {
            found.push_back(fmt::format("Step {} {}.", steps[i].number, what));
        };
        for (const auto &statement : statementsOf(steps[i])) {
            if (!mayBe(statement))
                tell(fmt::format(
                    "says “{}”, but may only add: tables, indexes, triggers and columns, "
                    "and update; names stand in double quotes",
                    statement));
        }
        const auto before = tablesIn(database);
        database.run(steps[i].statements);
        const auto after = tablesIn(database);
        for (const auto &[table, columns] : before) {
            const auto now = after.find(table);
            if (now == after.end())
                tell(fmt::format("takes {} away", table));
            else
                compare(table, columns, now->second, tell);
        }
    }
    return found;
}

} // namespace lastrivet::test
