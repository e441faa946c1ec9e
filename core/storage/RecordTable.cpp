// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/RecordTable.h"

#include "core/base/Utf8.h"

#include <algorithm>
#include <charconv>
#include <fmt/format.h>

namespace lastrivet::storage {

namespace {

std::vector<RecordTable> makeTables()
{
    std::vector<RecordTable> tables;
    for (std::size_t i = 0; i < recordTypeCount; ++i) {
        const auto &record = describe(RecordType(i));
        tables.emplace_back(record);
        for (const auto &field : record.fields) {
            if (field.isCollection())
                tables.emplace_back(record, field);
        }
    }
    return tables;
}

/// Rows whose key is a person instead of their position in the list.
bool isKeyedByPerson(const Field &list)
{
    return list.rows && list.rows->name == "work_session.workers";
}

std::string joined(std::span<const RecordTable::Column> columns, std::string_view pattern,
                   std::string_view separator)
{
    std::string text;
    for (const auto &column : columns) {
        text += text.empty() ? std::string_view{} : separator;
        text += fmt::format(fmt::runtime(pattern), column.name);
    }
    return text;
}

/// Columns of later schema steps come last, because a step can only add columns at the end.
void sortBySchema(std::vector<RecordTable::Column> &columns)
{
    std::ranges::stable_sort(columns, {}, [](const RecordTable::Column &column) {
        return column.field ? column.field->schema : 0;
    });
}

bool isMarred(std::string_view text)
{
    return firstNotUtf8(text) || text.find('\0') != std::string_view::npos;
}

/// A text that is not well-formed, which this program never writes, is read with replacement
/// characters: one bad byte must not keep all other records from being read.
bool assign(const Field &field, void *target, const Scalar &value)
{
    const auto *text = std::get_if<std::string_view>(&value);
    if (!text || !isMarred(*text))
        return field.assign(target, value);
    const std::string mended = wellFormed(*text);
    return field.assign(target, std::string_view(mended));
}

} // namespace

RecordTable::RecordTable(const RecordDescription &record)
    : m_record(&record)
    , m_name(record.name())
{
    if (record.type == RecordType::Project)
        m_columns.push_back({"id", nullptr});
    for (const auto &field : record.fields) {
        if (!field.isCollection())
            m_columns.push_back({std::string(field.name), &field});
    }
    sortBySchema(m_columns);
}

RecordTable::RecordTable(const RecordDescription &record, const Field &collection)
    : m_record(&record)
    , m_collection(&collection)
    , m_name(fmt::format("{}_{}", record.name(), collection.name))
    , m_columns{{fmt::format("{}_id", record.name()), nullptr}}
    , m_keyColumns(2)
{
    if (!collection.rows) {
        m_columns.push_back({"item", &collection});
        return;
    }
    if (!isKeyedByPerson(collection))
        m_columns.push_back({"position", nullptr});
    for (const auto &field : collection.rows->fields)
        m_columns.push_back({std::string(field.name), &field});
    sortBySchema(m_columns);
}

Row RecordTable::rowOf(const void *from, std::int64_t id, std::int64_t position) const
{
    Row row;
    row.reserve(m_columns.size());
    for (const auto &column : m_columns) {
        if (!column.field)
            row.push_back(row.empty() ? id : position);
        else if (column.field == m_collection)
            row.push_back(cellOf(column.field->item(from, std::size_t(position))));
        else if (column.field->type == FieldType::Numbers)
            row.push_back(numbersText(*column.field, from));
        else
            row.push_back(cellOf(column.field->value(from)));
    }
    return row;
}

std::vector<Row> RecordTable::rowsOf(const void *record) const
{
    const auto id = idOf(*m_record, record);
    if (!m_collection)
        return {rowOf(record, id, 0)};
    std::vector<Row> rows;
    rows.reserve(m_collection->size(record));
    for (std::size_t i = 0; i < m_collection->size(record); ++i) {
        const void *from = m_collection->row ? m_collection->row(record, i) : record;
        rows.push_back(rowOf(from, id, std::int64_t(i)));
    }
    std::sort(rows.begin(), rows.end(), [](const Row &a, const Row &b) { return a[1] < b[1]; });
    return rows;
}

std::string RecordTable::columnList() const
{
    return joined(m_columns, R"("{}")", ",");
}

std::string RecordTable::keyCondition() const
{
    return joined(std::span(m_columns).first(m_keyColumns), R"("{}"=?)", " AND ");
}

std::string RecordTable::keyList() const
{
    return joined(std::span(m_columns).first(m_keyColumns), R"("{}")", ",");
}

std::span<const RecordTable> recordTables()
{
    static const auto tables = makeTables();
    return tables;
}

std::span<const RecordTable> tablesOf(RecordType type)
{
    const auto all = recordTables();
    const auto isOf = [type](const RecordTable &table) { return table.type() == type; };
    const auto first = std::find_if(all.begin(), all.end(), isOf);
    const auto last = std::find_if_not(first, all.end(), isOf);
    return {first, last};
}

const RecordTable *findRecordTable(std::string_view name)
{
    const auto all = recordTables();
    const auto found = std::find_if(
        all.begin(), all.end(), [name](const RecordTable &table) { return table.name() == name; });
    return found == all.end() ? nullptr : &*found;
}

std::size_t columnOf(const RecordTable &table, std::string_view name)
{
    return std::size_t(std::ranges::find(table.columns(), name, &RecordTable::Column::name) -
                       table.columns().begin());
}

std::string numbersText(const Field &field, const void *row)
{
    std::string text = "[";
    for (std::size_t i = 0; i < field.size(row); ++i)
        text += fmt::format("{}{}", i ? "," : "", std::get<double>(field.item(row, i)));
    return text + "]";
}

bool readNumbers(const Field &field, void *row, std::string_view text)
{
    if (text.size() < 2 || text.front() != '[' || text.back() != ']')
        return false;
    const char *place = text.data() + 1;
    const char *const end = text.data() + text.size() - 1;
    while (place < end) {
        double number = 0;
        const auto read = std::from_chars(place, end, number);
        if (read.ec != std::errc{} || !field.add(row, number))
            return false;
        place = read.ptr;
        if (place < end && *place++ != ',')
            return false;
    }
    return true;
}

bool take(const Field &field, void *row, const Scalar &value)
{
    if (field.type == FieldType::Numbers) {
        const auto *text = std::get_if<std::string_view>(&value);
        return text && readNumbers(field, row, *text);
    }
    return field.isCollection() ? field.add(row, value) : assign(field, row, value);
}

} // namespace lastrivet::storage
