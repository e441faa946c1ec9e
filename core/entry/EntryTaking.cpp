// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/EntryParser.h"

#include "core/base/CaseFold.h"
#include "core/base/Digits.h"
#include "core/entry/ClockText.h"
#include "core/entry/DayText.h"
#include "core/entry/KindOfWork.h"
#include "core/entry/LineWords.h"
#include "core/entry/PeopleText.h"
#include "core/entry/SaidNumber.h"

#include <algorithm>
#include <chrono>
#include <string>
#include <utility>

// The functions of `EntryParser` for what words can mean; each returns how many words it took.
namespace lastrivet::entry {

namespace {

/// "Okoro": it may be the rest of a name. "Öz" begins with a capital of two bytes in UTF-8.
bool isCapitalised(std::string_view word)
{
    if (word.empty())
        return false;
    const std::string small = folded(word);
    return small[0] != word[0] || (small.size() > 1 && small[1] != word[1] && small[0] == '\xC3');
}

/// "4.2.10", which may be a chapter of the plans as well.
bool hasShortYear(std::string_view word)
{
    return looksLikeDay(word) && word.size() > 3 && word[word.size() - 3] == '.' &&
           isAllDigits(word.substr(word.size() - 2));
}

/// The bare hour of "8 to 10:30".
bool isHour(std::string_view word)
{
    return word.size() <= 2 && isAllDigits(word) && word <= (word.size() == 1 ? "9" : "24");
}

/// The two sides of a word with one dash in it; empty when there is none.
std::pair<std::string_view, std::string_view> aroundDash(std::string_view word)
{
    for (const std::string_view dash : {"-", "–", "—"}) {
        const auto at = word.find(dash);
        if (at != std::string_view::npos)
            return {word.substr(0, at), word.substr(at + dash.size())};
    }
    return {};
}

/// How many words "2-3 h", "2-3h" and "10-15 min" take; 0 for anything else.
std::size_t wordsOfEither(const EntryWords &line, std::size_t i)
{
    const auto [from, to] = aroundDash(line.folded(i));
    if (from.empty() || from.size() > 2 || to.empty() || !isAllDigits(from))
        return 0;
    if (!isAllDigits(to))
        return readMinutes(to) ? 1 : 0;
    const bool isNamed = i + 1 < line.count() && !isAllDigits(line.folded(i + 1)) &&
                         readMinutes(std::string(to) + " " + line.folded(i + 1));
    return isNamed ? 2 : 0;
}

/// "1300", which may be a time of day.
bool isClockOfFour(std::string_view digits)
{
    return digits.size() == 4 && isAllDigits(digits) && digits.substr(0, 2) <= "24" &&
           digits.substr(2) <= "59";
}

/// How many words "1300-1530" takes, and either end of "8 am - 10 am"; 0 for anything else, as "8
/// am Freitag".
std::size_t wordsOfClock(const EntryWords &line, std::size_t i)
{
    const std::string_view word = line.folded(i);
    if (const auto [from, to] = aroundDash(word); isClockOfFour(from) && isClockOfFour(to))
        return 1;
    const auto parts = [&](std::size_t at) {
        return at < line.count() &&
               (line.isDash(at) || words::isOneOf(line.folded(at), words::until));
    };
    const bool isHalfDay = i + 1 < line.count() && isHour(word) &&
                           (line.folded(i + 1) == "am" || line.folded(i + 1) == "pm");
    return isHalfDay && (parts(i + 2) || (i > 0 && parts(i - 1))) ? 2 : 0;
}

} // namespace

/// Whether "10:30" is one end of a span, or a point in time, that was not read as such: "8 to
/// 10:30", "8:15 - 10", "primed at 10:30". Ten hours and a half it is not.
bool EntryParser::isPartOfClock(std::size_t i) const
{
    const std::string &word = m_words.folded(i);
    if (word.find(':') == std::string::npos || !parseClock(word))
        return false;
    const auto isUntil = [&](std::size_t at) {
        return m_words.isDash(at) || words::isOneOf(m_words.folded(at), words::until);
    };
    const bool isBehindHour = i > 1 && m_words.isDash(i - 1) && isHour(m_words.folded(i - 2));
    const bool isNamed = i > 0 && (words::isOneOf(m_words.folded(i - 1), words::point) ||
                                   words::isOneOf(m_words.folded(i - 1), words::until) ||
                                   m_words.folded(i - 1) == "@");
    const bool isBeforeHour =
        i + 2 < m_words.count() && isUntil(i + 1) && isHour(m_words.folded(i + 2));
    return isNamed || isBehindHour || isBeforeHour;
}

LengthRead EntryParser::lengthAt(std::size_t i) const
{
    if (isPartOfClock(i))
        return {};
    // "LA 2h: 30 rivets" is no two hours and a half.
    const auto colon = m_words.colon();
    return readLength(m_words, i, colon && i <= *colon ? *colon + 1 : m_words.count());
}

/// Asks of "2h 12 rivets", where the number may be minutes or a count.
void EntryParser::askOfCount(std::size_t i, std::size_t count)
{
    const std::size_t behind = i + count;
    const bool endsInNumber = count > 1 && (isAllDigits(m_words.folded(behind - 1)) ||
                                            isSaidNumber(m_words.folded(behind - 1)));
    if (endsInNumber && behind < m_words.count() && m_words.colon() != behind - 1 &&
        words::isOneOf(m_words.folded(behind), words::counted))
        addProblem("“{0}” is taken for hours and minutes; put a comma behind the hours when the "
                   "number is a count.",
                   {m_words.joined(i, behind)});
}

/// Asks of the first of some words that may be a time and is read as none: "2-3 h", "1300-1530", "8
/// am - 10 am". False when there is none, or the time was said already.
bool EntryParser::askOfTimes(std::size_t begin, std::size_t end)
{
    for (std::size_t i = begin; i < end && !m_session.minutes; ++i) {
        if (const std::size_t count = wordsOfEither(m_words, i)) {
            addProblem("“{0}” may be the one time or the other; write one, as 2h30.",
                       {m_words.joined(i, i + count)});
            return true;
        }
        if (const std::size_t count = wordsOfClock(m_words, i)) {
            addProblem("“{0}” may be a time of day; write from 8:00 to 10:30.",
                       {m_words.joined(i, i + count)});
            return true;
        }
    }
    return false;
}

std::size_t EntryParser::takeDuration(std::size_t i)
{
    if (m_session.minutes && !m_isTimedByClock)
        return 0;
    const LengthRead length = lengthAt(i);
    const auto typed = [&] { return m_words.joined(i, i + length.words); };
    if (length.words == 0)
        return 0;
    askOfCount(i, length.words);
    if (m_isTimedByClock && Minutes{length.minutes} > *m_session.minutes)
        addProblem("“{0}” is longer than from the one time of day to the other; it is what counts.",
                   {typed()});
    if (length.isOfOneDay())
        m_session.minutes = Minutes{length.minutes};
    else if (length.minutes <= 0)
        addError("“{0}” is no length of time; leave it out when nobody knows.", {typed()});
    else
        addError("“{0}” is more than a day has; write each day's work by itself.", {typed()});
    m_isTimedByClock = false;
    return length.words;
}

/// Whether the number behind a day is its year, by what follows: "3 Mar 25 LA" and "3 Mar 25:
/// swept", but not "3 Mar 25 rivets".
bool EntryParser::isYear(std::size_t i) const
{
    const auto &words = m_words.allFolded();
    if (m_finder.longestExact(words, i).part)
        return false;
    const std::size_t next = i + 1;
    return next == m_words.count() || m_words.colon() == i ||
           m_finder.longestExact(words, next).part || lengthAt(next).words > 0;
}

std::size_t EntryParser::takeDay(std::size_t i)
{
    const std::size_t before = words::isOneOf(m_words.folded(i), words::on) ? 1 : 0;
    if (i + before >= m_words.count())
        return 0;
    auto read = readDay(m_words.allFolded(), i + before, m_now);
    if (!read)
        return 0;
    if (const auto dated = withShortYear(*read, m_words.allFolded(), i + before, m_now);
        dated && !after(dated->day, m_now) && isYear(i + before + read->words))
        read = dated;
    const bool keepsTime = m_session.began->hasTime() && !read->day.hasTime();
    constexpr std::chrono::days aYear{366};
    const std::string &word = m_words.folded(i + before);
    if (!m_records.project.started_on && hasShortYear(word) &&
        m_now.day() - read->day.day() > aYear)
        addProblem("“{0}” is taken for the day {1}; put the number of a chapter behind the colon.",
                   {word, read->day.text()});
    m_session.began =
        keepsTime ? Moment::ofTime(read->day.day(), m_session.began->minuteOfDay()) : read->day;
    return before + read->words;
}

std::size_t EntryParser::takeClock(std::size_t i)
{
    const auto read = readClock(m_words, i);
    if (!read)
        return 0;
    m_session.began = Moment::ofTime(m_session.began->day(), read->from);
    if (read->lasted && !m_session.minutes) {
        m_session.minutes = read->lasted;
        m_isTimedByClock = true;
    }
    return read->words;
}

std::size_t EntryParser::takePeople(std::size_t i)
{
    const bool isHead = m_words.colon() && i <= *m_words.colon();
    const std::size_t end = isHead ? *m_words.colon() + 1 : m_words.count();
    const PeopleRead read = readPeople(m_words, i, end, m_records);
    // A name of nobody is reported here, and not once more as an unknown part.
    const std::size_t named = i + (read.words == 0 ? 1 : 0) + read.words + read.unknown_words;
    const std::size_t behind = isHead && !read.unknown.empty() ? behindName(named, end) : named;
    if (isHead && !read.unknown.empty())
        addUnknownPerson(i, m_words.text(named - 1, behind));
    auto &workers = m_session.workers;
    if (read.words > 0 && workers.empty() && !read.isInsteadOfBuilder &&
        m_records.project.builder_id)
        workers.push_back({m_records.project.builder_id});
    for (const WorkSession::Worker &worker : read.workers) {
        const auto known =
            std::ranges::find(workers, worker.person_id, &WorkSession::Worker::person_id);
        if (known == workers.end())
            workers.push_back(worker);
        else
            *known = worker;
    }
    return isHead && !read.unknown.empty() ? behind - i : read.words;
}

/// Where the name ends whose first word stands in front of `next`: "Ben Okoro" is one person,
/// unless the second word is a part, a time, a day or a kind of work.
std::size_t EntryParser::behindName(std::size_t next, std::size_t end) const
{
    const auto typed = [&](std::size_t i) { return m_words.text(i, i + 1); };
    while (next < end && isCapitalised(typed(next - 1)) && isCapitalised(typed(next)) &&
           std::string_view(",;:)").find(typed(next - 1).back()) == std::string_view::npos &&
           m_finder.matches(m_words.folded(next), 1).empty() && !kindNamed(m_words.folded(next)) &&
           !readDay(m_words.allFolded(), next, m_now))
        ++next;
    return next;
}

void EntryParser::addUnknownPerson(std::size_t begin, const std::string &name)
{
    const std::string shown = name.substr(0, name.find_last_not_of(",;:)") + 1);
    addProblem("Nobody on record is called “{0}”; it goes into the note.", {shown});
    m_unknown.push_back(m_words.text(begin, begin + 1) + " " + shown);
}

std::size_t EntryParser::takeSteps(std::size_t i)
{
    if (!words::isOneOf(m_words.folded(i), words::done))
        return 0;
    std::size_t taken = 1;
    // In "done 3: 4 rivets" the note begins with a number.
    while (i + taken < m_words.count() && m_words.colon() != std::optional(i + taken - 1)) {
        const std::string &word = m_words.folded(i + taken);
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
    const std::string &word = m_words.folded(i);
    const bool isWord = words::isOneOf(word, words::squawk);
    const bool isSign = word.starts_with('#') && word.size() > 1;
    if (!isSign && (!isWord || i + 1 >= m_words.count()))
        return 0;
    const std::string number = isSign ? word.substr(1) : m_words.folded(i + 1);
    for (const Squawk &squawk : m_records.squawks) {
        if (!squawk.withdrawn_on && squawk.number == number) {
            m_session.squawk_id = squawk.id;
            return isSign ? 1 : 2;
        }
    }
    return 0;
}

std::size_t EntryParser::takePart(std::size_t i)
{
    const auto exact = m_finder.longestExact(m_words.allFolded(), i);
    if (!exact.part)
        return 0;
    // "Rework" may be a part's name, but a single word that is a kind of work is meant as one.
    if (exact.words == 1 && kindNamed(m_words.folded(i)))
        return 0;
    m_parts.push_back(exact.part);
    m_partSpans.push_back({m_words.beginOf(i), m_words.endOf(i + exact.words - 1)});
    return exact.words;
}

std::size_t EntryParser::takeKind(std::size_t i)
{
    const auto kind = kindNamed(m_words.folded(i));
    if (!kind)
        return 0;
    m_session.kind = *kind;
    m_hasKind = true;
    return 1;
}

} // namespace lastrivet::entry
