// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/merge/MergeState.h"
#include "core/merge/ReplayMemory.h"
#include "core/profiles/Profile.h"
#include "core/storage/Journal.h"

#include <set>

namespace lastrivet::merge {

/// Plays the changes of several copies onto what they have in common, oldest first.
///
/// Field by field the later change wins; what lost to it is remembered as a conflict. A record that
/// one copy took back and another went on with stays. Items of sets are single facts. A change that
/// breaks a rule at its turn is left out whole. The outcome depends on the changes alone, so it is
/// the same in whichever copy they are played.
class Replay {
public:
    explicit Replay(MergeState base);

    /// `change` is not older than those before it. False when it was left out. Throws
    /// `UnreadableInput` for a damaged row.
    bool play(const storage::JournalRow &change);

    const MergeState &state() const { return m_state; }
    const std::set<RecordRef> &touched() const { return m_touched; }

private:
    /// Forgets a change that was left out, when its author took it back; false when it is none.
    bool isTakenBack(const storage::JournalRow &change);
    const Profile &profileOf(const Records &records);

    MergeState m_state;
    ReplayMemory m_memory;
    std::set<RecordRef> m_touched;
    std::string m_profileText;
    Profile m_profile;
};

} // namespace lastrivet::merge
