// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/support/ProjectBuilder.h"

#include <random>
#include <string>

namespace lastrivet::test {

/// A small random project whose days crowd into two weeks, for properties that hold in any project.
class RandomBuild : public ProjectBuilder {
public:
    explicit RandomBuild(unsigned seed);

    /// A day of those two weeks, sometimes with a time.
    Moment anyMoment();
    template <class Record> Id<Record> any(const IdSet<Record> &ids)
    {
        return ids[m_random() % ids.size()];
    }
    bool chance(unsigned percent) { return m_random() % 100 < percent; }

    IdSet<Component> parts;
    IdSet<Closing> closings;
    IdSet<Step> steps;

private:
    void addParts();
    void addClosings();
    void addWork();
    void addPapers();

    std::mt19937 m_random;
};

} // namespace lastrivet::test
