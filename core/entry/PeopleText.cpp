// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/PeopleText.h"

#include "core/base/CaseFold.h"
#include "core/entry/DurationText.h"
#include "core/entry/LineWords.h"

#include <algorithm>

namespace lastrivet::entry {

namespace {

class PeopleReader {
public:
    PeopleReader(const EntryWords &line, std::size_t first, std::size_t last,
                 const Records &records)
        : m_line(line)
        , m_last(last)
        , m_at(first)
        , m_records(records)
    {
    }

    PeopleRead read()
    {
        const std::size_t first = m_at++;
        m_read.isInsteadOfBuilder = words::isOneOf(m_line.folded(first), words::by);
        while (takePerson())
            takeTimeAndPay();
        if (!m_read.workers.empty())
            m_read.words = m_at - first;
        return std::move(m_read);
    }

private:
    bool isJoin(std::size_t i) const
    {
        const std::string &word = m_line.folded(i);
        return word == "+" || word == "&" || word.empty() || words::isOneOf(word, words::join);
    }

    /// One name, after an `and` where it is not the first.
    bool takePerson()
    {
        std::size_t at = m_at;
        while (!m_read.workers.empty() && at < m_last && isJoin(at))
            ++at;
        if (at >= m_last)
            return false;
        const std::size_t count = nameAt(at);
        if (count == 0) {
            const bool isJoined = at > m_at;
            if (m_read.workers.empty() || isJoined) {
                m_read.unknown = m_line.text(at, at + 1);
                m_read.unknown_words = at + 1 - m_at;
            }
            return false;
        }
        m_at = at + count;
        return true;
    }

    /// How many words name one person, whole or by the first name alone; adds the person.
    std::size_t nameAt(std::size_t at)
    {
        std::size_t longest = 0;
        Id<Person> found;
        for (const Person &person : m_records.people) {
            const auto name = foldedWords(person.name);
            if (person.withdrawn_on || name.empty() || m_line.folded(at) != name.front())
                continue;
            const bool isWhole = name.size() <= m_last - at &&
                                 std::equal(name.begin(), name.end(),
                                            m_line.allFolded().begin() + std::ptrdiff_t(at));
            const std::size_t count = isWhole ? name.size() : 1;
            if (count > longest) {
                longest = count;
                found = person.id;
            }
        }
        if (found)
            m_read.workers.push_back({found});
        return longest;
    }

    void takeTimeAndPay()
    {
        for (bool isMore = true; isMore && m_at < m_last;) {
            WorkSession::Worker &worker = m_read.workers.back();
            isMore = true;
            if (words::isOneOf(m_line.folded(m_at), words::paid)) {
                worker.paid = true;
                ++m_at;
            } else if (const std::size_t count = worker.minutes ? 0 : takeTime(worker)) {
                m_at += count;
            } else {
                isMore = false;
            }
        }
    }

    std::size_t takeTime(WorkSession::Worker &worker)
    {
        const LengthRead length = readLength(m_line, m_at, m_last);
        if (!length.isOfOneDay())
            return 0;
        worker.minutes = Minutes{length.minutes};
        return length.words;
    }

    const EntryWords &m_line;
    std::size_t m_last;
    std::size_t m_at;
    const Records &m_records;
    PeopleRead m_read;
};

} // namespace

PeopleRead readPeople(const EntryWords &line, std::size_t first, std::size_t last,
                      const Records &records)
{
    const std::string &word = line.folded(first);
    if (!words::isOneOf(word, words::with) && !words::isOneOf(word, words::by))
        return {};
    return PeopleReader(line, first, last, records).read();
}

} // namespace lastrivet::entry
