// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/CopyReport.h"

#include "app/cli/PlainText.h"
#include "core/base/JsonWriter.h"

#include <fmt/ostream.h>

namespace lastrivet::cli {

namespace {

void writeNames(JsonWriter &json, std::string_view key, const std::vector<std::string> &names)
{
    json.key(key);
    json.beginArray();
    for (const std::string &name : names)
        json.value(name);
    json.endArray();
}

void writeJson(const backup::Report &report, std::ostream &out)
{
    JsonWriter json(out, JsonWriter::Layout::Indented);
    json.beginObject();
    json.member("place", report.place.string());
    json.member("files_copied", std::int64_t(report.files_copied));
    json.member("files_kept", std::int64_t(report.files_kept));
    json.member("bytes_copied", std::int64_t(report.bytes_copied));
    writeNames(json, "missing", report.missing);
    writeNames(json, "unreadable", report.unreadable);
    writeNames(json, "altered", report.altered);
    writeNames(json, "damaged", report.damaged);
    json.member("damaged_database", report.damaged_database);
    writeNames(json, "set_aside", report.set_aside);
    json.member("journal_hash", report.journal_hash);
    json.member("same_disk", report.is_same_disk);
    json.endObject();
}

void complainOf(const std::vector<std::string> &names, std::string_view what, Terminal &terminal)
{
    for (const std::string &name : names)
        terminal.complain(fmt::format("{}: {}", onOneLine(name), what));
}

} // namespace

void tell(const backup::Report &report, bool asJson, Terminal &terminal)
{
    complainOf(report.missing, "not there, so not copied.", terminal);
    complainOf(report.unreadable, "could not be read, so not copied.", terminal);
    complainOf(report.altered, "no longer what was taken in.", terminal);
    complainOf(report.damaged, "was damaged in the earlier backup.", terminal);
    if (!report.damaged_database.empty())
        terminal.complain(
            fmt::format("The database of the earlier backup was damaged; it is kept "
                        "as {}.",
                        onOneLine((report.place / report.damaged_database).string())));
    complainOf(report.set_aside, "lay in the damaged backup, and is kept under this name.",
               terminal);
    if (asJson) {
        writeJson(report, terminal.out());
        terminal.out() << '\n';
        return;
    }
    fmt::print(terminal.out(), "{}: {} copied and read back, {} there already.\n",
               onOneLine(report.place.string()), counted(std::int64_t(report.files_copied), "file"),
               report.files_kept);
}

} // namespace lastrivet::cli
