// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Moment.h"
#include "core/project/Project.h"

#include <optional>
#include <unordered_map>
#include <vector>

namespace lastrivet::entry {

/// On which day each log entry was written down, as the journal tells it, in this copy of the
/// project or in one that was merged. Imported entries have none: this journal does not know when
/// they were first written down.
class CreationDays {
public:
    /// Reads nothing yet; `project` outlives this.
    explicit CreationDays(const Project &project);

    /// Reads up to `rows` more journal rows; false when there was nothing left to read.
    bool readSome(std::size_t rows);
    /// Takes in a change that was just made.
    void apply(const ChangeNotice &notice);

    std::optional<Moment> createdOn(Id<WorkSession> session) const;
    /// Written down more than `allowedDays` after the day it speaks of.
    bool isLate(const WorkSession &session, std::int64_t allowedDays) const;

private:
    void note(std::int64_t session, Moment day);

    const Project &m_project;
    std::vector<JournalLine> m_rows;
    std::size_t m_next = 0;
    bool m_isListed = false;
    std::unordered_map<std::int64_t, Moment> m_days;
};

} // namespace lastrivet::entry
