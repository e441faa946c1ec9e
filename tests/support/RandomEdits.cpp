// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/RandomEdits.h"

#include <algorithm>
#include <cstdlib>
#include <variant>
#include <vector>

namespace lastrivet::test {

namespace {

template <class Record> void number(Record &record, const Records &records)
{
    record.number = nextNumber<Record>(records);
}

/// The number that the program gives a new record.
void giveNumber(RecordType type, void *record, const Records &records)
{
    if (type == RecordType::Squawk)
        number(*static_cast<Squawk *>(record), records);
    if (type == RecordType::Deviation)
        number(*static_cast<Deviation *>(record), records);
    if (type == RecordType::Bulletin)
        number(*static_cast<Bulletin *>(record), records);
}

/// Refused below zero, so that half of what the donors say of it would come to nothing.
bool isCounted(const Field &field)
{
    return field.name == "estimate_minutes" || field.name == "cure_minutes" ||
           field.name == "bytes" || field.name == "landings";
}

bool isLeftAlone(const Field &field)
{
    return field.type == FieldType::Id || field.name == "number" || field.name == "profile" ||
           field.name == "time_zone" || field.name == "file" || field.name == "sha256";
}

} // namespace

RandomEdits::RandomEdits(unsigned seed)
    : m_random(seed)
    , m_donors(seed, 8)
{
}

void RandomEdits::act(Project &project)
{
    const auto choice = below(20);
    if (choice < 3)
        ++counts[project.undo() ? "undone" : "not undone"];
    else if (choice < 5)
        ++counts[project.redo() ? "redone" : "not redone"];
    else if (choice == 5)
        decide(project);
    else if (choice == 6 && chance(10))
        project.notePrinted("Packet");
    else if (choice == 7 && chance(50))
        reverse(project);
    else
        change(project);
}

void RandomEdits::reverse(Project &project)
{
    const auto rows = std::int64_t(project.journalLines().size());
    ++counts[project.reverse(1 + below(rows), "Taken back") ? "reversed" : "not reversed"];
}

void RandomEdits::change(Project &project)
{
    const auto type = RecordType(below(recordTypeCount));
    const auto result = project.change(
        "Change", [&](Edit &changes) { edit(changes, type); },
        chance(10) ? ChangeKind::Automatic : ChangeKind::Change);
    if (!result)
        ++counts["refused"];
    else if (!result->touched.empty())
        ++counts["changed " + std::string(word(type))];
}

void RandomEdits::decide(Project &project)
{
    for (const auto &conflict : project.conflicts()) {
        if (conflict.decision)
            continue;
        const auto done = project.decide(conflict.id, chance(50) ? ConflictDecision::Kept
                                                                 : ConflictDecision::Taken);
        ++counts[done ? "decided" : "not decided"];
        return;
    }
}

void RandomEdits::edit(Edit &edit, RecordType type)
{
    const auto &description = describe(type);
    const auto known = type == RecordType::Project ? 1
                       : chance(70)                ? anyOf(edit.records(), type)
                                                   : 0;
    const auto id = known ? known : edit.newId();
    const auto donor = m_donors.record(type, id);
    const auto record =
        known ? description.copy(edit.records().find(type, id)) : description.make();
    for (const auto &field : description.fields) {
        if (field.type == FieldType::Id && !known)
            field.assign(record.get(), Scalar{id});
        if (field.name == "file" && !known)
            field.assign(record.get(), Scalar{std::string_view("photos/one.jpg")});
        const bool isWanted = known ? below(std::int64_t(description.fields.size())) < 2
                                    : field.required || chance(15);
        if (isWanted && !isLeftAlone(field) && (!field.name.starts_with("withdrawn") || chance(10)))
            fill(edit.records(), field, record.get(), donor.get());
    }
    if (!known)
        giveNumber(type, record.get(), edit.records());
    if (type == RecordType::Media && !known)
        static_cast<Media *>(record.get())->file = "photos/" + std::to_string(id) + ".jpg";
    edit.putAny(type, record.get());
}

void RandomEdits::fill(const Records &records, const Field &field, void *record, const void *donor)
{
    if (field.type == FieldType::Ref) {
        const auto id = field.target && !chance(20) ? anyOf(records, *field.target) : 0;
        field.assign(record, id ? Scalar{id} : Scalar{});
    } else if (field.type == FieldType::Refs) {
        if (chance(30))
            field.clear(record);
        if (const auto id = anyOf(records, *field.target))
            field.add(record, Scalar{id});
    } else if (field.rows) {
        fillRows(records, field, record, donor);
    } else if (field.isCollection()) {
        field.clear(record);
        for (std::size_t i = 0; i < field.size(donor); ++i)
            field.add(record, field.item(donor, i));
    } else {
        Scalar value = field.value(donor);
        auto *count = std::get_if<std::int64_t>(&value);
        if (count && isCounted(field))
            *count = std::abs(*count);
        field.assign(record, value);
    }
}

void RandomEdits::fillRows(const Records &records, const Field &field, void *record,
                           const void *donor)
{
    // A row more, or all anew.
    if (chance(40))
        field.clear(record);
    for (std::size_t i = 0; i < std::min<std::size_t>(field.size(donor), 2); ++i) {
        void *row = field.addRow(record);
        for (const auto &part : field.rows->fields)
            fill(records, part, row, field.row(donor, i));
        if (field.rows->name == "media.links") {
            auto &link = *static_cast<Media::Link *>(row);
            link = {RecordType::Component, anyOf(records, RecordType::Component)};
        }
    }
}

std::int64_t RandomEdits::anyOf(const Records &records, RecordType type)
{
    const auto &table = records.table(type);
    if (table.size() == 0)
        return 0;
    std::vector<std::int64_t> ids;
    for (const void *record = table.nextAny(0); record;
         record = table.nextAny(idOf(describe(type), record)))
        ids.push_back(idOf(describe(type), record));
    return ids[std::size_t(below(std::int64_t(ids.size())))];
}

std::int64_t RandomEdits::below(std::int64_t bound)
{
    return std::uniform_int_distribution<std::int64_t>(0, bound - 1)(m_random);
}

} // namespace lastrivet::test
