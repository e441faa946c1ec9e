// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Lists.h"

#include "core/readiness/rules/Rules.h"

#include <map>

namespace lastrivet::readiness {

std::vector<RecordAndClosings> outOfReach(Verdicts &verdicts, const Answer &answer)
{
    std::map<RecordRef, IdSet<Closing>, decltype(&namedBefore)> byRecord(namedBefore);
    for (std::size_t i = 0; i < answer.closings.size(); ++i) {
        const Closing &closing = *verdicts.ground().closings[i].closing;
        if (!closing.permanent || !isClosed(answer.closings[i].state))
            continue;
        for (const Blocker &blocker : rules::findInReach(verdicts, i, &rules::Entry::buries)) {
            auto &closings = byRecord[blocker.record];
            if (closings.empty() || closings.back() != closing.id)
                closings.push_back(closing.id);
        }
    }
    std::vector<RecordAndClosings> list;
    for (auto &[record, closings] : byRecord)
        list.push_back({record, std::move(closings)});
    return list;
}

} // namespace lastrivet::readiness
