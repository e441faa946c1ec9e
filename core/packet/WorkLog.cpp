// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/WorkLog.h"

#include "core/packet/Chosen.h"
#include "core/packet/InWords.h"

#include <map>

namespace lastrivet::packet {

namespace {

/// The workers of a session; the project's builder when none is written down.
std::vector<WorkSession::Worker> workersOf(const Records &records, const WorkSession &session)
{
    if (!session.workers.empty() || !records.project.builder_id)
        return session.workers;
    return {WorkSession::Worker{records.project.builder_id, std::nullopt, false}};
}

void add(WorkLog::Total &total, const WorkSession &session, const WorkSession::Worker &worker)
{
    const std::optional<Minutes> minutes = worker.minutes ? worker.minutes : session.minutes;
    ++total.sessions;
    total.paid |= worker.paid;
    if (minutes)
        total.minutes += *minutes;
    else
        ++total.without_time;
}

std::vector<WorkLog::Total> totals(const Records &records,
                                   const std::vector<const WorkSession *> &sessions)
{
    std::map<Id<Person>, WorkLog::Total> byPerson;
    for (const WorkSession *session : sessions) {
        for (const WorkSession::Worker &worker : workersOf(records, *session))
            add(byPerson[worker.person_id], *session, worker);
    }
    std::vector<WorkLog::Total> people;
    for (auto &[id, total] : byPerson) {
        if (const Person *person = records.find(id)) {
            total.name = person->name;
            total.credential = person->credential;
            total.roles = person->roles;
        }
        people.push_back(std::move(total));
    }
    std::stable_sort(
        people.begin(), people.end(),
        [](const WorkLog::Total &a, const WorkLog::Total &b) { return a.minutes > b.minutes; });
    return people;
}

} // namespace

WorkLog::Session sessionOf(const Records &records, const WorkSession &session)
{
    WorkLog::Session entry;
    entry.id = session.id;
    entry.began = session.began;
    entry.approximate = session.approximate;
    entry.minutes = session.minutes;
    entry.part = partName(records, session.component_id);
    entry.kind = session.kind;
    if (const Step *step = records.findLive(session.step_id))
        entry.step = step->title;
    if (const Squawk *squawk = records.findLive(session.squawk_id))
        entry.squawk = squawk->number;
    entry.note = session.note;
    entry.place = session.place;
    entry.source = session.source;
    for (const WorkSession::Worker &worker : workersOf(records, session))
        entry.workers.push_back({personName(records, worker.person_id),
                                 worker.minutes ? worker.minutes : session.minutes, worker.paid});
    return entry;
}

WorkLog workLog(const Region &region)
{
    const auto sessions = chosenFrom(
        region.records().work_sessions,
        [&](const WorkSession &session) {
            return region.holds(session.component_id) && happened(session.began, region.asOf());
        },
        [](const WorkSession &) { return 0; },
        [](const WorkSession &session) { return session.began; });
    WorkLog log;
    for (const WorkSession *session : sessions)
        log.sessions.push_back(sessionOf(region.records(), *session));
    log.people = totals(region.records(), sessions);
    return log;
}

} // namespace lastrivet::packet
