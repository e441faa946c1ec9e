// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/merge/ChangeContent.h"
#include "core/merge/MergeState.h"
#include "core/merge/ReplayMemory.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <utility>
#include <vector>

namespace lastrivet::merge {

/// One change at its turn in a replay: what becomes of the records if it is let in.
class Turn {
public:
    /// `memory` outlives it. `change` is the change_id, `undoes` that of the change that it takes
    /// back, if any.
    Turn(const MergeState &before, ReplayMemory &memory, const std::string &change,
         const std::optional<std::string> &undoes, ChangeContent content);

    /// False when the change speaks of something that is not there.
    bool play();

    const MergeState &after() const { return m_after; }
    /// The same, which it forgets: a state of many records takes long to copy, for each change.
    MergeState handOver() { return std::move(m_after); }
    const std::set<RecordRef> &touched() const { return m_touched; }
    /// What the change is about, first of all.
    RecordRef subject() const;
    const std::string &missing() const { return m_missing; }

    /// Makes the memory know what happened; for a change that is let in.
    void remember();
    /// Makes the memory know the values of a change that is left out, which its author saw.
    void rememberLeftOut();
    /// The same of the names of its files, which lie in its author's folder under these: what has
    /// one of them in `records` gets another.
    void leaveNames(Records &records, std::set<RecordRef> &touched);

private:
    using Row = storage::Row;
    using Cell = storage::Cell;

    void findSamePhotos();
    void useOneId();
    void decideWhatStays();
    bool isAsItWasLeft(const RecordEdits &edits) const;
    void keepWhatIsNamed(std::set<RecordRef> &goes);

    bool playRecord(const RecordEdits &edits);
    void takeBack(storage::RecordRows rows);
    void make(storage::RecordRows &rows, const RowEdit &edit);
    void makeAgain(storage::RecordRows &rows, const RowEdit &edit);
    void freeNumber(RecordRef record, Row &row);
    void notePhoto(RecordRef record);
    void freeFileName(RecordRef record, Row &row);
    /// Both return the name that it had.
    static Cell renameFile(RecordRef record, Row &row);
    Cell renameFile(Records &records, RecordRef photo);
    void change(storage::RecordRows &rows, const RowEdit &edit);

    void changeList(storage::RecordRows &rows, const RowEdit &edit);
    void changeSet(storage::RecordRows::Collection &set, const RowEdit &edit);
    void changeKeyed(storage::RecordRows &rows, const RowEdit &edit);
    void changeSequence(storage::RecordRows &rows, const RowEdit &edit);

    /// Gives a field the later value and remembers what that overrides.
    void give(RecordRef record, const std::string &field, std::optional<std::int64_t> item,
              Cell &cell, const std::optional<Cell> &from, const Cell &to);
    bool revive(RecordRef record);
    void reviveNamed();
    void playProfile();
    void playConflicts();
    void playDecision(const storage::ConflictRow &known, const RowEdit &edit);
    /// Another copy had decided otherwise, earlier: the later word stands, and both are told as
    /// something to decide.
    void overrule(const storage::ConflictRow &known, ConflictDecision decision);
    /// False when somebody wrote something else there since.
    bool putDecided(const storage::ConflictRow &about, const Cell &stands, const Cell &loses);

    /// When the change takes back one of two decisions that differ, the other one is what was
    /// decided, and there is nothing to decide between them; false when it is no such change.
    bool settleOverruled(const storage::ConflictRow &known);

    /// Returns the id it gets.
    std::int64_t addConflict(storage::ConflictRow conflict);
    void settleLost(RecordRef record, const std::string &field, std::optional<std::int64_t> item,
                    const Cell &value);
    void later(std::function<void()> note) { m_notes.push_back(std::move(note)); }

    ReplayMemory &m_memory;
    std::string m_change;
    std::optional<std::string> m_undoes;
    ChangeContent m_content;
    MergeState m_after;
    std::set<RecordRef> m_touched;
    /// Records that the change takes back, and that stay nevertheless.
    std::set<RecordRef> m_stays;
    std::vector<std::function<void()>> m_notes;
    std::string m_missing;
};

} // namespace lastrivet::merge
