// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/WorkActs.h"

#include <algorithm>

namespace lastrivet::acts {

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

} // namespace lastrivet::acts
