// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/SharedTime.h"

#include <algorithm>

namespace lastrivet::entry {

namespace {

/// A worker's time over stretches of work: in proportion, and never more than a stretch lasts; in
/// equal shares where nobody knows how long they last.
std::vector<Minutes> workerShares(Minutes worked, const std::vector<Minutes> &stretches)
{
    std::int64_t all = 0;
    for (const Minutes stretch : stretches)
        all += stretch.count();
    if (all == 0)
        return sharesOf(worked, stretches.size());
    std::int64_t left = worked.count();
    std::vector<Minutes> shares;
    for (const Minutes stretch : stretches) {
        // Both are at most 10,000 hours, so the product is far from any limit.
        const std::int64_t share = worked.count() * stretch.count() / all;
        shares.push_back(Minutes{share});
        left -= share;
    }
    for (std::size_t i = 0; i < shares.size() && left > 0; ++i) {
        const std::int64_t room = stretches[i].count() - shares[i].count();
        const std::int64_t more =
            std::clamp<std::int64_t>(left, 0, std::max<std::int64_t>(room, 0));
        shares[i] += Minutes{more};
        left -= more;
    }
    return shares;
}

/// A session without workers would count for the builder, so whoever did the rest gets a minute
/// there, even if that is one too many.
void addMissingWorkers(const WorkSession &whole, std::vector<WorkSession> &sessions)
{
    if (whole.workers.empty())
        return;
    WorkSession::Worker first = whole.workers.front();
    first.minutes = Minutes{1};
    for (WorkSession &session : sessions) {
        if (session.workers.empty())
            session.workers.push_back(first);
    }
}

void shareWorkers(const WorkSession &whole, const std::vector<Minutes> &stretches,
                  std::vector<WorkSession> &sessions)
{
    for (WorkSession &session : sessions)
        session.workers.clear();
    for (const WorkSession::Worker &worker : whole.workers) {
        const auto shares =
            worker.minutes ? workerShares(*worker.minutes, stretches) : std::vector<Minutes>{};
        for (std::size_t i = 0; i < sessions.size(); ++i) {
            WorkSession::Worker part = worker;
            const bool isNothing = worker.minutes && shares[i].count() == 0;
            if (worker.minutes)
                part.minutes = isNothing ? std::nullopt : std::optional(shares[i]);
            if (!isNothing || stretches[i].count() == 0)
                sessions[i].workers.push_back(part);
        }
    }
    addMissingWorkers(whole, sessions);
}

} // namespace

std::vector<Minutes> sharesOf(Minutes all, std::size_t count)
{
    const auto parts = std::int64_t(count);
    std::vector<Minutes> shares(count, Minutes{all.count() / parts});
    shares.front() += Minutes{all.count() % parts};
    return shares;
}

std::vector<WorkSession> sharedInto(const WorkSession &session,
                                    const std::vector<Minutes> &stretches)
{
    std::vector<WorkSession> sessions(stretches.size(), session);
    shareWorkers(session, stretches, sessions);
    for (std::size_t i = 0; i < stretches.size(); ++i) {
        sessions[i].minutes = stretches[i].count() > 0 ? std::optional(stretches[i]) : std::nullopt;
    }
    return sessions;
}

std::vector<WorkSession> sharedAmong(const WorkSession &session,
                                     const std::vector<Id<Component>> &parts)
{
    auto sessions =
        sharedInto(session, sharesOf(session.minutes.value_or(Minutes{0}), parts.size()));
    for (std::size_t i = 0; i < parts.size(); ++i)
        sessions[i].component_id = parts[i];
    return sessions;
}

} // namespace lastrivet::entry
