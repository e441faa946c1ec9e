// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/ReadMe.h"

#include "core/storage/RecordTable.h"

#include <fmt/format.h>

#include <fstream>
#include <system_error>

namespace lastrivet::storage {

namespace fs = std::filesystem;

namespace {

constexpr std::string_view photosFile = "photos-of-part.sql";

constexpr std::string_view page =
    R"(This folder holds the building records of an aircraft: {}.
Without Lastrivet, which wrote them, sqlite3 and sha256sum are enough to read them.

records.db         all records, an SQLite database; each table is named after what it holds, and
                   "journal" says what was changed, when and by whom. Earlier copies: backups.
photos, documents  ordinary files; the table "media" says what each one shows.
logbook.pdf, lists the builder's log, and every table as CSV, when they were last written.

In a terminal in this folder: which parts there are, the photographs of one of them with all that is
in it, the hours of a year, and which files are no longer what was taken in (none when it is silent):

  sqlite3 records.db "SELECT code, name FROM component"
  sqlite3 records.db ".parameter set :part 'LW'" ".read photos-of-part.sql"
  sqlite3 records.db "SELECT sum(minutes)/60.0 FROM work_session
      WHERE began LIKE '2025%' AND withdrawn_on IS NULL"
  sqlite3 -separator '  ' records.db "SELECT sha256, file FROM media
      WHERE sha256 IS NOT NULL AND withdrawn_on IS NULL" | sha256sum --quiet -c

Keep the folder together: copy all of it, and only while no program has it open.
)";

constexpr std::string_view photosQuery =
    R"(-- The photographs of a part and of all parts in it:
--   sqlite3 records.db ".parameter set :part 'LW'" ".read photos-of-part.sql"
WITH RECURSIVE
inside(part) AS (
  SELECT id FROM component WHERE (code = :part OR name = :part) AND withdrawn_on IS NULL
  UNION SELECT id FROM component JOIN inside ON parent_id = part WHERE withdrawn_on IS NULL),
about(subject, id, part, gone) AS (
  SELECT 'component', id, id, withdrawn_on FROM component
{})
SELECT DISTINCT file FROM media
JOIN media_links ON media_id = media.id
JOIN about ON about.subject = media_links.subject AND about.id = media_links.id
JOIN inside ON inside.part = about.part
WHERE media.kind = 'photo' AND media.withdrawn_on IS NULL AND gone IS NULL ORDER BY file;
)";

bool hasColumn(const RecordTable &table, std::string_view name)
{
    return columnOf(table, name) < table.columns().size();
}

/// How the records of a table lead to parts, as a branch of the query; empty when they do not.
std::string branchOf(const RecordTable &table)
{
    const RecordTable &record = tablesOf(table.type()).front();
    const auto gone = hasColumn(record, "withdrawn_on") ? "withdrawn_on" : "NULL";
    if (!table.collection() && hasColumn(table, "component_id"))
        return fmt::format("  UNION ALL SELECT '{0}', id, component_id, {1} FROM {0}", table.name(),
                           gone);
    if (table.collection() && table.collection()->name == "component_ids")
        return fmt::format(
            "  UNION ALL SELECT '{0}', id, item, {1} FROM {0} JOIN {2} ON {0}_id = id",
            record.name(), gone, table.name());
    return {};
}

void write(const fs::path &file, const std::string &text)
{
    const fs::path unfinished = file.string() + ".new";
    // In a folder from a stranger it may be a link, through which another file would be
    // overwritten.
    fs::remove(unfinished);
    try {
        {
            std::ofstream stream(unfinished, std::ios::binary | std::ios::trunc);
            stream << text;
            if (!stream.flush())
                throw NotSaved(Message{"{0} could not be written.", {file.string()}});
        }
        syncFile(unfinished);
        fs::rename(unfinished, file);
    } catch (...) {
        // Whoever made the folder could not take it away again.
        std::error_code ignored;
        fs::remove(unfinished, ignored);
        throw;
    }
}

} // namespace

std::string readMeText(std::string_view projectName)
{
    return fmt::format(fmt::runtime(page), projectName);
}

std::string photosOfPartText()
{
    std::string branches;
    for (const RecordTable &table : recordTables()) {
        const std::string branch = branchOf(table);
        if (!branch.empty())
            branches += (branches.empty() ? "" : "\n") + branch;
    }
    return fmt::format(fmt::runtime(photosQuery), branches);
}

void writeReadMe(const ProjectFolder &folder, std::string_view projectName)
{
    withFaults([&] {
        write(folder.readMe(), readMeText(projectName));
        write(folder.root() / photosFile, photosOfPartText());
        syncFolder(folder.root());
    });
}

} // namespace lastrivet::storage
