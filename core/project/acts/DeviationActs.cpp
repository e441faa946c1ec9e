// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/DeviationActs.h"

#include "core/base/SortedIds.h"

namespace lastrivet::acts {

Id<Deviation> addDeviation(Edit &edit, Id<Component> part, std::string_view title)
{
    Deviation deviation;
    deviation.number = nextNumber<Deviation>(edit.records());
    if (part)
        deviation.component_ids = {part};
    deviation.title = title;
    deviation.raised_on = edit.today();
    return edit.put(std::move(deviation));
}

void askAbout(Edit &edit, Id<Deviation> deviation, Id<Person> who, Moment on)
{
    edit.update(deviation, [&](Deviation &changed) {
        changed.asked_of = who;
        changed.asked_on = on;
    });
}

void decide(Edit &edit, Id<Deviation> deviation, Decision decision, Id<Person> by, Moment on,
            std::string_view basis)
{
    edit.update(deviation, [&](Deviation &changed) {
        changed.decision = decision;
        changed.decided_by = by;
        changed.decided_on = on;
        changed.basis = basis;
    });
}

void buildSo(Edit &edit, Id<Deviation> deviation, Moment on)
{
    edit.update(deviation, [&](Deviation &changed) {
        changed.built_on = on;
        changed.undone_on.reset();
    });
}

void undoDeviation(Edit &edit, Id<Deviation> deviation, Moment on)
{
    edit.update(deviation, [&](Deviation &changed) { changed.undone_on = on; });
}

void attach(Edit &edit, Id<Deviation> deviation, Id<Media> paper)
{
    edit.update(deviation, [&](Deviation &changed) { insertSorted(changed.media_ids, paper); });
}

DeviationStage stageOf(const Deviation &deviation)
{
    const bool isDecided = deviation.decided_on && deviation.decision;
    if (deviation.undone_on)
        return DeviationStage::Undone;
    if (isDecided && deviation.decision == Decision::Approved)
        return DeviationStage::Approved;
    if (isDecided)
        return deviation.built_on ? DeviationStage::BuiltRejected : DeviationStage::Rejected;
    if (deviation.built_on)
        return DeviationStage::BuiltUndecided;
    return deviation.asked_on ? DeviationStage::Asked : DeviationStage::Raised;
}

} // namespace lastrivet::acts
