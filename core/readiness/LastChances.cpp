// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Lists.h"

#include "core/readiness/rules/Rules.h"

#include <algorithm>

namespace lastrivet::readiness {

namespace {

/// What the rules would find in the records that are excused from this closing.
std::vector<Blocker> excused(Verdicts &verdicts, std::size_t closing)
{
    std::vector<Blocker> found;
    Findings findings(found);
    const Judgement judgement(verdicts.ground(), verdicts.profile(), verdicts, closing,
                              verdicts.asOf(), verdicts.asOf(), Looking::AtWhatIsExcused);
    for (const rules::Entry &rule : rules::all()) {
        if (!rule.excuses)
            continue;
        findings.beginRule(rule.rule);
        (rule.findInReach ? rule.findInReach : rule.find)(judgement, findings);
    }
    return found;
}

} // namespace

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
        for (const Blocker &blocker : excused(verdicts, i))
            items.push_back(blocker.record);
        std::sort(items.begin(), items.end(), namedBefore);
        items.erase(std::unique(items.begin(), items.end()), items.end());
        if (!items.empty())
            list.push_back({closing.id, std::move(items)});
    }
    return list;
}

} // namespace lastrivet::readiness
