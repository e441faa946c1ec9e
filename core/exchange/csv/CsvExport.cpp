// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv/CsvExport.h"

#include "core/base/Error.h"
#include "core/exchange/DocumentWriter.h"
#include "core/exchange/WholeFile.h"
#include "core/records/Description.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <sstream>
#include <system_error>
#include <vector>

namespace lastrivet::exchange {

namespace {

/// Semicolon and tab part cells nowhere here, but in spreadsheets of other countries: what stands
/// behind one would begin a cell of its own.
std::string inCell(std::string_view text)
{
    if (text.find_first_of(",;\"\t\r\n") == std::string_view::npos)
        return std::string(text);
    std::string cell = "\"";
    for (const char c : text) {
        cell += c;
        if (c == '"')
            cell += c;
    }
    return cell + '"';
}

/// What a spreadsheet takes for a formula; the last four are the wide forms of the first that East
/// Asian keyboards type (U+FF1D, U+FF0B, U+FF0D, U+FF20), which some programs read as them.
bool looksLikeFormula(std::string_view text)
{
    static constexpr std::array<std::string_view, 10> beginnings{
        "=", "+", "-", "@", "\t", "\r", "\uFF1D", "\uFF0B", "\uFF0D", "\uFF20"};
    return std::any_of(beginnings.begin(), beginnings.end(),
                       [text](std::string_view beginning) { return text.starts_with(beginning); });
}

/// A text as it is, or with an apostrophe in front so that nothing runs it.
std::string harmless(std::string_view text)
{
    return needsApostrophe(text) ? fmt::format("'{}", text) : std::string(text);
}

std::string scalarCell(const Scalar &value)
{
    if (isNull(value))
        return {};
    if (const auto *text = std::get_if<std::string_view>(&value))
        return harmless(*text);
    if (const auto *moment = std::get_if<Moment>(&value))
        return moment->text();
    std::ostringstream number;
    {
        JsonWriter json{number};
        writeScalar(json, value);
    }
    return number.str();
}

std::string collectionCell(const Field &field, const void *owner)
{
    std::ostringstream list;
    if (field.size(owner) > 0) {
        JsonWriter json{list};
        writeCollection(json, field, owner);
    }
    return list.str();
}

void writeRow(std::span<const Field> fields, const void *owner, std::ostream &out)
{
    writeCsvFields(fields, owner, out);
    out << "\r\n";
}

} // namespace

std::string csvCell(std::string_view text)
{
    return inCell(harmless(text));
}

void writeCsvFields(std::span<const Field> fields, const void *record, std::ostream &out)
{
    for (const Field &field : fields) {
        if (&field != &fields.front())
            out << ',';
        out << inCell(field.isCollection() ? collectionCell(field, record)
                                           : scalarCell(field.value(record)));
    }
}

bool needsApostrophe(std::string_view text)
{
    text.remove_prefix(std::min(text.find_first_not_of('\''), text.size()));
    return looksLikeFormula(text);
}

std::string_view withoutApostrophe(std::string_view cell)
{
    const bool isOurs = cell.starts_with('\'') && needsApostrophe(cell);
    return isOurs ? cell.substr(1) : cell;
}

void writeCsv(const Records &records, RecordType type, std::ostream &out)
{
    const auto &description = describe(type);
    for (const Field &field : description.fields)
        out << (&field == &description.fields.front() ? "" : ",") << field.name;
    out << "\r\n";
    if (type == RecordType::Project) {
        writeRow(description.fields, &records.project, out);
        return;
    }
    const AnyTable &table = records.table(type);
    for (const void *row = table.nextAny(0); row; row = table.nextAny(idOf(description, row)))
        writeRow(description.fields, row, out);
}

void writeCsvFolder(const Records &records, const std::filesystem::path &folder)
{
    std::error_code error;
    const bool isNew = std::filesystem::create_directories(folder, error);
    std::vector<FileToWrite> files;
    for (std::size_t i = 0; i < recordTypeCount; ++i)
        files.push_back(
            {folder / fmt::format("{}.csv", plural(RecordType(i))),
             [&records, i](std::ostream &out) { writeCsv(records, RecordType(i), out); }});
    try {
        writeWholeFiles(files);
    } catch (const NotSaved &) {
        if (isNew)
            std::filesystem::remove(folder, error);
        throw;
    }
}

} // namespace lastrivet::exchange
