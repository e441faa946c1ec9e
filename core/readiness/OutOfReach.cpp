// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Lists.h"

#include "core/readiness/rules/Rules.h"

#include <map>

namespace lastrivet::readiness {

namespace {

std::vector<Blocker> buriedIn(Verdicts &verdicts, std::size_t closing)
{
    std::vector<Blocker> found;
    Findings findings(found);
    const Judgement judgement(verdicts.ground(), verdicts.profile(), verdicts, closing,
                              verdicts.asOf(), verdicts.asOf());
    for (const rules::Entry &rule : rules::all()) {
        if (!rule.buries)
            continue;
        findings.beginRule(rule.rule);
        (rule.findInReach ? rule.findInReach : rule.find)(judgement, findings);
    }
    return found;
}

} // namespace

std::vector<RecordAndClosings> outOfReach(Verdicts &verdicts, const Answer &answer)
{
    std::map<RecordRef, IdSet<Closing>, decltype(&namedBefore)> byRecord(namedBefore);
    for (std::size_t i = 0; i < answer.closings.size(); ++i) {
        const Closing &closing = *verdicts.ground().closings[i].closing;
        if (!closing.permanent || !isClosed(answer.closings[i].state))
            continue;
        for (const Blocker &blocker : buriedIn(verdicts, i)) {
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
