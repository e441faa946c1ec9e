// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"

#include <cstddef>
#include <unordered_map>
#include <vector>

namespace lastrivet::ui {

/// Which photographs show the work of a log entry: those linked to it, else those of its day on its
/// part or step.
class EntryPhotos {
public:
    void read(const Records &records);
    /// Ids of photographs, linked ones first.
    std::vector<Id<Media>> of(const WorkSession &session, const Records &records) const;

private:
    std::unordered_map<std::int64_t, std::vector<Id<Media>>> m_linked;
    std::unordered_map<std::int64_t, std::vector<Id<Media>>> m_byDay;
};

} // namespace lastrivet::ui
