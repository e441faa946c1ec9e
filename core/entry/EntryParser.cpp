// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/EntryParser.h"

#include "core/entry/DayText.h"
#include "core/entry/DurationText.h"
#include "core/entry/Fold.h"
#include "core/entry/KindOfWork.h"
#include "core/entry/StepFinder.h"

#include <algorithm>

namespace lastrivet::entry {

namespace {

constexpr std::string_view blanks = " \t\n";

std::string trimmed(std::string_view text)
{
    const auto begin = text.find_first_not_of(blanks);
    if (begin == std::string_view::npos)
        return {};
    return std::string(text.substr(begin, text.find_last_not_of(blanks) - begin + 1));
}

/// The word without the comma or colon at its end.
std::string bare(std::string_view word)
{
    const auto last = word.find_last_not_of(",;:");
    return folded(last == std::string_view::npos ? word : word.substr(0, last + 1));
}

} // namespace

EntryParser::EntryParser(std::string_view line, const Records &records, const PartFinder &parts,
                         Moment now)
    : m_line(line)
    , m_records(records)
    , m_finder(parts)
    , m_now(now)
{
    split();
}

void EntryParser::split()
{
    for (std::size_t begin = m_line.find_first_not_of(blanks); begin != std::string_view::npos;) {
        const auto end = std::min(m_line.find_first_of(blanks, begin), m_line.size());
        const auto word = m_line.substr(begin, end - begin);
        if (word.ends_with(':') && !m_colon)
            m_colon = m_words.size();
        m_words.push_back({begin, end});
        m_folded.push_back(bare(word));
        begin = m_line.find_first_not_of(blanks, end);
    }
}

std::string EntryParser::textOf(std::size_t begin, std::size_t end) const
{
    if (begin >= end)
        return {};
    return trimmed(m_line.substr(m_words[begin].begin, m_words[end - 1].end - m_words[begin].begin));
}

std::string EntryParser::joined(std::size_t begin, std::size_t end) const
{
    std::string text;
    for (std::size_t i = begin; i < end; ++i)
        text += (i == begin ? "" : " ") + m_folded[i];
    return text;
}

EntryReading EntryParser::read()
{
    if (m_words.empty())
        return {};
    m_session.began = m_now.dayOnly();
    if (m_colon)
        readHead();
    else
        readFront();
    addTicks();
    for (const std::string &words : m_unknown)
        m_session.note = m_session.note.empty() ? words : words + ": " + m_session.note;
    if (!m_hasKind && m_session.squawk_id) {
        m_session.kind = WorkKind::Rework;
    } else if (!m_hasKind) {
        const auto kind = kindGuessed(foldedWords(m_session.note));
        m_session.kind = kind.value_or(WorkKind::Other);
        m_reading.kind_is_guessed = kind.has_value();
    }
    divide(m_reading);
    return m_reading;
}

void EntryParser::readHead()
{
    const std::size_t end = *m_colon + 1;
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
    while (i < m_words.size()) {
        const std::size_t taken = take(i);
        if (taken == 0)
            break;
        i += taken;
    }
    if (i < m_words.size() && m_parts.empty())
        m_partSpans.push_back({m_words[i].begin, m_words.back().end});
    readNote(i);
}

/// How many words from `i` on something was made of.
std::size_t EntryParser::take(std::size_t i)
{
    if (isJoin(i))
        return 1;
    for (const auto taker : {&EntryParser::takePart, &EntryParser::takeDuration,
                             &EntryParser::takeDay, &EntryParser::takeClock,
                             &EntryParser::takePeople, &EntryParser::takeSteps,
                             &EntryParser::takeSquawk}) {
        if (const std::size_t taken = (this->*taker)(i))
            return taken;
    }
    if (const auto kind = kindNamed(m_folded[i])) {
        m_session.kind = *kind;
        m_hasKind = true;
        return 1;
    }
    return 0;
}

/// A plus sign between parts, or a comma on its own.
bool EntryParser::isJoin(std::size_t i) const
{
    return m_folded[i] == "+" || m_folded[i] == "&" || m_folded[i].empty() || m_folded[i] == ",";
}

std::size_t EntryParser::takeDuration(std::size_t i)
{
    if (m_session.minutes)
        return 0;
    for (std::size_t count = std::min<std::size_t>(4, m_words.size() - i); count > 0; --count) {
        if (const auto minutes = parseDuration(joined(i, i + count))) {
            m_session.minutes = minutes;
            return count;
        }
    }
    return 0;
}

std::size_t EntryParser::takeDay(std::size_t i)
{
    const auto read = readDay(m_folded, i, m_now);
    if (!read)
        return 0;
    const bool keepsTime = m_session.began->hasTime() && !read->day.hasTime();
    m_session.began = keepsTime
                          ? Moment::ofTime(read->day.day(), m_session.began->minuteOfDay())
                          : read->day;
    return read->words;
}

std::size_t EntryParser::takeClock(std::size_t i)
{
    const bool isNamed = m_folded[i] == "at" || m_folded[i] == "from";
    if (isNamed && i + 1 >= m_words.size())
        return 0;
    const std::string &word = m_folded[isNamed ? i + 1 : i];
    const std::size_t dash = word.find('-');
    const auto from = parseClock(std::string_view(word).substr(0, dash));
    if (!from || (!isNamed && dash == std::string::npos))
        return 0;
    if (dash != std::string::npos) {
        const auto to = parseClock(std::string_view(word).substr(dash + 1));
        if (!to || *to == *from)
            return 0;
        constexpr int day = 24 * 60; // work past midnight ends on the next day
        m_session.minutes = Minutes{(*to - *from + day) % day};
    }
    m_session.began = Moment::ofTime(m_session.began->day(), *from);
    return isNamed ? 2 : 1;
}

std::size_t EntryParser::takePeople(std::size_t i)
{
    const bool isBy = m_folded[i] == "by";
    if (m_folded[i] != "with" && !isBy)
        return 0;
    std::vector<WorkSession::Worker> before = m_session.workers;
    if (m_session.workers.empty() && !isBy && m_records.project.builder_id)
        m_session.workers.push_back({m_records.project.builder_id});
    std::size_t taken = 1;
    while (i + taken < m_words.size()) {
        const bool isMore = taken > 1 && (m_folded[i + taken] == "and" || isJoin(i + taken));
        const std::size_t at = i + taken + (isMore ? 1 : 0);
        const std::size_t name = at < m_words.size() ? addPerson(at) : 0;
        if (name == 0)
            break;
        taken += name + (isMore ? 1 : 0);
    }
    if (taken == 1)
        m_session.workers = std::move(before);
    return taken > 1 ? taken : 0;
}

/// The number of words that name one person, whole or by the first name alone.
std::size_t EntryParser::addPerson(std::size_t i)
{
    std::size_t longest = 0;
    Id<Person> found;
    for (const Person &person : m_records.people) {
        const auto name = foldedWords(person.name);
        if (person.withdrawn_on || name.empty() || m_folded[i] != name.front())
            continue;
        const std::size_t left = m_words.size() - i;
        const bool isWhole = name.size() <= left && std::equal(name.begin(), name.end(),
                                                               m_folded.begin() + std::ptrdiff_t(i));
        const std::size_t count = isWhole ? name.size() : 1;
        if (count > longest) {
            longest = count;
            found = person.id;
        }
    }
    const auto isFound = [&](const WorkSession::Worker &worker) {
        return worker.person_id == found;
    };
    if (found && std::ranges::none_of(m_session.workers, isFound))
        m_session.workers.push_back({found});
    return longest;
}

std::size_t EntryParser::takeSteps(std::size_t i)
{
    if (m_folded[i] != "done")
        return 0;
    std::size_t taken = 1;
    while (i + taken < m_words.size()) {
        const std::string &word = m_folded[i + taken];
        const bool isMark = word.find_first_of("0123456789") != std::string::npos;
        if (!isMark || parseDuration(word))
            break;
        m_ticks.push_back(word);
        ++taken;
    }
    return taken > 1 ? taken : 0;
}

std::size_t EntryParser::takeSquawk(std::size_t i)
{
    const bool isWord = m_folded[i] == "squawk" || m_folded[i] == "sq";
    const bool isSign = m_folded[i].starts_with('#') && m_folded[i].size() > 1;
    if (!isSign && (!isWord || i + 1 >= m_words.size()))
        return 0;
    const std::string number = isSign ? m_folded[i].substr(1) : m_folded[i + 1];
    for (const Squawk &squawk : m_records.squawks) {
        if (!squawk.withdrawn_on && folded(squawk.number) == number) {
            m_session.squawk_id = squawk.id;
            return isSign ? 1 : 2;
        }
    }
    return 0;
}

std::size_t EntryParser::takePart(std::size_t i)
{
    const auto exact = m_finder.longestExact(m_folded, i);
    if (!exact.part)
        return 0;
    // "Rework" may be a part's name, but a single word that is a kind of work is meant as one.
    if (exact.words == 1 && kindNamed(m_folded[i]))
        return 0;
    m_parts.push_back(exact.part);
    m_partSpans.push_back({m_words[i].begin, m_words[i + exact.words - 1].end});
    return exact.words;
}

/// Words in front of the colon that are nothing else: the beginning of a part's name, or a riddle.
void EntryParser::takeUnknown(std::size_t begin, std::size_t end)
{
    if (begin >= end)
        return;
    m_partSpans.push_back({m_words[begin].begin, m_words[end - 1].end});
    const std::string words = joined(begin, end);
    if (const auto part = m_finder.best(words)) {
        m_parts.push_back(part);
        return;
    }
    const auto several = m_finder.matches(words, 2);
    const std::string shown = trimmed(bare(textOf(begin, end)));
    if (several.empty())
        addProblem("No part is called “{0}”; it goes into the note.", {shown});
    else
        addProblem("“{0}” may be {1} or {2}; say more of the name.",
                   {shown, spokenName(*m_records.find(several[0])),
                    spokenName(*m_records.find(several[1]))});
    m_unknown.push_back(shown);
}

/// The note, without the duration, the people and the ticks that stand in it.
void EntryParser::readNote(std::size_t first)
{
    std::string note;
    std::size_t kept = first;
    const auto keep = [&](std::size_t end) {
        const std::string part = textOf(kept, end);
        note += (note.empty() || part.empty() ? "" : " ") + part;
    };
    for (std::size_t i = first; i < m_words.size();) {
        std::size_t taken = takeSteps(i);
        if (taken == 0 && !m_colon)
            taken = takeDuration(i);
        if (taken == 0 && !m_colon && m_folded[i] == "with")
            taken = takePeople(i);
        if (taken > 0) {
            keep(i);
            kept = i + taken;
        } else if (m_parts.empty() && !m_colon) {
            if (const auto exact = m_finder.longestExact(m_folded, i); exact.part)
                m_parts.push_back(exact.part);
        }
        i += std::max<std::size_t>(taken, 1);
    }
    keep(m_words.size());
    m_session.note = trimmed(note);
}

void EntryParser::addTicks()
{
    for (const std::string &tick : m_ticks) {
        const auto steps = stepsMeant(m_records, tick, m_parts);
        if (steps.size() == 1)
            m_reading.steps_done.push_back(steps.front());
        else
            addProblem(steps.empty() ? "No step is called “{0}”; nothing is ticked for it."
                                     : "“{0}” may be several steps; say it with the part's code.",
                       {tick});
    }
    if (m_reading.steps_done.size() != 1)
        return;
    m_session.step_id = m_reading.steps_done.front();
}

void EntryParser::addProblem(std::string_view pattern, std::vector<std::string> arguments)
{
    m_reading.problems.push_back({pattern, std::move(arguments)});
}

/// Shares the session among the parts; the first gets the minutes that do not divide.
void EntryParser::divide(EntryReading &reading)
{
    if (m_parts.empty()) {
        if (const Step *step = m_records.find(m_session.step_id))
            m_parts.push_back(step->component_id);
        else if (const Squawk *squawk = m_records.find(m_session.squawk_id))
            m_parts.push_back(squawk->component_id);
        else
            m_parts.push_back({});
    }
    const auto count = std::int64_t(m_parts.size());
    for (std::int64_t i = 0; i < count; ++i) {
        WorkSession session = m_session;
        session.component_id = m_parts[std::size_t(i)];
        if (session.minutes) {
            const auto all = session.minutes->count();
            session.minutes = Minutes{all / count + (i == 0 ? all % count : 0)};
            if (session.minutes->count() == 0)
                session.minutes.reset();
        }
        reading.sessions.push_back(std::move(session));
    }
}

} // namespace lastrivet::entry
