// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/invariants/Bounds.h"
#include "core/records/invariants/Families.h"

#include <set>

namespace lastrivet::invariants {

namespace {

constexpr std::string_view tooLong =
    "{0} lasts {1} minutes; more than 10,000 hours do not fit into one entry.";

void checkWorker(Review &review, const WorkSession &session, const WorkSession::Worker &worker)
{
    if (!worker.minutes)
        return;
    const auto count = worker.minutes->count();
    if (count <= 0)
        review.report(session, "{0} has {1} at work for {2} minutes.",
                      {review.nameOf(worker.person_id), std::to_string(count)});
    else if (*worker.minutes > longestRecorded)
        review.report(session,
                      "{0} has {1} at work for {2} minutes; more than 10,000 hours do not fit into "
                      "one entry.",
                      {review.nameOf(worker.person_id), std::to_string(count)});
    else if (session.minutes && *worker.minutes > *session.minutes)
        review.report(session, "{0} has {1} at work for {2} minutes, longer than it lasted.",
                      {review.nameOf(worker.person_id), std::to_string(count)});
}

void checkSession(Review &review, const WorkSession &session)
{
    if (session.minutes && session.minutes->count() <= 0)
        review.report(session, "{0} lasts {1} minutes; leave them empty when they are not known.",
                      {std::to_string(session.minutes->count())});
    if (session.minutes && *session.minutes > longestRecorded)
        review.report(session, tooLong, {std::to_string(session.minutes->count())});
    for (const auto &worker : session.workers)
        checkWorker(review, session, worker);
}

/// Of withdrawn sessions, too: the database has one row for each session and person.
void checkWorkersOnce(Review &review, const WorkSession &session)
{
    std::set<Id<Person>> seen;
    for (const auto &worker : session.workers) {
        if (!seen.insert(worker.person_id).second)
            review.report(session, "{0} names {1} twice among those who worked.",
                          {review.nameOf(worker.person_id)});
    }
}

} // namespace

void checkLog(Review &review)
{
    review.each<WorkSession>([&](const WorkSession &session) { checkSession(review, session); });
    review.eachAny(RecordType::WorkSession, [&](const void *session) {
        checkWorkersOnce(review, *static_cast<const WorkSession *>(session));
    });
    review.each<Flight>([&](const Flight &flight) {
        if (flight.minutes.count() <= 0)
            review.report(flight, "{0} lasts {1} minutes.",
                          {std::to_string(flight.minutes.count())});
        if (flight.minutes > longestRecorded)
            review.report(flight, tooLong, {std::to_string(flight.minutes.count())});
    });
}

} // namespace lastrivet::invariants
