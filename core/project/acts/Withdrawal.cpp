// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/Withdrawal.h"

#include "core/records/Description.h"

#include <algorithm>
#include <cstdint>
#include <set>
#include <span>
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

/// The live records of a type that name one of these and are none of them.
std::vector<RecordRef> naming(const Names &names, const Records &all,
                              const RecordDescription &description)
{
    const AnyTable &table = all.table(description.type);
    std::vector<RecordRef> found;
    for (const void *record = table.nextAny(0); record;) {
        const std::int64_t id = idOf(description, record);
        if (!isWithdrawn(description, record) && !names.contains({description.type, id}) &&
            recordNames(names, description, record))
            found.push_back({description.type, id});
        record = table.nextAny(id);
    }
    return found;
}

void dropRefs(std::span<const Field> fields, void *owner, const Names &names)
{
    for (const Field &field : fields) {
        if (field.type == FieldType::Ref && namesIn(names, field, field.value(owner)))
            field.assign(owner, Scalar());
    }
}

void dropItems(const Field &field, void *record, const Names &names)
{
    std::vector<Scalar> kept;
    const std::size_t count = field.size(record);
    for (std::size_t i = 0; i < count; ++i) {
        if (const Scalar item = field.item(record, i); !namesIn(names, field, item))
            kept.push_back(item);
    }
    if (kept.size() == count)
        return;
    field.clear(record);
    for (const Scalar &item : kept)
        field.add(record, item);
}

/// Takes what is among `names` out of all fields of a record, and out of the rows of its lists.
void drop(const RecordDescription &description, void *record, const Names &names)
{
    dropRefs(description.fields, record, names);
    for (const Field &field : description.fields) {
        if (field.type == FieldType::Refs)
            dropItems(field, record, names);
        const std::size_t rows = field.rows ? field.size(record) : 0;
        for (std::size_t i = 0; i < rows; ++i) // of our own copy, which may be changed
            dropRefs(field.rows->fields, const_cast<void *>(field.row(record, i)), names);
    }
}

Names filesAmong(const std::vector<RecordRef> &records)
{
    Names files;
    for (const RecordRef &record : records) {
        if (record.type == RecordType::Media)
            files.insert(record);
    }
    return files;
}

} // namespace

std::vector<RecordRef> companions(const Records &all, const std::vector<RecordRef> &records)
{
    Names names(records.begin(), records.end());
    for (const RecordRef &file : filesAmong(records))
        names.erase(file);
    for (bool isGrowing = true; isGrowing;) {
        isGrowing = false;
        for (std::size_t type = 1; type < recordTypeCount; ++type) {
            const auto found = naming(names, all, describe(RecordType(type)));
            names.insert(found.begin(), found.end());
            isGrowing |= !found.empty();
        }
    }
    for (const RecordRef &record : records)
        names.erase(record);
    return {names.begin(), names.end()};
}

std::vector<RecordRef> namingFiles(const Records &all, const std::vector<RecordRef> &records)
{
    const Names files = filesAmong(records);
    std::vector<RecordRef> found;
    for (std::size_t type = 1; type < recordTypeCount && !files.empty(); ++type) {
        const auto some = naming(files, all, describe(RecordType(type)));
        found.insert(found.end(), some.begin(), some.end());
    }
    return found;
}

void letGoOfFiles(Edit &edit, const std::vector<RecordRef> &records)
{
    const Names files = filesAmong(records);
    for (const RecordRef &record : namingFiles(edit.records(), records)) {
        const auto &description = describe(record.type);
        const auto changed = description.copy(edit.existing(record));
        drop(description, changed.get(), files);
        edit.putAny(record.type, changed.get());
    }
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
