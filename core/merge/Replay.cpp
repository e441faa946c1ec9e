// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/merge/Replay.h"

#include "core/base/Error.h"
#include "core/merge/ConflictId.h"
#include "core/merge/Turn.h"
#include "core/profiles/ProfileJson.h"
#include "core/profiles/ProfileLibrary.h"
#include "core/records/invariants/Invariants.h"

#include <algorithm>
#include <optional>

namespace lastrivet::merge {

namespace {

/// The first rule that the records break after a change and did not break before it.
std::optional<Violation> newlyBroken(const Records &before, const Records &after,
                                     const Profile &profile, const std::set<RecordRef> &touched)
{
    const std::vector<RecordRef> refs(touched.begin(), touched.end());
    auto broken = violations(after, profile, refs, before);
    if (broken.empty())
        return std::nullopt;
    const auto known = violations(before, profile, refs);
    const auto isNew = [&](const Violation &violation) {
        return std::find(known.begin(), known.end(), violation) == known.end();
    };
    const auto first = std::find_if(broken.begin(), broken.end(), isNew);
    return first == broken.end() ? std::nullopt : std::optional(*first);
}

bool makesRecords(const ChangeContent &content)
{
    return std::any_of(content.records.begin(), content.records.end(), [](const auto &edits) {
        return edits.own() && edits.own()->kind == RowChange::Insert;
    });
}

bool takesBackRecords(const ChangeContent &content)
{
    return std::any_of(content.records.begin(), content.records.end(),
                       [](const auto &edits) { return edits.takesBack(); });
}

} // namespace

Replay::Replay(MergeState base)
    : m_state(std::move(base))
{
    for (const Media &media : m_state.records.media)
        m_memory.photos.note(media);
}

bool Replay::play(const storage::JournalRow &change)
{
    if (!change.changeset || isTakenBack(change))
        return true;
    ChangeContent content = contentOf(*change.changeset);
    const bool isMaking = makesRecords(content);
    Turn turn(m_state, m_memory, change.change_id, change.undoes, std::move(content));
    std::string reason;
    if (!turn.play()) {
        reason = turn.missing();
    } else if (const auto broken = newlyBroken(m_state.records, turn.after().records,
                                               profileOf(turn.after().records), turn.touched())) {
        reason = english(broken->message);
    }
    if (!reason.empty()) {
        turn.rememberLeftOut();
        turn.leaveNames(m_state.records, m_touched);
        m_memory.setAside.insert_or_assign(change.change_id, isMaking);
        storage::ConflictRow conflict;
        conflict.kind = ConflictKind::SetAside;
        conflict.record = turn.subject();
        conflict.lost_by = change.change_id;
        conflict.reason = std::move(reason);
        conflict.id = conflictId(conflict);
        m_state.conflicts.insert_or_assign(conflict.id, std::move(conflict));
        return false;
    }
    turn.remember();
    m_touched.insert(turn.touched().begin(), turn.touched().end());
    m_state = turn.handOver();
    return true;
}

bool Replay::isTakenBack(const storage::JournalRow &change)
{
    const auto undone =
        change.undoes ? m_memory.setAside.find(*change.undoes) : m_memory.setAside.end();
    if (undone == m_memory.setAside.end())
        return false;
    // A change of its own withdraws what was made, and leaves it on record in its author's copy.
    if (undone->second && !takesBackRecords(contentOf(*change.changeset)))
        return false;
    m_memory.setAside.erase(undone);
    std::erase_if(m_state.conflicts, [&](const auto &entry) {
        return entry.second.kind == ConflictKind::SetAside &&
               entry.second.lost_by == *change.undoes;
    });
    return true;
}

const Profile &Replay::profileOf(const Records &records)
{
    const auto &text =
        records.profile_copy.empty() ? records.project.profile : records.profile_copy;
    if (text == m_profileText)
        return m_profile;
    if (records.profile_copy.empty()) {
        m_profile = ProfileLibrary::standard().profile(text);
    } else {
        auto read = readProfile(text);
        if (!read)
            throw UnreadableInput(read.reason().sentenceOfCopy());
        m_profile = std::move(*read);
    }
    m_profileText = text;
    return m_profile;
}

} // namespace lastrivet::merge
