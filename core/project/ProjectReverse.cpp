// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/merge/Rewind.h"
#include "core/project/ProjectImplementation.h"
#include "core/project/acts/Withdrawal.h"

#include <algorithm>

namespace lastrivet {

namespace {

Message nothingIn(const JournalLine &line)
{
    return {"“{0}” changed nothing that could be taken back.", {line.label}};
}

/// Why a row of this kind cannot be reversed; nothing when it can.
std::optional<Message> obstacleOf(const JournalLine &line)
{
    if (canBeReversed(line.kind))
        return std::nullopt;
    if (line.kind == ChangeKind::Undo)
        return Message{"This row undid “{0}”; to have that again, make the change again.",
                       {line.label}};
    if (line.kind == ChangeKind::Merge)
        return Message{"A merge is not taken back as one; take back the changes that it brought.",
                       {}};
    return nothingIn(line);
}

/// The change_id of the change that a row, through undo and redo, is about in the end.
const std::string &originalOf(const std::vector<JournalLine> &lines, const JournalLine &row)
{
    const JournalLine *at = &row;
    while (at->kind == ChangeKind::Redo || at->kind == ChangeKind::Undo) {
        const auto undone = std::ranges::find(lines, at->undoes, &JournalLine::change_id);
        // A row names one before it; a damaged journal must not lead in a circle.
        if (undone == lines.end() || undone->seq >= at->seq)
            break;
        at = &*undone;
    }
    return at->change_id;
}

/// Whether the change is undone: the newest row about it is an undo.
bool isUndone(const std::vector<JournalLine> &lines, const JournalLine &row)
{
    const std::string &original = originalOf(lines, row);
    for (auto line = lines.rbegin(); line != lines.rend() && line->seq > row.seq; ++line) {
        const bool isOfIt = line->kind == ChangeKind::Undo || line->kind == ChangeKind::Redo;
        if (isOfIt && originalOf(lines, *line) == original)
            return line->kind == ChangeKind::Undo;
    }
    return false;
}

/// Puts the changed records back as they are in `before`; withdraws those that it does not have.
void becomeAs(Edit &edit, const Records &before, const merge::ChangeContent &content,
              std::string_view why)
{
    std::vector<RecordRef> made;
    for (const auto &[record, rows] : content.records) {
        if (const void *was = before.find(record.type, record.id))
            edit.putAny(record.type, was);
        else
            made.push_back(record);
    }
    acts::withdraw(edit, made, why);
}

} // namespace

Result<ChangeNotice, Refusal> Project::Implementation::reverse(std::int64_t seq,
                                                               std::string_view label)
{
    if (auto message = obstacle())
        return Refusal{{}, std::move(*message)};
    if (const auto *newest = m_history.undoable(); newest && newest->seq == seq)
        return takeBack(UndoHistory::Change(*newest), ChangeKind::Undo);
    const auto lines = m_store->journal.lines();
    const auto row = std::ranges::find(lines, seq, &JournalLine::seq);
    if (row == lines.end())
        return Refusal{{}, {"The journal has no row {0}.", {std::to_string(seq)}}};
    if (auto message = obstacleOf(*row))
        return Refusal{{}, std::move(*message), true};
    if (isUndone(lines, *row))
        return Refusal{{}, {"“{0}” was taken back already.", {row->label}}, true};
    const auto changeset = storage::inverted(m_store->journal.changeset(seq));
    const auto content = merge::contentOf(changeset);
    if (!content.conflicts.empty())
        return Refusal{
            {},
            {"“{0}” decided what a merge had left open; decide it anew there.", {row->label}},
            true};
    // A merge carries over `printed` rows, too, which change nothing.
    if (content.records.empty() && !content.profile)
        return Refusal{{}, nothingIn(*row), true};
    merge::MergeState state{*m_records, {}};
    if (const auto misfit = merge::applyExactly(state, content))
        return conflictRefusal({row->seq, row->change_id, row->label}, {*misfit});
    return change(
        label,
        [&](Edit &edit) {
            if (content.profile)
                edit.useProfile(profileOf(state.records));
            becomeAs(edit, state.records, content, label);
        },
        ChangeKind::Change, row->change_id);
}

} // namespace lastrivet
