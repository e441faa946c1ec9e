// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv/CsvExport.h"

#include "core/exchange/DocumentWriter.h"
#include "core/exchange/WholeFile.h"
#include "core/records/Description.h"

#include <fmt/format.h>

#include <sstream>
#include <system_error>

namespace lastrivet::exchange {

namespace {

std::string inCell(std::string_view text)
{
    if (text.find_first_of(",\"\r\n") == std::string_view::npos)
        return std::string(text);
    std::string cell = "\"";
    for (const char c : text) {
        cell += c;
        if (c == '"')
            cell += c;
    }
    return cell + '"';
}

/// A text as it is, or with an apostrophe in front so that nothing runs it.
std::string harmless(std::string_view text)
{
    return looksLikeFormula(text) ? fmt::format("'{}", text) : std::string(text);
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

bool looksLikeFormula(std::string_view text)
{
    return !text.empty() &&
           std::string_view("=+-@\t\r").find(text.front()) != std::string_view::npos;
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
    std::filesystem::create_directories(folder, error);
    for (std::size_t i = 0; i < recordTypeCount; ++i) {
        const auto file = folder / fmt::format("{}.csv", plural(RecordType(i)));
        writeWholeFile(file,
                       [&](std::ostream &out) { writeCsv(records, RecordType(i), out); });
    }
}

} // namespace lastrivet::exchange
