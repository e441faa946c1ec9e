// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/merge/History.h"
#include "core/merge/MergeFiles.h"
#include "core/merge/MergeState.h"
#include "core/storage/Opening.h"

namespace lastrivet::merge {

/// A copy of a project as it was at one moment; it is only read.
class CopyRead {
public:
    /// `place` is the copy's folder or its database file; what is unreadable in it is told with it.
    explicit CopyRead(const std::filesystem::path &place);

    const MergeState &state() const { return m_state; }
    const History &history() const { return m_history; }
    CopyOfProject files() const { return {m_folder, &m_state.records}; }

private:
    std::filesystem::path m_folder;
    MergeState m_state;
    History m_history;
};

} // namespace lastrivet::merge
