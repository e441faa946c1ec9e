// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/entry/EntryReading.h"
#include "core/entry/PartFinder.h"
#include "core/records/Records.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lastrivet::entry {

/// Takes a line of the log apart, word by word.
class EntryParser {
public:
    EntryParser(std::string_view line, const Records &records, const PartFinder &parts,
                Moment now);

    EntryReading read();

    /// Which words of the line, [begin, end) in bytes, nothing but a part may explain; in order.
    struct Span {
        std::size_t begin = 0;
        std::size_t end = 0;
    };
    const std::vector<Span> &partSpans() const { return m_partSpans; }

private:
    struct Word {
        std::size_t begin;
        std::size_t end;
    };

    void split();
    void readHead();
    void readFront();
    std::size_t take(std::size_t i);
    std::size_t takeDuration(std::size_t i);
    std::size_t takeDay(std::size_t i);
    std::size_t takeClock(std::size_t i);
    std::size_t takePeople(std::size_t i);
    std::size_t takeSteps(std::size_t i);
    std::size_t takeSquawk(std::size_t i);
    std::size_t takePart(std::size_t i);
    std::size_t addPerson(std::size_t i);
    bool isJoin(std::size_t i) const;
    void takeUnknown(std::size_t begin, std::size_t end);
    void readNote(std::size_t first);
    void addTicks();
    void addProblem(std::string_view pattern, std::vector<std::string> arguments);
    std::string textOf(std::size_t begin, std::size_t end) const;
    std::string joined(std::size_t begin, std::size_t end) const;
    void divide(EntryReading &reading);

    std::string_view m_line;
    const Records &m_records;
    const PartFinder &m_finder;
    Moment m_now;
    std::vector<Word> m_words;
    std::vector<std::string> m_folded;
    /// The word behind which the note begins; none when there is no colon.
    std::optional<std::size_t> m_colon;
    WorkSession m_session;
    bool m_hasKind = false;
    std::vector<Id<Component>> m_parts;
    std::vector<std::string> m_ticks;
    std::vector<std::string> m_unknown;
    std::vector<Span> m_partSpans;
    EntryReading m_reading;
};

} // namespace lastrivet::entry
