// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/SquawkLine.h"
#include "core/entry/FindingLines.h"
#include "tests/fuzz/Targets.h"
#include "tests/support/WingProject.h"

namespace lastrivet::fuzz {

/// One squawk as it is typed, and the same text as the pasted sheet of an inspector.
void squawk_line(Input input)
{
    static const test::WingProject wing;
    static const entry::PartFinder parts(wing.records);
    const std::string_view line = textOf(input);
    const entry::SquawkSurroundings surroundings{wing.as_of, wing.rib, {}};
    const auto reading = entry::readSquawk(line, parts, surroundings);
    promised(reading.problem || !reading.squawk.title.empty());
    for (std::size_t cursor = 0; cursor <= std::min<std::size_t>(line.size(), 32); ++cursor) {
        const auto words = entry::squawkPartWordsAt(line, cursor, parts, surroundings);
        promised(words.end <= line.size() && words.begin <= words.end);
    }
    entry::readFindings(line, parts, wing.as_of);
}

} // namespace lastrivet::fuzz
