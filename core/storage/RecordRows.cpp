// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/RecordRows.h"

#include "core/base/Error.h"

namespace lastrivet::storage {

namespace {

void fill(const RecordTable &table, void *target, const Row &row, RecordRef ref)
{
    for (std::size_t i = 0; i < row.size(); ++i) {
        const auto &column = table.columns()[i];
        if (!column.field || row[i].index() == 0)
            continue;
        const auto value = scalarOf(*column.field, row[i]);
        if (isNull(value) || !take(*column.field, target, value))
            throw UnreadableInput(Message{
                "The journal is damaged: {0} {1} has an impossible {2}.",
                {std::string(word(ref.type)), std::to_string(ref.id), std::string(column.name)}});
    }
}

} // namespace

RecordRows::RecordRows(const Records &records, RecordRef record)
    : ref(record)
    , collections(tablesOf(record.type).size() - 1)
{
    const void *found = records.find(ref.type, ref.id);
    if (!found)
        return;
    const auto tables = tablesOf(ref.type);
    main = tables.front().rowsOf(found).front();
    for (std::size_t i = 1; i < tables.size(); ++i) {
        for (auto &row : tables[i].rowsOf(found)) {
            auto key = row[1];
            collections[i - 1].emplace(std::move(key), std::move(row));
        }
    }
}

RecordRows::Collection &RecordRows::rowsOf(const RecordTable &table)
{
    return collections[std::size_t(&table - tablesOf(ref.type).data()) - 1];
}

std::shared_ptr<void> RecordRows::record() const
{
    if (!main)
        return nullptr;
    const auto tables = tablesOf(ref.type);
    auto made = describe(ref.type).make();
    fill(tables.front(), made.get(), *main, ref);
    for (std::size_t i = 1; i < tables.size(); ++i) {
        const Field *list = tables[i].collection();
        for (const auto &[key, row] : collections[i - 1])
            fill(tables[i], list->addRow ? list->addRow(made.get()) : made.get(), row, ref);
    }
    return made;
}

void RecordRows::putInto(Records &records) const
{
    if (const auto made = record())
        records.put(ref.type, made.get());
    else if (ref.type != RecordType::Project)
        records.table(ref.type).erase(ref.id);
}

} // namespace lastrivet::storage
