// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/JournalChanges.h"

#include "core/storage/Changeset.h"
#include "core/storage/ConflictTable.h"

#include <algorithm>
#include <iterator>
#include <map>
#include <nlohmann/json.hpp>

namespace lastrivet::storage {

namespace {

using Json = nlohmann::ordered_json;

/// Numbers stand in one list. A stranger's may nest so deep that writing them takes all of the
/// stack.
bool isFlat(const std::string &list)
{
    return list.find('[', 1) == std::string::npos && list.find('{') == std::string::npos;
}

Json jsonOf(const Field *field, const Cell &cell)
{
    if (const auto *number = std::get_if<std::int64_t>(&cell))
        return field && field->type == FieldType::Bool ? Json(*number != 0) : Json(*number);
    if (const auto *real = std::get_if<double>(&cell))
        return *real;
    if (const auto *text = std::get_if<std::string>(&cell)) {
        if (!field || field->type != FieldType::Numbers || !isFlat(*text))
            return *text;
        auto numbers = Json::parse(*text, nullptr, false);
        return numbers.is_discarded() ? Json(*text) : numbers;
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

/// A row of a set or list. A changeset has them in no order.
struct Item {
    RecordRef record;
    std::string field;
    /// Its position; of a set, the item itself.
    Cell key;
    std::optional<std::string> removed;
    std::optional<std::string> added;
};

Item itemOf(RecordRef record, const ChangedRow &row)
{
    Item item{record,
              std::string(row.recordTable->collection()->name),
              row.key(1).value_or(Cell{}),
              {},
              {}};
    if (row.kind != RowChange::Insert)
        item.removed = itemText(row, row.before);
    if (row.kind != RowChange::Delete)
        item.added = itemText(row, row.after);
    return item;
}

void addItems(std::map<RecordRef, JournalChange> &changes, std::vector<Item> items)
{
    std::ranges::stable_sort(items, {}, &Item::key);
    for (Item &item : items) {
        auto &field = fieldOf(changes.at(item.record), item.field);
        if (item.removed)
            field.removed.push_back(std::move(*item.removed));
        if (item.added)
            field.added.push_back(std::move(*item.added));
    }
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
        // Keeps the place of the field among the others; its items come at the end.
        fieldOf(change, row.recordTable->collection()->name);
    } else {
        change.kind = row.kind;
        addValues(change, row);
    }
}

/// What was decided stands in the change's label, what came of it in the records.
bool isTold(const ChangedRow &row)
{
    return row.table != conflictTable;
}

/// In order, each once.
std::vector<RecordRef> toldRecords(std::span<const std::uint8_t> changeset)
{
    std::vector<RecordRef> told;
    forEachKey(changeset, [&](const ChangedRow &row) {
        if (isTold(row))
            told.push_back(recordOf(row));
    });
    std::sort(told.begin(), told.end());
    told.erase(std::unique(told.begin(), told.end()), told.end());
    return told;
}

/// Puts the rows of a changeset together to the records that they are of.
class Gathering {
public:
    void add(const ChangedRow &row)
    {
        if (!isTold(row))
            return;
        const RecordRef ref = recordOf(row);
        const auto at = m_changes.try_emplace(ref, JournalChange{ref, RowChange::Update, {}}).first;
        addRow(at->second, row);
        if (row.recordTable && row.recordTable->collection())
            m_items.push_back(itemOf(ref, row));
    }

    std::vector<JournalChange> take()
    {
        addItems(m_changes, std::move(m_items));
        std::vector<JournalChange> list;
        for (auto &[ref, change] : m_changes)
            list.push_back(std::move(change));
        return list;
    }

private:
    std::map<RecordRef, JournalChange> m_changes;
    std::vector<Item> m_items;
};

} // namespace

std::optional<std::string> valueText(const Field *field, const Cell &cell)
{
    return cell.index() == 0 ? std::nullopt : std::optional(textOf(jsonOf(field, cell)));
}

std::vector<JournalChange> journalChanges(std::span<const std::uint8_t> changeset)
{
    Gathering gathering;
    forEachChange(changeset, [&](const ChangedRow &row) { gathering.add(row); });
    return gathering.take();
}

SomeChanges someJournalChanges(std::span<const std::uint8_t> changeset, std::size_t most,
                               std::optional<RecordRef> first)
{
    auto told = toldRecords(changeset);
    const std::size_t all = told.size();
    if (const auto found = std::find(told.begin(), told.end(), first); found != told.end())
        std::rotate(told.begin(), found, std::next(found));
    told.resize(std::min(all, most));
    Gathering gathering;
    forEachChangeOf(changeset, {told.begin(), told.end()},
                    [&](const ChangedRow &row) { gathering.add(row); });
    SomeChanges some{gathering.take(), all - told.size()};
    std::ranges::stable_sort(some.changes, {},
                             [&](const JournalChange &each) { return each.record != first; });
    return some;
}

} // namespace lastrivet::storage
