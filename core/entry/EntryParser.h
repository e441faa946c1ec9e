// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/entry/DurationText.h"
#include "core/entry/EntryReading.h"
#include "core/entry/EntryWords.h"
#include "core/entry/PartFinder.h"
#include "core/records/Records.h"

#include <string>
#include <string_view>
#include <vector>

namespace lastrivet::entry {

/// Takes a line of the log apart, word by word.
class EntryParser {
public:
    EntryParser(std::string_view line, const Records &records, const PartFinder &parts, Moment now);

    EntryReading read();

    /// Words of the line, [begin, end) in bytes, that can only name a part; in order.
    struct Span {
        std::size_t begin = 0;
        std::size_t end = 0;
    };
    const std::vector<Span> &partSpans() const { return m_partSpans; }

private:
    void readHead();
    void readFront();
    void readNote(std::size_t first);
    void askOfClock(std::size_t first);
    std::size_t take(std::size_t i);
    bool isPartOfClock(std::size_t i) const;
    LengthRead lengthAt(std::size_t i) const;
    void askOfCount(std::size_t i, std::size_t count);
    bool askOfTimes(std::size_t begin, std::size_t end);
    std::size_t takeDuration(std::size_t i);
    std::size_t takeDay(std::size_t i);
    bool isYear(std::size_t i) const;
    std::size_t takeClock(std::size_t i);
    std::size_t takePeople(std::size_t i);
    std::size_t behindName(std::size_t next, std::size_t end) const;
    std::size_t takeSteps(std::size_t i);
    std::size_t takeSquawk(std::size_t i);
    std::size_t takePart(std::size_t i);
    std::size_t takeKind(std::size_t i);
    std::size_t takeFromNote(std::size_t i);
    std::size_t lengthMeant(std::size_t first);
    bool takeJoined(std::size_t i);
    bool isJoin(std::size_t i) const;
    std::size_t partedAt(std::size_t begin, std::size_t end) const;
    void takeUnknown(std::size_t begin, std::size_t end);
    void addUnknownPerson(std::size_t begin, const std::string &name);
    void addTicks();
    void settle();
    void settleTime();
    std::size_t likeDay(std::size_t begin, std::size_t end) const;
    void addNoDay(std::size_t word);
    void warnOfLongAgo();
    void addProblem(std::string_view pattern, std::vector<std::string> arguments);
    void addError(std::string_view pattern, std::vector<std::string> arguments);

    EntryWords m_words;
    const Records &m_records;
    const PartFinder &m_finder;
    Moment m_now;
    WorkSession m_session;
    bool m_hasKind = false;
    /// The minutes come from a span of the clock; a duration overrules it, since there may have
    /// been breaks.
    bool m_isTimedByClock = false;
    /// The word of the note at which a duration begins that is taken out of the note.
    std::size_t m_noteLength = 0;
    std::vector<Id<Component>> m_parts;
    std::vector<std::string> m_ticks;
    std::vector<std::string> m_unknown;
    std::vector<Span> m_partSpans;
    EntryReading m_reading;
};

} // namespace lastrivet::entry
