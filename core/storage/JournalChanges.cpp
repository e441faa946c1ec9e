// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/JournalChanges.h"

#include "core/storage/Changeset.h"
#include "core/storage/ConflictTable.h"

#include <algorithm>
#include <map>
#include <nlohmann/json.hpp>

namespace lastrivet::storage {

namespace {

using Json = nlohmann::ordered_json;

Json jsonOf(const Field *field, const Cell &cell)
{
    if (const auto *number = std::get_if<std::int64_t>(&cell))
        return field && field->type == FieldType::Bool ? Json(*number != 0) : Json(*number);
    if (const auto *real = std::get_if<double>(&cell))
        return *real;
    if (const auto *text = std::get_if<std::string>(&cell)) {
        if (field && field->type == FieldType::Numbers)
            return Json::parse(*text, nullptr, false);
        return *text;
    }
    return nullptr;
}

std::string textOf(const Json &json)
{
    return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

std::optional<std::string> valueText(const Field *field, const std::optional<Cell> &cell)
{
    return cell ? storage::valueText(field, *cell) : std::nullopt;
}

/// A row of a set is its item; a row of a list is an object with what is known of it.
std::string itemText(const ChangedRow &row, const std::vector<std::optional<Cell>> &cells)
{
    const auto &columns = row.recordTable->columns();
    if (!row.recordTable->collection()->rows)
        return textOf(jsonOf(columns[1].field, *row.key(1)));
    Json object = Json::object();
    for (std::size_t i = 1; i < std::max(cells.size(), row.recordTable->keyColumns()); ++i) {
        const auto &cell = i < row.recordTable->keyColumns() ? row.key(i) : cells[i];
        if (cell && cell->index() != 0)
            object[columns[i].name] = jsonOf(columns[i].field, *cell);
    }
    return textOf(object);
}

FieldChange &fieldOf(JournalChange &change, std::string_view name)
{
    const auto found = std::find_if(change.fields.begin(), change.fields.end(),
                                    [name](const FieldChange &f) { return f.name == name; });
    if (found != change.fields.end())
        return *found;
    change.fields.push_back({std::string(name), {}, {}, {}, {}});
    return change.fields.back();
}

void addValues(JournalChange &change, const ChangedRow &row)
{
    const auto &columns = row.recordTable->columns();
    for (std::size_t i = 1; i < std::max(row.before.size(), row.after.size()); ++i) {
        const auto *field = columns[i].field;
        auto from = i < row.before.size() ? valueText(field, row.before[i]) : std::nullopt;
        auto to = i < row.after.size() ? valueText(field, row.after[i]) : std::nullopt;
        if (from != to)
            change.fields.push_back({columns[i].name, std::move(from), std::move(to), {}, {}});
    }
}

void addItem(JournalChange &change, const ChangedRow &row)
{
    auto &field = fieldOf(change, row.recordTable->collection()->name);
    if (row.kind != RowChange::Insert)
        field.removed.push_back(itemText(row, row.before));
    if (row.kind != RowChange::Delete)
        field.added.push_back(itemText(row, row.after));
}

void addRow(JournalChange &change, const ChangedRow &row)
{
    if (!row.recordTable) {
        const auto content = [](const std::vector<std::optional<Cell>> &cells) {
            return cells.size() > 1 ? valueText(nullptr, cells[1]) : std::nullopt;
        };
        change.fields.push_back(
            {std::string(profileTable), content(row.before), content(row.after), {}, {}});
    } else if (row.recordTable->collection()) {
        addItem(change, row);
    } else {
        change.kind = row.kind;
        addValues(change, row);
    }
}

} // namespace

std::optional<std::string> valueText(const Field *field, const Cell &cell)
{
    return cell.index() == 0 ? std::nullopt : std::optional(textOf(jsonOf(field, cell)));
}

std::vector<JournalChange> journalChanges(std::span<const std::uint8_t> changeset)
{
    std::map<RecordRef, JournalChange> changes;
    forEachChange(changeset, [&](const ChangedRow &row) {
        // What was decided stands in the change's label, what came of it in the records.
        if (row.table == conflictTable)
            return;
        const RecordRef ref = recordOf(row);
        const auto at = changes.try_emplace(ref, JournalChange{ref, RowChange::Update, {}}).first;
        addRow(at->second, row);
    });
    std::vector<JournalChange> list;
    for (auto &[ref, change] : changes)
        list.push_back(std::move(change));
    return list;
}

} // namespace lastrivet::storage
