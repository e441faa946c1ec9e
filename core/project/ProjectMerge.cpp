// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/merge/Decision.h"
#include "core/merge/MergeFiles.h"
#include "core/merge/MergeHistories.h"
#include "core/project/ProjectImplementation.h"
#include "core/project/WorkingEdit.h"
#include "core/records/Designation.h"
#include "core/storage/ConflictTable.h"
#include "core/storage/JournalChanges.h"

#include <algorithm>
#include <fmt/format.h>
#include <unordered_map>

namespace lastrivet {

namespace {

namespace fs = std::filesystem;

/// Another copy of the project, as it was at one moment.
class OtherCopy {
public:
    explicit OtherCopy(const fs::path &place)
        : m_folder(fs::is_regular_file(place) ? place.parent_path() : place)
        , m_opening(storage::openCopyOf(
              fs::is_regular_file(place) ? place : storage::ProjectFolder(place).database()))
        , m_records(storage::RecordReader(m_opening.database->sql()).readAll())
        , m_history(storage::Journal(*m_opening.database).rows())
    {
    }

    merge::CopyOfProject files() const { return {m_folder, &m_records}; }
    const merge::History &history() const { return m_history; }

private:
    fs::path m_folder;
    storage::Opening m_opening;
    Records m_records;
    merge::History m_history;
};

std::vector<std::int64_t> undecided(const storage::ConflictRows &conflicts)
{
    std::vector<std::int64_t> ids;
    for (const auto &[id, conflict] : conflicts) {
        if (!conflict.decision)
            ids.push_back(id);
    }
    return ids;
}

const Field *fieldOf(const storage::ConflictRow &conflict)
{
    const auto &description = describe(conflict.record.type);
    const auto point = conflict.field.find('.');
    const auto *field = description.find(conflict.field.substr(0, point));
    if (!field || point == std::string::npos || !field->rows)
        return field;
    const auto fields = field->rows->fields;
    const auto name = std::string_view(conflict.field).substr(point + 1);
    const auto found = std::find_if(fields.begin(), fields.end(),
                                    [&](const Field &each) { return each.name == name; });
    return found == fields.end() ? nullptr : &*found;
}

using Entries = std::unordered_map<std::string, const JournalEntry *>;

MergeConflict::Change changeOf(const std::string &id, const Entries &entries)
{
    const auto found = entries.find(id);
    if (found == entries.end())
        return {id, {}, {}, 0};
    return {id, found->second->who, found->second->label, found->second->stamp};
}

MergeConflict conflictOf(const storage::ConflictRow &row, const Entries &entries)
{
    const auto *field = fieldOf(row);
    return {row.id,
            row.kind,
            row.record,
            row.field,
            row.item,
            storage::valueText(field, row.kept),
            storage::valueText(field, row.lost),
            changeOf(row.kept_by, entries),
            changeOf(row.lost_by, entries),
            row.reason,
            row.decision,
            merge::canBeTaken(row)};
}

} // namespace

void Project::Implementation::writeState(const merge::MergeState &after,
                                         const std::set<RecordRef> &touched)
{
    const Snapshot before = m_records;
    for (const auto ref : touched) {
        const void *was = before->find(ref.type, ref.id);
        const void *is = after.records.find(ref.type, ref.id);
        if (was || is)
            m_store->writer.write(ref.type, was, is);
    }
    if (after.records.profile_copy != before->profile_copy)
        m_store->writer.writeProfile(after.records.profile_copy);
    const auto &sql = m_opening.database->sql();
    const auto known = storage::readConflicts(sql);
    for (const auto &[id, conflict] : known) {
        if (!after.conflicts.contains(id))
            storage::eraseConflict(sql, id);
    }
    for (const auto &[id, conflict] : after.conflicts) {
        const auto was = known.find(id);
        if (was == known.end() || was->second != conflict)
            storage::writeConflict(sql, conflict);
    }
}

Result<MergeReport, Refusal> Project::Implementation::merge(const fs::path &other)
{
    if (auto message = obstacle())
        return Refusal{{}, std::move(*message)};
    return storage::withFaults([&]() -> Result<MergeReport, Refusal> {
        const OtherCopy copy(other);
        const auto &sql = m_opening.database->sql();
        const auto merged = merge::mergeHistories({*m_records, storage::readConflicts(sql)},
                                                  m_store->journal.rows(), copy.history());
        MergeReport report;
        report.changes = merged.carried.size();
        report.conflicts = undecided(merged.state.conflicts);
        if (merged.carried.empty())
            return report;
        auto brought = merge::bringFiles(merged.state.records, {m_folder.root(), m_records.get()},
                                         copy.files());
        report.files = brought.copied;
        report.missing_files = std::move(brought.missing);
        Plan plan{ChangeKind::Merge,
                  fmt::format("{} changes of another copy merged", merged.carried.size()),
                  {},
                  merged.touched.size(),
                  {},
                  &merged.state.records};
        for (const auto *row : merged.carried)
            plan.carried.push_back(*row);
        plan.write = [&]() -> std::optional<Refusal> {
            writeState(merged.state, merged.touched);
            return std::nullopt;
        };
        auto done = carryOut(plan);
        if (!done)
            return done.reason();
        report.records = done->touched.size();
        m_greatestId = std::max(m_greatestId, greatestId(*m_records));
        return report;
    });
}

std::vector<MergeConflict> Project::Implementation::conflicts() const
{
    const auto rows = storage::readConflicts(database().sql());
    if (rows.empty())
        return {};
    const auto journal = m_store->journal.entries();
    Entries entries;
    for (const auto &entry : journal)
        entries.emplace(entry.change_id, &entry);
    std::vector<MergeConflict> conflicts;
    for (const auto &[id, row] : rows)
        conflicts.push_back(conflictOf(row, entries));
    return conflicts;
}

Result<ChangeNotice, Refusal> Project::Implementation::decide(std::int64_t conflict,
                                                              ConflictDecision decision)
{
    if (auto message = obstacle())
        return Refusal{{}, std::move(*message)};
    return storage::withFaults([&]() -> Result<ChangeNotice, Refusal> {
        merge::MergeState state{*m_records, storage::readConflicts(m_opening.database->sql())};
        const auto found = state.conflicts.find(conflict);
        std::optional<storage::JournalRow> leftOut;
        if (found != state.conflicts.end() && found->second.kind == ConflictKind::SetAside)
            leftOut = m_store->journal.rowOf(found->second.lost_by);
        const auto decided =
            merge::decide(state, conflict, decision, now(), leftOut ? &*leftOut : nullptr);
        if (!decided)
            return Refusal{{}, decided.reason()};
        const auto about = designation(*m_records, found->second.record);
        Plan plan{ChangeKind::Change,
                  decision == ConflictDecision::Kept
                      ? fmt::format("After the merge: what stands in {} stays", about)
                      : fmt::format("After the merge: the other copy's word on {} taken", about),
                  {},
                  decided->touched.size(),
                  {}};
        plan.write = [&]() -> std::optional<Refusal> {
            writeState(decided->state, decided->touched);
            return std::nullopt;
        };
        return carryOut(plan);
    });
}

} // namespace lastrivet
