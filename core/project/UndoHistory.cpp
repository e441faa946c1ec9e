// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/UndoHistory.h"

namespace lastrivet {

void UndoHistory::add(const JournalEntry &entry)
{
    switch (entry.kind) {
    case ChangeKind::Change:
    case ChangeKind::Import:
        m_done.push_back({entry.seq, entry.change_id, entry.label});
        m_undone.clear();
        break;
    case ChangeKind::Undo:
        undo(entry);
        break;
    case ChangeKind::Redo:
        redo(entry);
        break;
    case ChangeKind::Automatic:
    case ChangeKind::Carried:
        break;
    case ChangeKind::Merge:
    case ChangeKind::Migration:
    case ChangeKind::Printed:
        m_done.clear();
        m_undone.clear();
        break;
    }
}

void UndoHistory::undo(const JournalEntry &entry)
{
    if (m_done.empty() || m_done.back().change_id != entry.undoes)
        return;
    m_undone.push_back({{entry.seq, entry.change_id, entry.label}, m_done.back().change_id});
    m_done.pop_back();
}

void UndoHistory::redo(const JournalEntry &entry)
{
    if (m_undone.empty() || m_undone.back().undo.change_id != entry.undoes)
        return;
    m_done.push_back({entry.seq, m_undone.back().original, entry.label});
    m_undone.pop_back();
}

} // namespace lastrivet
