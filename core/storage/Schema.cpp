// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/Schema.h"

#include "core/base/Error.h"
#include "core/base/WriteFailure.h"
#include "core/storage/SchemaCheck.h"
#include "core/storage/SchemaSteps.h"

#include <SQLiteCpp/Database.h>
#include <sqlite3.h>

#include <array>
#include <cerrno>
#include <optional>
#include <system_error>
#include <unistd.h>

namespace lastrivet::storage {

namespace {

// Places in the first page, from the published description of the SQLite file format, 1.3.
constexpr std::string_view magic{"SQLite format 3\0", 16};
constexpr std::size_t pageSizeAt = 16;
constexpr std::size_t changesAt = 24;
constexpr std::size_t pagesAt = 28;
constexpr std::size_t schemaAt = 60;
constexpr std::size_t applicationAt = 68;
constexpr std::size_t pagesValidForAt = 92;

using Header = std::array<unsigned char, 100>;

std::uint32_t number(const Header &header, std::size_t at, std::size_t bytes = 4)
{
    std::uint32_t value = 0;
    for (std::size_t i = 0; i < bytes; ++i)
        value = value << 8 | header[at + i];
    return value;
}

bool isNotEmpty(const std::filesystem::path &file)
{
    std::error_code none;
    const auto size = std::filesystem::file_size(file, none);
    return !none && size > 0;
}

/// Read through SQLite: by POSIX, closing a descriptor of our own would release the locks that
/// another connection of this program holds on the file.
std::optional<Header> findHeader(const std::filesystem::path &path)
{
    std::optional<SQLite::Database> opened;
    try {
        opened.emplace(path.string(), SQLite::OPEN_READONLY);
    } catch (const SQLite::Exception &) {
        return std::nullopt;
    }
    sqlite3_file *file = nullptr;
    Header header{};
    if (sqlite3_file_control(opened->getHandle(), "main", SQLITE_FCNTL_FILE_POINTER, &file) !=
            SQLITE_OK ||
        file->pMethods->xRead(file, header.data(), int(header.size()), 0) != SQLITE_OK ||
        std::string_view(reinterpret_cast<const char *>(header.data()), magic.size()) != magic)
        return std::nullopt;
    return header;
}

[[noreturn]] void refuseUnreadable(const std::filesystem::path &place, const std::error_code &why)
{
    throw NotReadHere(
        Message{"{0} cannot be read: {1}.", {place.string(), whyNotRead(why.value())}}, place);
}

/// A file that may not be read, or that lost its content, may well be a project: it is not told as
/// a file of something else.
Header readHeader(const std::filesystem::path &file)
{
    const auto header = findHeader(file);
    if (header)
        return *header;
    if (::access(file.c_str(), R_OK) != 0)
        refuseUnreadable(file, {errno, std::generic_category()});
    if (!isNotEmpty(file))
        throw UnreadableInput(
            Message{"{0} is not a Lastrivet project: the file is empty. If it was "
                    "one, restore a backup.",
                    {file.string()}},
            file);
    throw UnreadableInput(Message{"{0} is not a Lastrivet project.", {file.string()}}, file);
}

[[noreturn]] void refuseNewer(std::int64_t schema)
{
    throw NotReadHere(Message{"The project was written by a newer Lastrivet (schema {0}; this "
                              "one knows {1}). It was left as it is.",
                              {std::to_string(schema), std::to_string(newestSchema())}});
}

} // namespace

int schemaOf(const Database &database)
{
    return int(database.number("PRAGMA user_version"));
}

int newestSchema()
{
    return schemaSteps().back().number;
}

bool isProjectDatabase(const std::filesystem::path &file)
{
    const auto header = findHeader(file);
    return header && number(*header, applicationAt) == std::uint32_t(applicationId);
}

void requireProject(const std::filesystem::path &folder, const std::filesystem::path &database)
{
    std::error_code error;
    const auto status = std::filesystem::status(database, error);
    if (!std::filesystem::status_known(status))
        refuseUnreadable(folder, error);
    if (!std::filesystem::is_regular_file(status)) {
        throw NotReadHere(
            Message{"{0} is not a Lastrivet project: it has no records.db.", {folder.string()}},
            folder);
    }
    const auto header = readHeader(database);
    if (number(header, applicationAt) != std::uint32_t(applicationId))
        throw NotReadHere(Message{"{0} is not a Lastrivet project.", {database.string()}},
                          database);
    if (number(header, schemaAt) > std::uint32_t(newestSchema()))
        refuseNewer(number(header, schemaAt));
}

void requireWholeFile(const std::filesystem::path &database)
{
    const auto header = readHeader(database);
    const auto pageSize = number(header, pageSizeAt, 2);
    const auto bytes = std::uintmax_t{number(header, pagesAt)} * (pageSize == 1 ? 65536 : pageSize);
    const auto there = std::filesystem::file_size(database);
    // While changes are in a log beside the file, its own length means nothing.
    const bool isCounted = number(header, changesAt) == number(header, pagesValidForAt) &&
                           !isNotEmpty(database.string() + "-wal") &&
                           !isNotEmpty(database.string() + "-journal");
    if (isCounted && there < bytes) {
        throw UnreadableInput(
            Message{"The database is cut short: {0} holds {1} of {2} bytes. Restore a backup.",
                    {database.string(), std::to_string(there), std::to_string(bytes)}},
            database);
    }
}

void requireReadableSchema(Database &database)
{
    const auto schema = schemaOf(database);
    if (schema > newestSchema()) {
        database.closeWithoutCheckpoint();
        refuseNewer(schema);
    }
    if (schema < 1)
        throw UnreadableInput("The project was never finished being made; make it anew.");
    requireOwnTables(database);
}

} // namespace lastrivet::storage
