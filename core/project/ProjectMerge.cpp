// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/merge/CopyRead.h"
#include "core/merge/Decision.h"
#include "core/merge/MergeHistories.h"
#include "core/project/ProjectImplementation.h"
#include "core/project/WorkingEdit.h"
#include "core/records/Designation.h"
#include "core/storage/ConflictTable.h"
#include "core/storage/JournalChanges.h"

#include <algorithm>
#include <fmt/format.h>

namespace lastrivet {

namespace {

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

MergeConflict::Change changeOf(const std::string &id, const storage::Journal &journal)
{
    const auto row = journal.rowOf(id);
    if (!row)
        return {id, {}, {}, 0};
    return {id, row->who.value_or(""), row->label, row->stamp};
}

MergeConflict conflictOf(const storage::ConflictRow &row, const storage::Journal &journal)
{
    const auto *field = fieldOf(row);
    return {row.id,
            row.kind,
            row.record,
            row.field,
            row.item,
            storage::valueText(field, row.kept),
            storage::valueText(field, row.lost),
            changeOf(row.kept_by, journal),
            changeOf(row.lost_by, journal),
            row.reason,
            row.decision,
            merge::canBeTaken(row)};
}

std::string labelOf(std::size_t changes)
{
    return fmt::format("{} {} of another copy merged", changes,
                       changes == 1 ? "change" : "changes");
}

} // namespace

Result<ChangeNotice, Refusal>
Project::Implementation::carryOutWithFiles(const Plan &plan, merge::BroughtFiles &brought,
                                           const std::function<void()> &bring)
{
    const Snapshot before = m_records;
    try {
        bring();
        auto done = carryOut(plan);
        if (!done)
            merge::takeBack(m_folder.root(), brought);
        return done;
    } catch (...) {
        // Who is told of the change may have thrown when it was on record.
        if (m_records == before)
            merge::takeBack(m_folder.root(), brought);
        throw;
    }
}

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

Result<MergeReport, Refusal> Project::Implementation::merge(const std::filesystem::path &other)
{
    if (auto message = obstacle())
        return Refusal{{}, std::move(*message)};
    return storage::withFaults([&]() -> Result<MergeReport, Refusal> {
        const merge::CopyRead copy(other);
        const auto &sql = m_opening.database->sql();
        const auto merged = merge::mergeHistories({*m_records, storage::readConflicts(sql)},
                                                  m_store->journal.rows(), copy.history());
        MergeReport report;
        report.changes = merged.carried.size();
        report.conflicts = undecided(merged.state.conflicts);
        if (merged.carried.empty())
            return report;
        Plan plan{
            ChangeKind::Merge,    labelOf(merged.carried.size()), {}, merged.touched.size(), {},
            &merged.state.records};
        for (const auto *row : merged.carried)
            plan.carried.push_back(*row);
        plan.write = [&]() -> std::optional<Refusal> {
            writeState(merged.state, merged.touched);
            return std::nullopt;
        };
        merge::BroughtFiles brought;
        const auto done = carryOutWithFiles(plan, brought, [&] {
            merge::bringFiles(merged, {m_folder.root(), m_records.get()}, copy.files(), brought);
        });
        if (!done)
            return done.reason();
        report.files = brought.copied.size();
        report.missing_files = std::move(brought.missing);
        report.records = done->touched.size();
        m_greatestId = std::max(m_greatestId, greatestId(*m_records));
        return report;
    });
}

std::vector<MergeConflict> Project::Implementation::conflicts() const
{
    std::vector<MergeConflict> conflicts;
    for (const auto &[id, row] : storage::readConflicts(database().sql()))
        conflicts.push_back(conflictOf(row, m_store->journal));
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
        merge::BroughtFiles brought;
        return carryOutWithFiles(plan, brought, [&] {
            merge::bringDecided(*decided, {m_folder.root(), m_records.get()}, brought);
        });
    });
}

} // namespace lastrivet
