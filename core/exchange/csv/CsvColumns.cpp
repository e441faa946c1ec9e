// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv/CsvColumns.h"

#include "core/records/Description.h"

#include <algorithm>

namespace lastrivet::exchange {

namespace {

std::string asFieldName(std::string_view header)
{
    const auto first = header.find_first_not_of(" \t");
    const auto last = header.find_last_not_of(" \t");
    std::string name;
    for (const char c : header.substr(std::min(first, header.size()), last - first + 1)) {
        const bool isUpper = c >= 'A' && c <= 'Z';
        name += isUpper ? char(c - 'A' + 'a') : c == ' ' || c == '-' ? '_' : c;
    }
    if (name == "part" || name == "component")
        return "component_id";
    return name == "parent" ? "parent_id" : name;
}

} // namespace

std::span<const RecordType> csvRecordTypes()
{
    static constexpr RecordType types[] = {RecordType::Component, RecordType::Step,
                                           RecordType::PartLine, RecordType::WorkSession};
    return types;
}

std::vector<std::string_view> csvFields(RecordType type)
{
    std::vector<std::string_view> names;
    for (const Field &field : describe(type).fields)
        names.push_back(field.name);
    return names;
}

CsvColumns columnsByHeader(const CsvTable &table, RecordType type)
{
    CsvColumns columns;
    for (const auto &header : table.header) {
        const auto name = asFieldName(header);
        const bool isNew = std::find(columns.begin(), columns.end(), name) == columns.end();
        columns.push_back(isNew && describe(type).find(name) ? name : std::string());
    }
    return columns;
}

} // namespace lastrivet::exchange
