// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Minutes.h"
#include "core/readiness/PartTree.h"
#include "core/records/Records.h"

#include <unordered_map>
#include <vector>

namespace lastrivet::credit {

/// What is on record to show that the builder did a task.
struct TaskEvidence {
    /// Pictures named by the row, and those of the builder at work on its parts or below them, by
    /// the day on which they were taken, or else taken in.
    std::vector<Id<Media>> pictures;
    /// Log entries of its parts and what is below them, by day.
    std::vector<Id<WorkSession>> sessions;
    /// What the clock says of them.
    Minutes minutes{0};
};

/// Finds the evidence of tasks; looks through pictures and log once.
class EvidenceFinder {
public:
    /// `records` outlives it.
    explicit EvidenceFinder(const Records &records);

    TaskEvidence of(const CreditTask &task) const;

private:
    const Records &m_records;
    readiness::PartTree m_tree;
    std::unordered_map<Id<Component>, std::vector<Id<Media>>> m_pictures;
    std::unordered_map<Id<Component>, std::vector<Id<WorkSession>>> m_sessions;
};

} // namespace lastrivet::credit
