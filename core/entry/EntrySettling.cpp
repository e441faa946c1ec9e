// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/EntryParser.h"

#include "core/base/CaseFold.h"
#include "core/entry/KindOfWork.h"
#include "core/entry/SharedTime.h"
#include "core/entry/StepFinder.h"

#include <algorithm>
#include <chrono>

// The second half of `EntryParser`: what follows once all words are read.
namespace lastrivet::entry {

void EntryParser::settle()
{
    addTicks();
    settleTime();
    for (const std::string &words : m_unknown)
        m_session.note = m_session.note.empty() ? words : words + ": " + m_session.note;
    if (!m_hasKind && m_session.squawk_id) {
        m_session.kind = WorkKind::Rework;
    } else if (!m_hasKind) {
        const auto kind = kindGuessed(foldedWords(m_session.note));
        m_session.kind = kind.value_or(WorkKind::Other);
        m_reading.kind_is_guessed = kind.has_value();
    }
    if (m_parts.empty()) {
        if (const Step *step = m_records.find(m_session.step_id))
            m_parts.push_back(step->component_id);
        else if (const Squawk *squawk = m_records.find(m_session.squawk_id))
            m_parts.push_back(squawk->component_id);
        else
            m_parts.push_back({});
    }
    m_reading.sessions = sharedAmong(m_session, m_parts);
}

/// "with Anna 2h left wing" says how long the work took; beside another time, how long she helped.
void EntryParser::settleTime()
{
    auto &workers = m_session.workers;
    const auto isTimed = [](const WorkSession::Worker &worker) {
        return worker.minutes.has_value();
    };
    if (!m_session.minutes && std::ranges::count_if(workers, isTimed) == 1) {
        const auto worker = std::ranges::find_if(workers, isTimed);
        m_session.minutes = std::exchange(worker->minutes, std::nullopt);
    }
    for (const WorkSession::Worker &worker : workers) {
        if (worker.minutes && m_session.minutes && *worker.minutes > *m_session.minutes)
            addError("{0} cannot have worked longer than the whole of it.",
                     {m_records.find(worker.person_id)->name});
    }
    const Moment began = *m_session.began;
    if (after(began.dayOnly(), m_now.dayOnly()) || after(began, m_now))
        addError("{0} lies ahead; the log tells what was done.", {began.text()});
    warnOfLongAgo();
}

/// A mistyped year, or a computer whose clock has fallen back to its first day.
void EntryParser::warnOfLongAgo()
{
    constexpr std::chrono::days aYear{366};
    const auto &begun = m_records.project.started_on;
    if (begun && begun->day() - m_session.began->day() > aYear)
        addProblem("{0} is more than a year before the project was begun ({1}).",
                   {m_session.began->text(), begun->text()});
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
    if (m_reading.steps_done.size() == 1)
        m_session.step_id = m_reading.steps_done.front();
}

} // namespace lastrivet::entry
