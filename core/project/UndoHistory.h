// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/project/JournalEntry.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace lastrivet {

/// What can be undone and redone, worked out from the journal alone, so that it outlives a restart.
class UndoHistory {
public:
    struct Change {
        /// The row of the journal whose changeset is to be inverted.
        std::int64_t seq = 0;
        /// The change_id that the row of the undo or redo will name in `undoes`.
        std::string change_id;
        std::string label;
    };

    /// Takes the next row of the journal into account.
    void add(const JournalLine &line);
    /// What undo takes back; null when there is nothing.
    const Change *undoable() const { return m_done.empty() ? nullptr : &m_done.back(); }
    /// As `Project::undoObstacle`.
    std::optional<Message> obstacle() const;
    /// The undo that redo takes back; null when there is none.
    const Change *redoable() const { return m_undone.empty() ? nullptr : &m_undone.back().undo; }

private:
    struct Undone {
        Change undo;
        /// The change_id of the change that was undone.
        std::string original;
    };

    void undo(const JournalLine &line);
    void redo(const JournalLine &line);

    std::vector<Change> m_done;
    /// The kind and label of the last row that undo cannot go behind, if there is one.
    std::optional<ChangeKind> m_end;
    std::string m_endLabel;
    std::vector<Undone> m_undone;
};

} // namespace lastrivet
