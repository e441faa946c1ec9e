// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv/CsvImport.h"

#include "core/base/Trimmed.h"
#include "core/exchange/DocumentBuilder.h"
#include "core/exchange/DocumentFormat.h"
#include "core/exchange/csv/CsvCell.h"
#include "core/exchange/csv/KnownRows.h"
#include "core/exchange/csv/NameLookup.h"
#include "core/records/Designation.h"

#include <algorithm>
#include <charconv>
#include <fmt/format.h>
#include <set>

namespace lastrivet::exchange {

namespace {

bool isBlank(const std::vector<std::string> &cells)
{
    return std::all_of(cells.begin(), cells.end(),
                       [](const std::string &cell) { return trimmed(cell).empty(); });
}

std::string_view cellOf(const CsvTable &table, const CsvColumns &columns, std::size_t line,
                        std::string_view field)
{
    const auto column = std::find(columns.begin(), columns.end(), field);
    if (column == columns.end())
        return {};
    return trimmed(table.rows[line][std::size_t(column - columns.begin())]);
}

/// The rows that say something, with the ids of the records that they become.
class RowIds {
public:
    struct Row {
        std::size_t line = 0;
        std::int64_t id = 0;
        /// By the row itself, or because what it says is on record.
        bool isNamed = false;
    };

    RowIds(const CsvTable &table, const CsvColumns &columns,
           const std::function<std::int64_t()> &newId)
    {
        for (std::size_t line = 0; line < table.rows.size(); ++line) {
            if (isBlank(table.rows[line]))
                continue;
            const auto given = cellOf(table, columns, line, "id");
            std::int64_t id = 0;
            std::from_chars(given.data(), given.data() + given.size(), id);
            m_rows.push_back({line, given.empty() ? newId() : id, !given.empty()});
        }
    }

    /// By their number in the array of the document.
    const std::vector<Row> &rows() const { return m_rows; }

    /// Gives rows that say what is on record the id of that record; false when there are none.
    bool recognise(const DocumentReading &reading, RecordType type, const Records &records)
    {
        if (!reading.isComplete)
            return false;
        std::vector<std::int64_t> unnamed;
        std::set<std::int64_t> named;
        for (const Row &row : m_rows) {
            if (row.isNamed)
                named.insert(row.id);
            else if (!reading.faulty.contains({type, row.id}))
                unnamed.push_back(row.id);
        }
        const auto known = knownRows(reading.document.records, type, unnamed, named, records);
        for (Row &row : m_rows) {
            const auto found = row.isNamed ? known.end() : known.find(row.id);
            if (found != known.end())
                row = {row.line, found->second, true};
        }
        return !known.empty();
    }

private:
    std::vector<Row> m_rows;
};

/// What a name means that is of a part on record and of a row of the list: nothing for certain, or,
/// while it is not known yet whether the two are one part, the row.
enum class Naming { Strict, RowsFirst };

/// Tells a list to a document builder as if it were a document with one array.
class CsvDocument {
public:
    CsvDocument(const CsvTable &table, RecordType type, const CsvColumns &columns,
                const Records &records, const std::vector<RowIds::Row> &rows, Naming naming)
        : m_table(table)
        , m_type(type)
        , m_columns(columns)
        , m_records(records)
        , m_names(records)
        , m_rows(rows)
    {
        if (type != RecordType::Component)
            return;
        const auto add =
            naming == Naming::Strict ? &NameLookup::addPart : &NameLookup::addPartInPlace;
        for (const RowIds::Row &row : m_rows) {
            if (!m_records.find(m_type, row.id))
                (m_names.*add)(row.id, cell(row.line, "code"), cell(row.line, "name"));
        }
    }

    DocumentReading read()
    {
        const bool isWhole =
            beginDocument() && feedRows() && m_builder.endArray() && m_builder.endObject();
        auto reading = m_builder.finish();
        reading.isComplete = isWhole;
        reading.document.records.project = m_records.project;
        reading.document.hold_points_given = true;
        return reading;
    }

private:
    std::string_view cell(std::size_t line, std::string_view field) const
    {
        return cellOf(m_table, m_columns, line, field);
    }

    bool beginDocument()
    {
        return m_builder.beginObject() && m_builder.key("format") &&
               m_builder.scalar(documentFormat) && m_builder.key("version") &&
               m_builder.scalar(documentVersion) && m_builder.key("project") &&
               m_builder.beginObject() && m_builder.key("name") && m_builder.scalar("-") &&
               m_builder.key("profile") && m_builder.scalar("-") && m_builder.endObject() &&
               m_builder.key(plural(m_type)) && m_builder.beginArray();
    }

    bool feedRows()
    {
        return std::all_of(m_rows.begin(), m_rows.end(), [this](const RowIds::Row &row) {
            return m_builder.beginObject() && feedRow(row.line, row.id) && m_builder.endObject();
        });
    }

    bool feedRow(std::size_t line, std::int64_t id)
    {
        if (cell(line, "id").empty() && !(m_builder.key("id") && m_builder.scalar(id)))
            return false;
        for (std::size_t column = 0; column < m_columns.size(); ++column) {
            const auto &text = m_table.rows[line][column];
            const Field *field = describe(m_type).find(m_columns[column]);
            if (!field || trimmed(text).empty())
                continue;
            const auto partsFirst = trimmed(m_table.header[column]) == field->name
                                        ? PartsFirst::ById
                                        : PartsFirst::ByName;
            if (!m_builder.key(field->name) ||
                !feedCell(m_builder, *field, text, m_names, partsFirst))
                return false;
        }
        const auto builder = m_records.project.builder_id;
        if (m_type != RecordType::WorkSession || !builder || !cell(line, "workers").empty())
            return true;
        return m_builder.key("workers") && m_builder.beginArray() && m_builder.beginObject() &&
               m_builder.key("person_id") && m_builder.scalar(builder.value()) &&
               m_builder.endObject() && m_builder.endArray();
    }

    const CsvTable &m_table;
    RecordType m_type;
    const CsvColumns &m_columns;
    const Records &m_records;
    NameLookup m_names;
    DocumentBuilder m_builder;
    const std::vector<RowIds::Row> &m_rows;
};

/// Reads a list, with the ids of what is on record already.
DocumentReading readRows(const CsvTable &table, RecordType type, const CsvColumns &columns,
                         const Records &records, RowIds &ids)
{
    // A part is known once the one that it lies in is, from one level of the tree to the next.
    constexpr int mostLevels = 32;
    const auto read = [&](Naming naming) {
        return CsvDocument(table, type, columns, records, ids.rows(), naming).read();
    };
    for (int level = 0; level < mostLevels; ++level) {
        if (!ids.recognise(read(Naming::RowsFirst), type, records))
            break;
    }
    return read(Naming::Strict);
}

/// The first two steps after the array of a JSON pointer: the number of the row, and the field.
struct Place {
    std::optional<std::size_t> index;
    std::string_view field;
};

Place placeOf(std::string_view pointer, RecordType type)
{
    const auto array = fmt::format("/{}/", plural(type));
    if (!pointer.starts_with(array))
        return {};
    pointer.remove_prefix(array.size());
    const auto end = std::min(pointer.find('/'), pointer.size());
    std::size_t index = 0;
    std::from_chars(pointer.data(), pointer.data() + end, index);
    pointer.remove_prefix(std::min(end + 1, pointer.size()));
    return {index, pointer.substr(0, std::min(pointer.find('/'), pointer.size()))};
}

/// As a spreadsheet counts; above it are the headings.
constexpr std::size_t firstRow = 2;

/// The error told by row and column instead of by JSON pointer.
InputError inTable(InputError error, const CsvTable &table, const CsvColumns &columns,
                   std::size_t row, std::string_view field)
{
    error.spot = rowName(row);
    const auto column = std::find(columns.begin(), columns.end(), field);
    if (!field.empty() && column != columns.end()) {
        const auto place = std::size_t(column - columns.begin());
        error.spot = {"row {0}, column {1}", {std::to_string(row), table.header[place]}};
        const auto known = table.refusals.find({row - firstRow, place});
        if (known != table.refusals.end())
            error.what = known->second;
    }
    error.place = english(error.spot);
    return error;
}

} // namespace

CsvPlan planCsv(const CsvTable &table, RecordType type, const CsvColumns &columns,
                const Records &records, const Profile &profile,
                const std::function<std::int64_t()> &newId)
{
    RowIds ids(table, columns, newId);
    const auto reading = readRows(table, type, columns, records, ids);
    CsvPlan plan;
    plan.import = planImport(reading, records, profile);
    plan.rows.resize(table.rows.size());
    for (std::size_t line = 0; line < table.rows.size(); ++line) {
        plan.rows[line].row = line + firstRow;
        plan.rows[line].fate = CsvRow::Fate::Blank;
    }
    for (const RowIds::Row &row : ids.rows())
        plan.rows[row.line].fate = CsvRow::Fate::Added;
    for (const auto &[record, position] : reading.document.positions) {
        CsvRow &row = plan.rows[ids.rows()[position].line];
        row.record = spoken(plan.import.merged, record);
        if (records.find(record.type, record.id))
            row.fate = CsvRow::Fate::AlreadyThere;
    }
    for (const InputError &error : plan.import.errors) {
        const auto place = placeOf(error.place, type);
        if (!place.index) {
            plan.errors.push_back(error);
            continue;
        }
        CsvRow &row = plan.rows[ids.rows()[*place.index].line];
        row.fate = CsvRow::Fate::Wrong;
        row.errors.push_back(inTable(error, table, columns, row.row, place.field));
        plan.errors.push_back(row.errors.back());
    }
    return plan;
}

CsvPlan dryRun(const CsvTable &table, RecordType type, const CsvColumns &columns,
               const Project &project)
{
    const auto records = project.records();
    std::int64_t last = 0;
    for (std::size_t i = std::size_t(RecordType::Person); i < recordTypeCount; ++i)
        last = std::max(last, records->table(RecordType(i)).greatestId());
    last = std::min(last, largestId - std::int64_t(table.rows.size()));
    return planCsv(table, type, columns, *records, project.profile(), [&last] { return ++last; });
}

Result<CsvPlan, InputErrors> importCsv(Project &project, const CsvTable &table, RecordType type,
                                       const CsvColumns &columns, std::string_view source)
{
    struct Refused {};
    CsvPlan plan;
    try {
        const auto changed = project.change(
            fmt::format("{}{}", importLabel, source),
            [&](Edit &edit) {
                plan = planCsv(table, type, columns, edit.records(), edit.profile(),
                               [&edit] { return edit.newId(); });
                if (!plan.errors.empty())
                    throw Refused{};
                for (const RecordRef &record : plan.import.added)
                    edit.putAny(record.type, plan.import.merged.find(record.type, record.id));
            },
            ChangeKind::Import);
        if (!changed)
            return InputErrors{{{}, {}, messageOf(changed.reason())}};
    } catch (const Refused &) {
        return plan.errors;
    }
    return plan;
}

} // namespace lastrivet::exchange
