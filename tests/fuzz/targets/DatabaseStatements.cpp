// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/fuzz/HostileProject.h"
#include "tests/fuzz/Targets.h"

#include <SQLiteCpp/Database.h>
#include <sqlite3.h>

#include <algorithm>
#include <array>
#include <string>

namespace lastrivet::fuzz {

namespace {

/// Lets the stranger do what changes the file itself, and nothing outside it.
int allowed(void *, int action, const char *name, const char *, const char *, const char *)
{
    static constexpr std::array<std::string_view, 6> pragmas{
        "application_id", "foreign_keys",   "legacy_alter_table",
        "user_version",   "schema_version", "writable_schema"};
    if (action == SQLITE_ATTACH || action == SQLITE_DETACH)
        return SQLITE_DENY;
    const bool isKept =
        action != SQLITE_PRAGMA || std::find(pragmas.begin(), pragmas.end(), name) != pragmas.end();
    return isKept ? SQLITE_OK : SQLITE_DENY;
}

void run(const std::filesystem::path &file, const std::string &statements)
{
    constexpr int mostBytes = 100'000;
    constexpr int mostSteps = 20'000;
    SQLite::Database stranger(file.string(), SQLite::OPEN_READWRITE);
    sqlite3 *handle = stranger.getHandle();
    sqlite3_limit(handle, SQLITE_LIMIT_LENGTH, mostBytes);
    sqlite3_limit(handle, SQLITE_LIMIT_EXPR_DEPTH, 50);
    sqlite3_progress_handler(
        handle, mostSteps, [](void *) { return 1; }, nullptr);
    sqlite3_set_authorizer(handle, allowed, nullptr);
    sqlite3_exec(handle, statements.c_str(), nullptr, nullptr, nullptr);
}

} // namespace

/// The input is what a stranger does to the database with a SQLite program, without protections.
void database_statements(Input input)
{
    const HostileProject project;
    run(project.database(), std::string(textOf(input)));
    project.use();
}

} // namespace lastrivet::fuzz
