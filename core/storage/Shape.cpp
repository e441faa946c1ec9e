// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/Shape.h"

#include <SQLiteCpp/Statement.h>

#include <algorithm>
#include <cctype>
#include <fmt/format.h>
#include <iterator>
#include <vector>

namespace lastrivet::storage {

namespace {

bool isWordy(char c)
{
    return c == '_' || c == '"' || c == '\'' || std::isalnum(static_cast<unsigned char>(c)) != 0;
}

/// Statements without comments, and with blanks only between words: so they are the same for a
/// table that was made with a column and for one that got it later.
std::string normalised(const std::string &sql)
{
    std::string text;
    bool isQuoted = false;
    bool isParted = false;
    for (std::size_t i = 0; i < sql.size(); ++i) {
        isQuoted = isQuoted != (sql[i] == '\'');
        if (!isQuoted && sql.compare(i, 2, "--") == 0)
            i = std::min(sql.find('\n', i), sql.size() - 1);
        if (!isQuoted && std::isspace(static_cast<unsigned char>(sql[i])) != 0) {
            isParted = true;
            continue;
        }
        if (isParted && !text.empty() && isWordy(text.back()) && isWordy(sql[i]))
            text += ' ';
        isParted = false;
        text += sql[i];
    }
    return text;
}

std::vector<std::string> ownTables(const Database &database)
{
    std::vector<std::string> tables;
    // What full-text search and SQLite itself keep is not ours to compare, and neither are views.
    SQLite::Statement row(database.sql(), R"(SELECT "name" FROM pragma_table_list
        WHERE "schema"='main' AND "type" NOT IN ('shadow','view')
        AND "name" NOT LIKE 'sqlite\_%' ESCAPE '\')");
    while (row.executeStep())
        tables.push_back(row.getColumn(0).getString());
    return tables;
}

/// A line for each row of what SQLite tells about the table.
void addAnswers(Shape &shape, const Database &database, const std::string &table,
                std::string_view question)
{
    SQLite::Statement row(database.sql(), fmt::format("SELECT * FROM {}(?)", question));
    row.bind(1, table);
    while (row.executeStep()) {
        std::string line = fmt::format("{} {}:", question, table);
        for (int i = 0; i < row.getColumnCount(); ++i)
            line += fmt::format(" {}", row.getColumn(i).getString());
        shape.insert(std::move(line));
    }
}

void addStatements(Shape &shape, const Database &database, const std::vector<std::string> &tables)
{
    SQLite::Statement row(database.sql(),
                          R"(SELECT "type","name","tbl_name","sql" FROM sqlite_schema)");
    while (row.executeStep()) {
        const auto table = row.getColumn(2).getString();
        if (std::ranges::find(tables, table) == tables.end())
            continue;
        shape.insert(fmt::format("{} {}: {}", row.getColumn(0).getString(),
                                 row.getColumn(1).getString(),
                                 normalised(row.getColumn(3).getString())));
    }
}

} // namespace

Shape shapeOf(const Database &database)
{
    Shape shape;
    const auto tables = ownTables(database);
    for (const auto &table : tables) {
        for (const auto *question :
             {"pragma_table_xinfo", "pragma_foreign_key_list", "pragma_index_list"})
            addAnswers(shape, database, table, question);
    }
    addStatements(shape, database, tables);
    return shape;
}

std::optional<Message> differenceBetween(const Shape &has, const Shape &should)
{
    const auto only = [](const Shape &one, const Shape &other) {
        std::vector<std::string> lines;
        std::ranges::set_difference(one, other, std::back_inserter(lines));
        return lines;
    };
    if (const auto extra = only(has, should); !extra.empty())
        return Message{"it has “{0}”", {extra.front()}};
    if (const auto missing = only(should, has); !missing.empty())
        return Message{"it lacks “{0}”", {missing.front()}};
    return std::nullopt;
}

} // namespace lastrivet::storage
