// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/SharedTime.h"

#include <algorithm>

namespace lastrivet::entry {

namespace {

/// A worker's time over stretches of work: in proportion, and never more than a stretch lasts.
std::vector<Minutes> workerShares(Minutes worked, const std::vector<Minutes> &stretches)
{
    std::int64_t all = 0;
    for (const Minutes stretch : stretches)
        all += stretch.count();
    std::int64_t left = worked.count();
    std::vector<Minutes> shares;
    for (const Minutes stretch : stretches) {
        // Both are at most 10,000 hours, so the product is far from any limit.
        const std::int64_t share = all == 0 ? 0 : worked.count() * stretch.count() / all;
        shares.push_back(Minutes{share});
        left -= share;
    }
    for (std::size_t i = 0; i < shares.size() && left > 0; ++i) {
        const std::int64_t room = stretches[i].count() - shares[i].count();
        const std::int64_t more = std::clamp<std::int64_t>(left, 0, std::max<std::int64_t>(room, 0));
        shares[i] += Minutes{more};
        left -= more;
    }
    return shares;
}

void shareWorkers(const WorkSession &whole, const std::vector<Minutes> &stretches,
                  std::vector<WorkSession> &sessions)
{
    for (WorkSession &session : sessions)
        session.workers.clear();
    for (const WorkSession::Worker &worker : whole.workers) {
        const auto shares = worker.minutes ? workerShares(*worker.minutes, stretches)
                                           : std::vector<Minutes>{};
        for (std::size_t i = 0; i < sessions.size(); ++i) {
            WorkSession::Worker part = worker;
            if (worker.minutes)
                part.minutes = shares[i];
            if (!part.minutes || part.minutes->count() > 0)
                sessions[i].workers.push_back(part);
        }
    }
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
    auto sessions = session.minutes ? sharedInto(session, sharesOf(*session.minutes, parts.size()))
                                    : std::vector<WorkSession>(parts.size(), session);
    for (std::size_t i = 0; i < parts.size(); ++i)
        sessions[i].component_id = parts[i];
    return sessions;
}

} // namespace lastrivet::entry
