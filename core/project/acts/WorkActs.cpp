// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/WorkActs.h"

#include "core/steps/StepOrder.h"

#include <algorithm>
#include <iterator>

namespace lastrivet::acts {

namespace {

/// Gives the steps positions 1, 2, 3 …; touches only those that stand elsewhere.
void number(Edit &edit, const std::vector<Id<Step>> &steps)
{
    for (std::size_t i = 0; i < steps.size(); ++i) {
        const auto position = std::int64_t(i) + 1;
        if (edit.records().find(steps[i])->position != position)
            edit.update(steps[i], [&](Step &step) { step.position = position; });
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
    return edit.put(
        Step{.component_id = part, .position = last + 1, .title = std::string(title)});
}

Id<Step> insertStep(Edit &edit, Id<Step> before, std::string_view title)
{
    const auto part = edit.records().find(before)->component_id;
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
    const auto part = edit.records().find(steps.front())->component_id;
    auto order = steps::stepsOf(edit.records(), part);
    std::vector<Id<Step>> moved;
    std::ranges::copy_if(order, std::back_inserter(moved), isMoved);
    auto place = std::ranges::find(order, before);
    place = std::find_if_not(place, order.end(), isMoved);
    const Id<Step> anchor = place == order.end() ? Id<Step>{} : *place;
    std::erase_if(order, isMoved);
    order.insert(std::ranges::find(order, anchor), moved.begin(), moved.end());
    number(edit, order);
}

} // namespace lastrivet::acts
