// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/merge/Decision.h"

#include "core/merge/ChangeContent.h"
#include "core/merge/Replay.h"
#include "core/records/OwnFileName.h"

namespace lastrivet::merge {

namespace {

using storage::ConflictRow;
using storage::RecordRows;

const storage::RecordTable *listOf(const ConflictRow &conflict)
{
    const auto point = conflict.field.find('.');
    return point == std::string::npos
               ? nullptr
               : storage::findRecordTable(std::string(word(conflict.record.type)) + "_" +
                                          conflict.field.substr(0, point));
}

bool takeValue(Decided &decided, const ConflictRow &conflict)
{
    if (conflict.field == storage::profileTable) {
        const auto *text = std::get_if<std::string>(&conflict.lost);
        if (text)
            decided.state.records.profile_copy = *text;
        return text;
    }
    RecordRows rows(decided.state.records, conflict.record);
    auto *cell = cellOf(rows, conflict);
    if (!cell)
        return false;
    *cell = conflict.lost;
    rows.putInto(decided.state.records);
    return true;
}

bool withdraw(Decided &decided, const ConflictRow &conflict, Moment now)
{
    RecordRows rows(decided.state.records, conflict.record);
    const auto &table = storage::tablesOf(conflict.record.type).front();
    const auto on = columnOf(table, "withdrawn_on");
    if (!rows.isThere() || on >= rows.main->size())
        return false;
    (*rows.main)[on] = now.text();
    (*rows.main)[columnOf(table, "withdrawn_why")].emplace<std::string>(
        "Taken back in another copy.");
    rows.putInto(decided.state.records);
    return true;
}

/// Notes under which names the files may lie of photographs that a change puts on record. In the
/// folder there may be others under these, which no record names any more: each photograph gets a
/// name of its own.
void nameFiles(Decided &decided, const Records &before, const storage::JournalRow &leftOut)
{
    if (!leftOut.changeset)
        return;
    static const auto file = columnOf(storage::tablesOf(RecordType::Media).front(), "file");
    const auto content = contentOf(*leftOut.changeset);
    for (const auto &edits : content.records) {
        const auto *own = edits.record.type == RecordType::Media ? edits.own() : nullptr;
        if (const auto *name = own ? storage::textIn(own->after, file) : nullptr)
            decided.files.insert(*name);
    }
    for (const RecordRef ref : decided.touched) {
        const auto *media =
            ref.type == RecordType::Media ? decided.state.records.find(Id<Media>{ref.id}) : nullptr;
        const auto *was = media ? before.find(media->id) : nullptr;
        if (!media)
            continue;
        decided.files.insert(was ? was->file : media->file);
        if (was)
            continue;
        Media renamed = *media;
        renamed.file = ownFileName(*media);
        decided.files.insert(renamed.file);
        decided.state.records.put(RecordType::Media, &renamed);
    }
}

} // namespace

storage::Cell *cellOf(RecordRows &rows, const ConflictRow &conflict)
{
    if (!rows.isThere())
        return nullptr;
    storage::Row *row = &*rows.main;
    const auto *table = &storage::tablesOf(conflict.record.type).front();
    auto field = std::string_view(conflict.field);
    if (const auto *list = listOf(conflict)) {
        auto &items = rows.rowsOf(*list);
        const auto item = items.find(storage::Cell{conflict.item.value_or(0)});
        if (item == items.end())
            return nullptr;
        table = list;
        row = &item->second;
        field.remove_prefix(field.find('.') + 1);
    }
    const auto column = columnOf(*table, field);
    return column < row->size() ? &(*row)[column] : nullptr;
}

bool canBeTaken(const ConflictRow &conflict)
{
    if (conflict.kind != ConflictKind::Value)
        return conflict.record.type != RecordType::Project ||
               conflict.kind == ConflictKind::SetAside;
    const auto *list = listOf(conflict);
    return list ? list->columns()[1].field != nullptr : !conflict.item;
}

Result<Decided, Message> decide(const MergeState &before, std::int64_t id,
                                ConflictDecision decision, Moment now,
                                const storage::JournalRow *leftOut)
{
    const auto found = before.conflicts.find(id);
    if (found == before.conflicts.end() || found->second.decision)
        return Message{"There is no such thing to decide.", {}};
    const auto &conflict = found->second;
    Decided decided{before, {conflict.record}, {}};
    if (decision == ConflictDecision::Taken) {
        const Message byHand{"This cannot be taken over by itself; change the record by hand, then "
                             "keep what stands.",
                             {}};
        if (!canBeTaken(conflict))
            return byHand;
        if (conflict.kind == ConflictKind::SetAside) {
            if (!leftOut)
                return byHand;
            Replay replay(before);
            if (!replay.play(*leftOut))
                return Message{"It still does not fit: {0}",
                               {replay.state().conflicts.at(id).reason}};
            decided = {replay.state(), replay.touched(), {}};
            nameFiles(decided, before.records, *leftOut);
        } else if (conflict.kind == ConflictKind::Existence ? !withdraw(decided, conflict, now)
                                                            : !takeValue(decided, conflict)) {
            return byHand;
        }
    }
    decided.state.conflicts.at(id).decision = decision;
    return decided;
}

} // namespace lastrivet::merge
