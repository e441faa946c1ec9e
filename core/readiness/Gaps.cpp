// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Lists.h"

#include "core/readiness/OpenState.h"

#include <algorithm>

namespace lastrivet::readiness {

namespace {

void addClosingSteps(const Verdicts &verdicts, const Answer &answer, std::vector<ToComplete> &list)
{
    const Reckoning now(verdicts.asOf(), verdicts.asOf());
    for (std::size_t i = 0; i < answer.closings.size(); ++i) {
        if (!isClosed(answer.closings[i].state))
            continue;
        for (const Step *step : verdicts.ground().closings[i].closing_steps) {
            if (now.exists(*step) && !now.isDoneOrDropped(*step))
                list.push_back({Gap::ClosingStepNotDone, {RecordType::Step, step->id.value()}});
        }
    }
}

void addFactoryClosings(const Ground &ground, std::vector<ToComplete> &list)
{
    for (const ClosingGround &here : ground.closings) {
        if (here.closing->made_by == MadeBy::Factory && !here.hasDocument)
            list.push_back({Gap::FactoryClosingWithoutDocument,
                            {RecordType::Closing, here.closing->id.value()}});
    }
}

bool isBigPart(ComponentKind kind)
{
    return kind == ComponentKind::ControlSurface || kind == ComponentKind::LiftingSurface ||
           kind == ComponentKind::FuselageSection || kind == ComponentKind::FuelTank;
}

/// Structure that ought to be closed one day, with no closing anywhere in it.
void addPartsWithoutClosing(const Ground &ground, std::vector<ToComplete> &list)
{
    std::vector<std::int64_t> enclosedBefore(ground.tree.size() + 1, 0);
    for (const ClosingGround &here : ground.closings) {
        if (!here.closing->permanent || here.isAircraft)
            continue;
        for (const Stretch &stretch : here.reach)
            std::fill(enclosedBefore.begin() + stretch.begin + 1,
                      enclosedBefore.begin() + stretch.end + 1, 1);
    }
    for (Place place = 0; place < ground.tree.size(); ++place)
        enclosedBefore[place + 1] += enclosedBefore[place];
    for (Place place = 0; place < ground.tree.size(); ++place) {
        const Component &part = ground.tree.part(place);
        const Stretch below = ground.tree.subtree(place);
        if (isBigPart(part.kind) && part.never_enclosed_why.empty() &&
            enclosedBefore[below.end] == enclosedBefore[below.begin])
            list.push_back({Gap::PartWithoutClosing, {RecordType::Component, part.id.value()}});
    }
}

template <class Paper>
void addOpen(const Verdicts &verdicts, const std::vector<const Paper *> &papers,
             std::vector<ToComplete> &list)
{
    const auto counts = [&](const std::optional<Moment> &moment) {
        return happened(moment, verdicts.asOf());
    };
    for (const Paper *paper : papers) {
        if (isOpen(*paper, counts))
            list.push_back({Gap::RecordWithoutPlace, {Paper::type, paper->id.value()}});
    }
}

} // namespace

std::vector<ToComplete> gaps(const Verdicts &verdicts, const Answer &answer)
{
    std::vector<ToComplete> list;
    addClosingSteps(verdicts, answer, list);
    addFactoryClosings(verdicts.ground(), list);
    addPartsWithoutClosing(verdicts.ground(), list);
    addOpen(verdicts, verdicts.ground().deviations_without_place, list);
    addOpen(verdicts, verdicts.ground().bulletins_without_place, list);
    std::sort(list.begin(), list.end(), [](const ToComplete &a, const ToComplete &b) {
        if (a.what != b.what)
            return a.what < b.what;
        if (a.record.id != b.record.id)
            return a.record.id < b.record.id;
        return word(a.record.type) < word(b.record.type);
    });
    return list;
}

} // namespace lastrivet::readiness
