// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/WorkActs.h"

#include "core/steps/StepOrder.h"

#include <algorithm>
#include <iterator>

namespace lastrivet::acts {

namespace {

void setPosition(Edit &edit, Id<Step> step, std::int64_t position)
{
    if (edit.existing(step).position != position)
        edit.update(step, [&](Step &changed) { changed.position = position; });
}

/// Numbers the steps upwards in their order. Moved ones go into the gap where they stand; others
/// keep their numbers, which may be those of a manual, as long as there is room.
template <class IsMoved>
void number(Edit &edit, const std::vector<Id<Step>> &order, const IsMoved &isMoved)
{
    const auto positionOf = [&](Id<Step> step) { return edit.existing(step).position; };
    std::int64_t last = 0;
    for (auto at = order.begin(); at != order.end();) {
        const auto end = std::find_if_not(at, order.end(), isMoved);
        const auto next = end == order.end() ? std::nullopt : positionOf(*end);
        const std::int64_t parts = end - at + 1;
        const std::int64_t gap = next ? (*next - last) / parts : 1;
        for (; at != end; ++at)
            setPosition(edit, *at, last += std::max<std::int64_t>(gap, 1));
        if (at == order.end())
            return;
        last = std::max(next.value_or(0), last + 1);
        setPosition(edit, *at++, last);
    }
}

} // namespace

void tickStep(Edit &edit, Id<Step> step, Moment on)
{
    edit.update(step, [&](Step &changed) {
        if (!changed.done_on)
            changed.done_on = on;
        changed.dropped_on.reset();
    });
}

void untickStep(Edit &edit, Id<Step> step)
{
    edit.update(step, [](Step &changed) { changed.done_on.reset(); });
}

void dropStep(Edit &edit, Id<Step> step, Moment on)
{
    edit.update(step, [&](Step &changed) {
        changed.dropped_on = on;
        changed.done_on.reset();
    });
}

void takeUpStep(Edit &edit, Id<Step> step)
{
    edit.update(step, [](Step &changed) { changed.dropped_on.reset(); });
}

Id<Step> addStep(Edit &edit, Id<Component> part, std::string_view title)
{
    std::int64_t last = 0;
    for (const Step &step : edit.records().steps) {
        if (step.component_id == part && !step.withdrawn_on)
            last = std::max(last, step.position.value_or(0));
    }
    return edit.put(Step{.component_id = part, .position = last + 1, .title = std::string(title)});
}

Id<Step> insertStep(Edit &edit, Id<Step> before, std::string_view title)
{
    const auto part = edit.existing(before).component_id;
    const auto added = addStep(edit, part, title);
    moveSteps(edit, {added}, before);
    return added;
}

void moveSteps(Edit &edit, const std::vector<Id<Step>> &steps, Id<Step> before)
{
    if (steps.empty())
        return;
    const auto isMoved = [&](Id<Step> step) {
        return std::ranges::find(steps, step) != steps.end();
    };
    const auto part = edit.existing(steps.front()).component_id;
    auto order = steps::stepsOf(edit.records(), part);
    std::vector<Id<Step>> moved;
    std::ranges::copy_if(order, std::back_inserter(moved), isMoved);
    auto place = std::ranges::find(order, before);
    place = std::find_if_not(place, order.end(), isMoved);
    const Id<Step> anchor = place == order.end() ? Id<Step>{} : *place;
    std::erase_if(order, isMoved);
    order.insert(std::ranges::find(order, anchor), moved.begin(), moved.end());
    number(edit, order, isMoved);
}

} // namespace lastrivet::acts
