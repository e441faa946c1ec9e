// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/EntryLine.h"
#include "core/entry/DayText.h"
#include "core/entry/MoveText.h"
#include "core/entry/SplitText.h"
#include "tests/fuzz/Targets.h"
#include "tests/support/WingProject.h"

namespace lastrivet::fuzz {

/// What can be logged took no more than a day.
void entry_line(Input input)
{
    static const test::WingProject wing;
    static const entry::PartFinder parts(wing.records);
    const std::string_view line = textOf(input);
    const auto reading = entry::readEntry(line, wing.records, parts, wing.as_of);
    for (const auto &session : reading.sessions) {
        const Minutes minutes = session.minutes.value_or(Minutes{});
        promised(!reading.errors.empty() || (minutes.count() >= 0 && minutes.count() <= 24 * 60));
        // Read or refused, as long as it ends; so is the move below.
        (void)entry::readSplit(line, session, parts);
    }
    for (std::size_t cursor = 0; cursor <= std::min<std::size_t>(line.size(), 32); ++cursor) {
        const auto words = entry::partWordsAt(line, cursor, wing.records, parts, wing.as_of);
        promised(words.end <= line.size() && words.begin <= words.end);
    }
    (void)entry::readMove(line, parts, wing.as_of);
    entry::parseDayText(line, wing.as_of);
}

} // namespace lastrivet::fuzz
