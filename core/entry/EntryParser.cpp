// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/EntryParser.h"

#include "core/entry/ClockText.h"
#include "core/entry/DayText.h"
#include "core/entry/LineWords.h"
#include "core/entry/PeopleText.h"

#include <algorithm>
#include <utility>

namespace lastrivet::entry {

namespace {

/// "25:99": written like a time of day, but none.
bool isNoTime(std::string_view word)
{
    const std::size_t colon = word.find(':');
    if ((colon != 1 && colon != 2) || word.size() != colon + 3 ||
        word.find_first_not_of("0123456789:") != std::string_view::npos ||
        word.find(':', colon + 1) != std::string_view::npos)
        return false;
    return !parseClock(word);
}

} // namespace

EntryParser::EntryParser(std::string_view line, const Records &records, const PartFinder &parts,
                         Moment now)
    : m_words(line)
    , m_records(records)
    , m_finder(parts)
    , m_now(now)
{
}

EntryReading EntryParser::read()
{
    if (m_words.count() == 0)
        return {};
    m_session.began = m_now.dayOnly();
    if (m_words.colon())
        readHead();
    else
        readFront();
    settle();
    return m_reading;
}

void EntryParser::readHead()
{
    const std::size_t end = *m_words.colon() + 1;
    std::size_t unknown = end;
    for (std::size_t i = 0; i < end;) {
        const std::size_t taken = std::min(take(i), end - i);
        if (taken == 0) {
            unknown = std::min(unknown, i++);
            continue;
        }
        takeUnknown(unknown, i);
        unknown = end;
        i += taken;
    }
    takeUnknown(unknown, end);
    readNote(end);
}

void EntryParser::readFront()
{
    std::size_t i = 0;
    while (i < m_words.count()) {
        const std::size_t taken = take(i);
        if (taken == 0 && !takeJoined(i))
            break;
        i += std::max<std::size_t>(taken, 1);
    }
    const bool isAwaited = m_parts.empty() || (i > 0 && isJoin(i - 1));
    if (i < m_words.count() && isAwaited)
        m_partSpans.push_back({m_words.beginOf(i), m_words.endOf(m_words.count() - 1)});
    if (i < m_words.count() && looksLikeDay(m_words.folded(i)))
        addNoDay(i);
    readNote(i);
    askOfClock(i);
}

/// Asks of the first time of day in a note without a colon, where nothing says how long it took.
void EntryParser::askOfClock(std::size_t first)
{
    for (std::size_t i = first; i < m_words.count() && !m_session.minutes; ++i) {
        if (!isPartOfClock(i))
            continue;
        addProblem("“{0}” may be a time of day or how long it took; write from 8:00 to 10:30, or "
                   "2h30.",
                   {m_words.folded(i)});
        return;
    }
    askOfTimes(first, m_words.count());
}

/// The beginning of a part's name behind a plus sign; anything else there is reported.
bool EntryParser::takeJoined(std::size_t i)
{
    const bool isBehindPlus = i > 0 && m_words.folded(i - 1) == "+" && !m_parts.empty();
    if (!isBehindPlus)
        return false;
    if (const auto part = m_finder.best(m_words.folded(i))) {
        m_partSpans.push_back({m_words.beginOf(i), m_words.endOf(i)});
        m_parts.push_back(part);
        return true;
    }
    addProblem("No part is called “{0}”; it goes into the note.", {m_words.text(i, i + 1)});
    return false;
}

/// Interprets the words from `i` on; returns how many it used.
std::size_t EntryParser::take(std::size_t i)
{
    if (isJoin(i) || m_words.isDash(i))
        return 1;
    // "9:00 - 11:00" is no nine hours.
    for (const auto taker :
         {&EntryParser::takePart, &EntryParser::takeClock, &EntryParser::takeDuration,
          &EntryParser::takeDay, &EntryParser::takePeople, &EntryParser::takeSteps,
          &EntryParser::takeSquawk, &EntryParser::takeKind}) {
        if (const std::size_t taken = (this->*taker)(i))
            return taken;
    }
    return 0;
}

/// A plus sign between parts, or a comma on its own.
bool EntryParser::isJoin(std::size_t i) const
{
    const std::string &word = m_words.folded(i);
    return word == "+" || word == "&" || word.empty();
}

/// The "and" of "left flap and rib": not that of a part which has it in its name. `end` when there
/// is none.
std::size_t EntryParser::partedAt(std::size_t begin, std::size_t end) const
{
    for (std::size_t i = begin + 1; i + 1 < end; ++i) {
        if (words::isOneOf(m_words.folded(i), words::join) &&
            (m_finder.best(m_words.joined(begin, i)) || m_finder.best(m_words.joined(i + 1, end))))
            return i;
    }
    return end;
}

/// Takes words in front of the colon that nothing else explains: the beginning of a part's name, or
/// unknown.
void EntryParser::takeUnknown(std::size_t begin, std::size_t end)
{
    // An "and" between two parts begins no part's name.
    while (begin < end && words::isOneOf(m_words.folded(begin), words::join))
        ++begin;
    while (begin < end && words::isOneOf(m_words.folded(end - 1), words::join))
        --end;
    if (begin >= end)
        return;
    if (const auto parted = partedAt(begin, end);
        parted < end && !m_finder.best(m_words.joined(begin, end))) {
        takeUnknown(begin, parted);
        takeUnknown(parted + 1, end);
        return;
    }
    m_partSpans.push_back({m_words.beginOf(begin), m_words.endOf(end - 1)});
    const std::string words = m_words.joined(begin, end);
    if (const auto part = m_finder.best(words)) {
        m_parts.push_back(part);
        return;
    }
    std::string shown = m_words.text(begin, end);
    shown.resize(shown.find_last_not_of(",;: ") + 1);
    const std::size_t last = shown.find_last_of(' ') + 1;
    const auto several = m_finder.matches(words, 2);
    if (const std::size_t day = likeDay(begin, end); day < end)
        addNoDay(day);
    else if (m_session.minutes && parseDuration(words))
        addProblem("“{0}” is a second time; it goes into the note.", {shown});
    else if (isNoTime(std::string_view(shown).substr(last)))
        addProblem("“{0}” is no time of day; it goes into the note.", {shown.substr(last)});
    else if (several.empty() && !askOfTimes(begin, end))
        addProblem("No part is called “{0}”; it goes into the note.", {shown});
    else if (!several.empty())
        addProblem("“{0}” may be {1} or {2}; say more of the name.",
                   {shown, spokenName(*m_records.find(several[0])),
                    spokenName(*m_records.find(several[1]))});
    m_unknown.push_back(shown);
}

/// The first of the words that is written like a day; `end` when none is.
std::size_t EntryParser::likeDay(std::size_t begin, std::size_t end) const
{
    while (begin < end && !looksLikeDay(m_words.folded(begin)))
        ++begin;
    return begin;
}

void EntryParser::addNoDay(std::size_t word)
{
    addProblem("“{0}” is no day; write it as 3 Mar 2026 or 2026-03-03. It goes into the note.",
               {m_words.folded(word)});
}

/// Takes what may be written in the note without being part of it: ticks, and without a colon also
/// time and people.
std::size_t EntryParser::takeFromNote(std::size_t i)
{
    std::size_t taken = takeSteps(i);
    if (m_words.colon())
        return taken;
    const std::size_t dash = m_words.isDash(i) ? 1 : 0;
    if (taken == 0 && i + dash == m_noteLength && (taken = takeDuration(i + dash)) > 0)
        taken += dash;
    if (taken == 0 && words::isOneOf(m_words.folded(i), words::with))
        taken = takePeople(i);
    return taken;
}

/// The word at which the duration begins that is meant in a note without a colon: the one that ends
/// the line, else the first; none behind a span of the clock, which says it already. The others are
/// reported. `count()` when there is none.
std::size_t EntryParser::lengthMeant(std::size_t first)
{
    const std::size_t end = m_words.count();
    std::size_t meant = end;
    if (m_words.colon() || (m_session.minutes && !m_isTimedByClock))
        return meant;
    std::vector<std::pair<std::size_t, std::size_t>> lengths;
    for (std::size_t i = first; i < end;) {
        const LengthRead length = lengthAt(i);
        // A "50 h inspection" in the note is no time that was worked.
        const bool isTime = length.isOfOneDay();
        if (isTime) {
            lengths.emplace_back(i, i + length.words);
            const bool isBetter = meant == end || i + length.words == end;
            meant = isBetter && !m_isTimedByClock ? i : meant;
        }
        const bool isWith = !isTime && words::isOneOf(m_words.folded(i), words::with);
        const std::size_t people = isWith ? readPeople(m_words, i, end, m_records).words : 0;
        i += isTime ? length.words : std::max<std::size_t>(people, 1);
    }
    for (const auto &[begin, behind] : lengths) {
        if (begin != meant)
            addProblem("“{0}” is a second time; it goes into the note.",
                       {m_words.joined(begin, behind)});
    }
    return meant;
}

void EntryParser::readNote(std::size_t first)
{
    m_noteLength = lengthMeant(first);
    std::string note;
    std::size_t kept = first;
    const auto keep = [&](std::size_t end) {
        const std::string part = m_words.text(kept, end);
        note += (note.empty() || part.empty() ? "" : " ") + part;
    };
    for (std::size_t i = first; i < m_words.count();) {
        const std::size_t taken = takeFromNote(i);
        if (taken > 0) {
            keep(i);
            kept = i + taken;
        } else if (m_parts.empty() && !m_words.colon()) {
            if (const auto exact = m_finder.longestExact(m_words.allFolded(), i); exact.part)
                m_parts.push_back(exact.part);
        }
        i += std::max<std::size_t>(taken, 1);
    }
    keep(m_words.count());
    // In "riveted, done 12-3" the comma led to what is no part of the note.
    if (kept > first && kept == m_words.count())
        note.resize(note.find_last_not_of(" ,;") + 1);
    m_session.note = note;
}

void EntryParser::addProblem(std::string_view pattern, std::vector<std::string> arguments)
{
    m_reading.problems.push_back({pattern, std::move(arguments)});
}

void EntryParser::addError(std::string_view pattern, std::vector<std::string> arguments)
{
    m_reading.errors.push_back({pattern, std::move(arguments)});
}

} // namespace lastrivet::entry
