// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Lists.h"

#include <algorithm>
#include <map>

namespace lastrivet::readiness {

std::vector<RecordAndClosings> unlocking(const Answer &answer)
{
    std::map<RecordRef, IdSet<Closing>, decltype(&namedBefore)> byRecord(namedBefore);
    for (const ClosingAnswer &closing : answer.closings) {
        if (isClosed(closing.state))
            continue;
        for (const Blocker &blocker : closing.blockers) {
            if (blocker.weight != Weight::Must || blocker.waits_for)
                continue;
            auto &closings = byRecord[blocker.record];
            if (closings.empty() || closings.back() != closing.id)
                closings.push_back(closing.id);
        }
    }
    std::vector<RecordAndClosings> list;
    for (auto &[record, closings] : byRecord)
        list.push_back({record, std::move(closings)});
    std::stable_sort(list.begin(), list.end(), [](const auto &a, const auto &b) {
        return a.closings.size() > b.closings.size();
    });
    return list;
}

} // namespace lastrivet::readiness
