// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/invariants/Ancestors.h"
#include "core/records/invariants/Families.h"
#include "core/records/invariants/StepGraph.h"

#include <algorithm>
#include <map>

namespace lastrivet::invariants {

namespace {

void checkCycles(Review &review, const StepGraph &graph)
{
    for (const auto &cycle : graph.cycles()) {
        const auto first = std::min_element(cycle.begin(), cycle.end());
        const auto next = first + 1 == cycle.end() ? cycle.begin() : first + 1;
        const bool isLive = std::any_of(cycle.begin(), cycle.end(), [&](StepGraph::Index i) {
            return !graph.step(i).withdrawn_on;
        });
        if (isLive && cycle.size() == 1)
            review.report(graph.step(*first), "{0} is to come after itself.");
        else if (isLive)
            review.report(graph.step(*first),
                          "{0} is to come after {1}, which in turn has to wait for it.",
                          {review.nameOf(graph.step(*next).id)});
    }
}

/// A step that comes after one that closes, inside what that closes, must say that it may follow.
void checkFollowers(Review &review, const StepGraph &graph, const Closing &closing,
                    const std::vector<StepGraph::Index> &closingSteps)
{
    Reach reach{review.records(), closing};
    for (const StepGraph::Index i : graph.allAfter(closingSteps)) {
        const Step &step = graph.step(i);
        const bool isExcused =
            std::binary_search(step.may_follow.begin(), step.may_follow.end(), closing.id);
        if (!step.withdrawn_on && !isExcused && reach.holds(step.component_id))
            review.report(step,
                          "{0} lies inside {1} and comes after a step that closes it, but does not "
                          "say in may_follow that it can be done then.",
                          {review.nameOf(closing.id)});
    }
}

/// A new step that comes after none and closes nothing breaks no order: nobody names it yet, unless
/// that one was touched too.
bool bearsOnOrder(const Step *was, const Step *is)
{
    if (!was || !is)
        return is && (!is->after.empty() || is->closes);
    return was->after != is->after || was->closes != is->closes ||
           was->may_follow != is->may_follow || was->withdrawn_on != is->withdrawn_on ||
           was->component_id != is->component_id;
}

bool bearsOnOrder(const Closing *was, const Closing *is)
{
    return !was || !is || was->scope != is->scope || was->encloses != is->encloses ||
           was->withdrawn_on != is->withdrawn_on;
}

/// A new part holds nothing but what was touched too.
bool bearsOnOrder(const Component *was, const Component *is)
{
    return was && (!is || was->parent_id != is->parent_id);
}

template <class Record> bool anyBearsOnOrder(const Review &review)
{
    return review.anyTouched<Record>(
        [](const Record *was, const Record *is) { return bearsOnOrder(was, is); });
}

} // namespace

void checkSteps(Review &review)
{
    using enum RecordType;
    if (!review.touchesAny(Step, Closing, Component))
        return;
    if (review.before() && !anyBearsOnOrder<lastrivet::Step>(review) &&
        !anyBearsOnOrder<lastrivet::Closing>(review) &&
        !anyBearsOnOrder<lastrivet::Component>(review))
        return;
    const StepGraph graph{review.records().steps};
    checkCycles(review, graph);
    std::map<Id<lastrivet::Closing>, std::vector<StepGraph::Index>> closingSteps;
    for (StepGraph::Index i = 0; i < graph.size(); ++i) {
        if (graph.step(i).closes && !graph.step(i).withdrawn_on)
            closingSteps[graph.step(i).closes].push_back(i);
    }
    for (const auto &[id, steps] : closingSteps) {
        if (const auto *closing = review.records().findLive(id))
            checkFollowers(review, graph, *closing, steps);
    }
}

} // namespace lastrivet::invariants
