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

/// What can be undone and redone, told from the journal alone; so it is the same after a restart.
class UndoHistory {
public:
    struct Change {
        /// The row whose changeset, inverted, takes it back.
        std::int64_t seq = 0;
        /// What the row that takes it back names.
        std::string change_id;
        std::string label;
    };

    /// Takes the next row of the journal into account.
    void add(const JournalLine &line);
    /// Null when there is nothing.
    const Change *undoable() const { return m_done.empty() ? nullptr : &m_done.back(); }
    /// Why nothing can be undone though something was changed, and what can be done in its place;
    /// nothing where something can be undone, or nothing was changed.
    std::optional<Message> bar() const;
    const Change *redoable() const { return m_undone.empty() ? nullptr : &m_undone.back().undo; }

private:
    struct Undone {
        Change undo;
        std::string original;
    };

    void undo(const JournalLine &line);
    void redo(const JournalLine &line);

    std::vector<Change> m_done;
    /// What came last of all that cannot be taken back.
    std::optional<ChangeKind> m_end;
    std::string m_endLabel;
    std::vector<Undone> m_undone;
};

} // namespace lastrivet
