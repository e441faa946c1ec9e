// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/project/JournalEntry.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
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
        /// How the act of a person is named that it is a part of; empty when it is all of one.
        std::string act{};
        /// It goes on with the act of the change before it.
        bool goesOn = false;

        const std::string &actLabel() const { return act.empty() ? label : act; }
    };

    /// The next change goes on with the act whose newest change is row `seq`, unless another change
    /// comes between; `act` names all of it. With 0 it is an act of its own. The journal does not
    /// tell, so the two are apart after a restart.
    void goOnWith(std::int64_t seq, std::string_view act);
    /// Takes the next row of the journal into account.
    void add(const JournalLine &line);
    /// What undo takes back; null when there is nothing.
    const Change *undoable() const { return m_done.empty() ? nullptr : &m_done.back(); }
    /// What undo takes back together, the newest change first.
    std::vector<Change> undoableAct() const;
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

    void join();
    void undo(const JournalLine &line);
    void redo(const JournalLine &line);

    std::vector<Change> m_done;
    /// The kind and label of the last row that undo cannot go behind, if there is one.
    std::optional<ChangeKind> m_end;
    std::string m_endLabel;
    std::vector<Undone> m_undone;
    std::int64_t m_continued = 0;
    std::string m_act;
};

} // namespace lastrivet
