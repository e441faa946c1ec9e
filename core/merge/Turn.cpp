// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/merge/Turn.h"

#include "core/merge/ConflictId.h"
#include "core/records/Designation.h"
#include "core/records/EachReference.h"

#include <algorithm>
#include <array>
#include <fmt/format.h>

namespace lastrivet::merge {

using storage::RecordRows;
using storage::RecordTable;

Turn::Turn(const MergeState &before, ReplayMemory &memory, const std::string &change,
           const std::optional<std::string> &undoes, ChangeContent content)
    : m_memory(memory)
    , m_change(change)
    , m_undoes(undoes)
    , m_content(std::move(content))
    , m_after(before)
{
}

bool Turn::play()
{
    findSamePhotos();
    useOneId();
    decideWhatStays();
    for (const auto &edits : m_content.records) {
        if (!m_stays.contains(edits.record) && !playRecord(edits))
            return false;
    }
    reviveNamed();
    playProfile();
    playConflicts();
    return true;
}

RecordRef Turn::subject() const
{
    return m_content.records.empty() ? RecordRef{RecordType::Project, 1}
                                     : m_content.records.front().record;
}

void Turn::remember()
{
    for (const auto &note : m_notes)
        note();
}

void Turn::rememberLeftOut()
{
    for (const auto &edits : m_content.records) {
        const auto *own = edits.own();
        if (!own || own->kind != RowChange::Update)
            continue;
        for (std::size_t i = own->table->keyColumns(); i < own->after.size(); ++i) {
            if (own->after[i])
                m_memory.seen[{edits.record, own->table->columns()[i].name}].push_back(
                    *own->after[i]);
        }
    }
}

bool Turn::playRecord(const RecordEdits &edits)
{
    RecordRows rows(m_after.records, edits.record);
    const auto *own = edits.own();
    if (edits.takesBack()) {
        takeBack(std::move(rows));
        return true;
    }
    if (own && own->kind == RowChange::Insert) {
        rows.isThere() ? makeAgain(rows, *own) : make(rows, *own);
    } else if (!rows.isThere()) {
        if (!revive(edits.record)) {
            m_missing = fmt::format("What it changes is not there: {}.",
                                    designation(m_after.records, edits.record));
            return false;
        }
        rows = RecordRows(m_after.records, edits.record);
    }
    for (const auto &edit : edits.rows) {
        if (edit.isOfList())
            changeList(rows, edit);
        else if (edit.kind == RowChange::Update)
            change(rows, edit);
    }
    rows.putInto(m_after.records);
    notePhoto(edits.record);
    m_touched.insert(edits.record);
    return true;
}

void Turn::takeBack(RecordRows rows)
{
    if (!rows.isThere())
        return;
    const auto record = rows.ref;
    m_after.records.table(record.type).erase(record.id);
    m_touched.insert(record);
    later([this, rows = std::move(rows)] {
        m_memory.makers.erase(rows.ref);
        m_memory.gone.insert_or_assign(rows.ref, ReplayMemory::Gone{rows, m_change});
    });
}

void Turn::make(RecordRows &rows, const RowEdit &edit)
{
    Row row(edit.table->columns().size());
    for (std::size_t i = 0; i < edit.after.size(); ++i)
        row[i] = edit.after[i].value_or(Cell{});
    freeNumber(rows.ref, row);
    freeFileName(rows.ref, row);
    rows.main = row;
    later([this, record = rows.ref, row] {
        ++m_memory.makers[record];
        m_memory.made.try_emplace(record, row);
        m_memory.writers[{record, {}}] = m_change;
        m_memory.gone.erase(record);
    });
}

void Turn::makeAgain(RecordRows &rows, const RowEdit &edit)
{
    const auto record = rows.ref;
    const bool isSamePhoto = record.type == RecordType::Media && edit.key(0) != Cell{record.id};
    const auto made = m_memory.made.find(record);
    for (std::size_t i = 1; i < edit.after.size(); ++i) {
        const auto to = edit.after[i].value_or(Cell{});
        auto &cell = (*rows.main)[i];
        const auto &field = edit.table->columns()[i].name;
        if (to.index() == 0 || to == cell)
            continue;
        if (cell.index() == 0)
            cell = to;
        else if (made != m_memory.made.end() && made->second[i] == to)
            continue; // both made the same, and somebody went on from it
        else if (!isSamePhoto)
            give(record, field, {}, cell, std::nullopt, to);
        else if (field == "caption" || field == "note")
            addConflict({0,
                         ConflictKind::Value,
                         record,
                         field,
                         {},
                         cell,
                         to,
                         m_memory.writerOf(record, field),
                         m_change,
                         {},
                         {}});
    }
    later([this, record] { ++m_memory.makers[record]; });
}

void Turn::freeNumber(RecordRef record, Row &row)
{
    const auto &description = describe(record.type);
    const auto *field = description.find("number");
    if (!field || record.type == RecordType::CertificateDocument)
        return;
    const auto &columns = storage::tablesOf(record.type).front().columns();
    const auto at = std::find_if(columns.begin(), columns.end(),
                                 [&](const auto &column) { return column.field == field; });
    auto &cell = row[std::size_t(at - columns.begin())];
    const auto *given = std::get_if<std::string>(&cell);
    const auto isTaken = [&](std::string_view number) {
        const auto &table = m_after.records.table(record.type);
        for (const void *other = table.nextAny(0); other;
             other = table.nextAny(idOf(description, other))) {
            if (field->value(other) == Scalar{number})
                return true;
        }
        return false;
    };
    if (!given || given->empty() || !isTaken(*given))
        return;
    later([this, record, wanted = cell] { m_memory.seen[{record, "number"}].push_back(wanted); });
    std::string free;
    for (int n = 1; free.empty() || isTaken(free); ++n)
        free = *given + char('a' + n % 26) + (n < 26 ? std::string() : fmt::to_string(n / 26 + 1));
    cell = free;
}

void Turn::change(RecordRows &rows, const RowEdit &edit)
{
    for (std::size_t i = edit.table->keyColumns(); i < edit.after.size(); ++i) {
        if (edit.after[i])
            give(rows.ref, edit.table->columns()[i].name, {}, (*rows.main)[i], edit.before[i],
                 *edit.after[i]);
    }
}

void Turn::give(RecordRef record, const std::string &field, std::optional<std::int64_t> item,
                Cell &cell, const std::optional<Cell> &from, const Cell &to)
{
    // Whoever went on from a value that lost has done without it.
    if (from)
        settleLost(record, field, item, *from);
    if (cell == to)
        return;
    const bool isKnown = from && (cell == *from || m_memory.wasSeen(record, field, *from));
    if (!isKnown)
        addConflict({0,
                     ConflictKind::Value,
                     record,
                     field,
                     item,
                     to,
                     cell,
                     m_change,
                     m_memory.writerOf(record, field),
                     {},
                     {}});
    cell = to;
    later([this, record, field] { m_memory.writers[{record, field}] = m_change; });
}

bool Turn::revive(RecordRef record)
{
    const auto gone = m_memory.gone.find(record);
    if (gone == m_memory.gone.end())
        return false;
    gone->second.rows.putInto(m_after.records);
    notePhoto(record);
    m_touched.insert(record);
    addConflict(
        {0, ConflictKind::Existence, record, {}, {}, {}, {}, m_change, gone->second.by, {}, {}});
    later([this, record] {
        m_memory.gone.erase(record);
        m_memory.makers[record] = 1;
    });
    return true;
}

void Turn::reviveNamed()
{
    std::vector<RecordRef> toLookAt(m_touched.begin(), m_touched.end());
    while (!toLookAt.empty()) {
        const auto ref = toLookAt.back();
        toLookAt.pop_back();
        const auto *record = m_after.records.find(ref.type, ref.id);
        if (!record)
            continue;
        eachReference(describe(ref.type), record, [&](const Field &, RecordRef named) {
            if (!m_after.records.find(named.type, named.id) && revive(named))
                toLookAt.push_back(named);
        });
    }
}

void Turn::playProfile()
{
    if (!m_content.profile || m_content.profile->kind != RowChange::Update)
        return;
    const auto &edit = *m_content.profile;
    Cell cell = m_after.records.profile_copy;
    give({RecordType::Project, 1}, std::string(storage::profileTable), {}, cell, edit.before[1],
         *edit.after[1]);
    m_after.records.profile_copy = std::get<std::string>(cell);
    m_touched.insert({RecordType::Project, 1});
}

std::int64_t Turn::addConflict(storage::ConflictRow conflict)
{
    const std::int64_t id = conflictId(conflict);
    conflict.id = id;
    m_after.conflicts.insert_or_assign(id, std::move(conflict));
    return id;
}

void Turn::settleLost(RecordRef record, const std::string &field, std::optional<std::int64_t> item,
                      const Cell &value)
{
    std::erase_if(m_after.conflicts, [&](const auto &entry) {
        const auto &conflict = entry.second;
        return conflict.kind == ConflictKind::Value && !conflict.decision &&
               conflict.record == record && conflict.field == field && conflict.item == item &&
               conflict.lost == value;
    });
}

} // namespace lastrivet::merge
