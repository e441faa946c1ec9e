// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"
#include "tests/support/RandomRecords.h"

#include <map>
#include <random>
#include <string>

namespace lastrivet::test {

/// Does to a project what people do to it, at random, over all record types and fields: makes and
/// changes records, takes back, brings back, decides what merges left to decide. What the rules
/// refuse is refused.
class RandomEdits {
public:
    explicit RandomEdits(unsigned seed);

    void act(Project &project);

    /// How often each thing came about; "changed person" for each record type.
    std::map<std::string, int> counts;

private:
    void change(Project &project);
    void reverse(Project &project);
    void decide(Project &project);
    void edit(Edit &edit, RecordType type);
    void fill(const Records &records, const Field &field, void *record, const void *donor);
    void fillRows(const Records &records, const Field &field, void *record, const void *donor);
    std::int64_t anyOf(const Records &records, RecordType type);
    std::int64_t below(std::int64_t bound);
    bool chance(std::int64_t percent) { return below(100) < percent; }

    std::mt19937 m_random;
    RandomRecords m_donors;
};

} // namespace lastrivet::test
