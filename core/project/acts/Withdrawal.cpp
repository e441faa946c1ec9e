// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/Withdrawal.h"

#include "core/records/Description.h"

#include <algorithm>
#include <set>
#include <string>

namespace lastrivet::acts {

namespace {

using Names = std::set<RecordRef>;

bool mayNameWithdrawn(RecordType owner, std::string_view field)
{
    return (owner == RecordType::Media && field == "links") ||
           (owner == RecordType::Inspection && field == "hold_point_ids") ||
           (owner == RecordType::Step && field == "after");
}

bool namesIn(const Names &names, const Field &field, const Scalar &value)
{
    const auto *id = std::get_if<std::int64_t>(&value);
    return id && field.target && names.contains({*field.target, *id});
}

bool rowNames(const Names &names, const RowDescription &rows, const void *row)
{
    return std::ranges::any_of(rows.fields, [&](const Field &field) {
        return field.type == FieldType::Ref && namesIn(names, field, field.value(row));
    });
}

bool fieldNames(const Names &names, const Field &field, const void *record)
{
    if (field.type == FieldType::Ref)
        return namesIn(names, field, field.value(record));
    const std::size_t count = field.isCollection() ? field.size(record) : 0;
    for (std::size_t i = 0; i < count; ++i) {
        if (field.type == FieldType::Refs && namesIn(names, field, field.item(record, i)))
            return true;
        if (field.rows && rowNames(names, *field.rows, field.row(record, i)))
            return true;
    }
    return false;
}

bool recordNames(const Names &names, const RecordDescription &description, const void *record)
{
    return std::ranges::any_of(description.fields, [&](const Field &field) {
        return !mayNameWithdrawn(description.type, field.name) && fieldNames(names, field, record);
    });
}

/// Adds to `names` the records of a type that name one of them; true when there were any.
bool addNaming(Names &names, const Records &all, const RecordDescription &description)
{
    const AnyTable &table = all.table(description.type);
    bool isAny = false;
    for (const void *record = table.nextAny(0); record;) {
        const std::int64_t id = idOf(description, record);
        if (!isWithdrawn(description, record) && !names.contains({description.type, id}) &&
            recordNames(names, description, record)) {
            names.insert({description.type, id});
            isAny = true;
        }
        record = table.nextAny(id);
    }
    return isAny;
}

} // namespace

std::vector<RecordRef> companions(const Records &all, const std::vector<RecordRef> &records)
{
    Names names(records.begin(), records.end());
    for (bool isGrowing = true; isGrowing;) {
        isGrowing = false;
        for (std::size_t type = 1; type < recordTypeCount; ++type)
            isGrowing |= addNaming(names, all, describe(RecordType(type)));
    }
    for (const RecordRef &record : records)
        names.erase(record);
    return {names.begin(), names.end()};
}

void withdraw(Edit &edit, const std::vector<RecordRef> &records, std::string_view why)
{
    const Moment now = edit.now();
    for (const RecordRef &record : records) {
        const auto &description = describe(record.type);
        const auto changed = description.copy(edit.existing(record));
        description.find("withdrawn_on")->assign(changed.get(), now);
        description.find("withdrawn_why")->assign(changed.get(), why);
        edit.putAny(record.type, changed.get());
    }
}

} // namespace lastrivet::acts
