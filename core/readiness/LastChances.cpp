// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Lists.h"

#include "core/readiness/rules/Rules.h"

#include <algorithm>

namespace lastrivet::readiness {

std::vector<LastChance> lastChances(Verdicts &verdicts, const Answer &answer)
{
    std::vector<LastChance> list;
    for (std::size_t i = 0; i < answer.closings.size(); ++i) {
        const ClosingAnswer &closing = answer.closings[i];
        if (isClosed(closing.state) || closing.state == State::Hold)
            continue;
        std::vector<RecordRef> items;
        for (const Blocker &blocker : closing.blockers) {
            if (blocker.weight == Weight::Should)
                items.push_back(blocker.record);
        }
        for (const Blocker &blocker :
             rules::findInReach(verdicts, i, &rules::Entry::excuses, Looking::AtWhatIsExcused))
            items.push_back(blocker.record);
        std::sort(items.begin(), items.end(), namedBefore);
        items.erase(std::unique(items.begin(), items.end()), items.end());
        if (!items.empty())
            list.push_back({closing.id, std::move(items)});
    }
    return list;
}

} // namespace lastrivet::readiness
