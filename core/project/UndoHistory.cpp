// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/UndoHistory.h"

#include <utility>

namespace lastrivet {

void UndoHistory::add(const JournalLine &line)
{
    switch (line.kind) {
    case ChangeKind::Change:
    case ChangeKind::Import:
        m_done.push_back({line.seq, line.change_id, line.label});
        join();
        m_undone.clear();
        break;
    case ChangeKind::Undo:
        undo(line);
        break;
    case ChangeKind::Redo:
        redo(line);
        break;
    case ChangeKind::Automatic:
    case ChangeKind::Carried:
        break;
    case ChangeKind::Merge:
    case ChangeKind::Migration:
    case ChangeKind::Printed:
        m_done.clear();
        m_undone.clear();
        // Before the first row, which begins the project, nothing was changed.
        if (line.seq > 1) {
            m_end = line.kind;
            m_endLabel = line.label;
        }
        break;
    }
}

std::optional<Message> UndoHistory::obstacle() const
{
    if (!m_end || undoable())
        return std::nullopt;
    if (*m_end == ChangeKind::Merge)
        return Message{"A merge is not taken back by undo, nor is what was changed before it. The "
                       "journal takes single changes back; or restore a backup from before the "
                       "merge.",
                       {}};
    if (*m_end == ChangeKind::Printed)
        return Message{"“{0}” was printed since: what a paper says is not taken back by undo. The "
                       "journal takes single changes back, by a new one.",
                       {m_endLabel}};
    return Message{"A newer version of the program took the project over since: what was changed "
                   "before is not taken back by undo. The journal takes single changes back.",
                   {}};
}

void UndoHistory::goOnWith(std::int64_t seq, std::string_view act)
{
    m_continued = seq;
    m_act = act;
}

/// The newest change belongs with the one before it, when that was announced.
void UndoHistory::join()
{
    const auto before = m_done.size() < 2 ? 0 : m_done[m_done.size() - 2].seq;
    if (m_continued == 0 || std::exchange(m_continued, 0) != before)
        return;
    m_done.back().goesOn = true;
    for (auto change = m_done.rbegin(); change != m_done.rend(); ++change) {
        change->act = m_act;
        if (!change->goesOn)
            return;
    }
}

std::vector<UndoHistory::Change> UndoHistory::undoableAct() const
{
    std::vector<Change> changes;
    for (auto change = m_done.rbegin(); change != m_done.rend(); ++change) {
        changes.push_back(*change);
        if (!change->goesOn)
            break;
    }
    return changes;
}

void UndoHistory::undo(const JournalLine &line)
{
    if (m_done.empty() || m_done.back().change_id != line.undoes)
        return;
    const Change &done = m_done.back();
    m_undone.push_back(
        {{line.seq, line.change_id, line.label, done.act, done.goesOn}, done.change_id});
    m_done.pop_back();
}

void UndoHistory::redo(const JournalLine &line)
{
    if (m_undone.empty() || m_undone.back().undo.change_id != line.undoes)
        return;
    const Undone &undone = m_undone.back();
    m_done.push_back({line.seq, undone.original, line.label, undone.undo.act, undone.undo.goesOn});
    m_undone.pop_back();
}

} // namespace lastrivet
