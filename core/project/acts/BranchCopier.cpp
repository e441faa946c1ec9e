// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/BranchCopier.h"

#include "core/profiles/HoldPoints.h"
#include "core/project/acts/OtherSide.h"
#include "core/project/acts/PartActs.h"

#include <algorithm>

namespace lastrivet::acts {

bool isCopied(const Step &step)
{
    return !step.withdrawn_on && !step.dropped_on;
}

bool isCopied(const Closing &closing)
{
    return !closing.withdrawn_on && closing.scope == ClosingScope::Region;
}

bool isCopied(const Fastener &fastener)
{
    return !fastener.withdrawn_on && !fastener.removed_on;
}

bool isCopied(const Measurement &measurement)
{
    return !measurement.withdrawn_on;
}

BranchCopier::BranchCopier(Edit &edit, const BranchCopy &copy)
    : m_edit(edit)
    , m_copy(copy)
    , m_before(edit.records())
{
}

Id<Component> BranchCopier::run()
{
    copyParts();
    copyClosings();
    copySteps();
    copyFasteners();
    copyMeasurements();
    return m_parts.at(m_copy.parts.front().original);
}

std::string BranchCopier::words(const std::string &text) const
{
    return m_copy.swapsSides ? nameOnOtherSide(text) : text;
}

/// A plan with a day was made on that day; its copy is made today.
std::optional<Moment> BranchCopier::planned(const std::optional<Moment> &original) const
{
    return original ? std::optional(m_edit.today()) : std::nullopt;
}

void BranchCopier::copyParts()
{
    for (const BranchCopy::Part &part : m_copy.parts) {
        const Component &original = *m_before.find(part.original);
        Component made;
        made.code = part.code;
        made.name = part.name;
        made.kind = original.kind;
        made.construction = original.construction;
        made.part_number = original.part_number;
        made.zone = words(original.zone);
        made.plan_ref = original.plan_ref;
        made.never_enclosed_why = original.never_enclosed_why;
        if (part.depth > 0) {
            made.parent_id = m_parts.at(original.parent_id);
            made.position = original.position;
            m_parts[part.original] = m_edit.put(made);
            continue;
        }
        made.parent_id = original.parent_id;
        const auto beside = partsInside(m_before, original.parent_id);
        const auto place = std::ranges::find(beside, part.original);
        m_parts[part.original] = addPart(m_edit, made, std::size_t(place - beside.begin()) + 1);
    }
}

void BranchCopier::copyClosings()
{
    for (const Closing &closing : m_before.closings) {
        if (isCopied(closing) && m_parts.contains(closing.component_id))
            copyClosing(closing);
    }
    for (const auto &[original, copy] : m_closings)
        copyChecks(*m_before.find(original));
}

void BranchCopier::copyClosing(const Closing &original)
{
    Closing made;
    made.component_id = m_parts.at(original.component_id);
    made.title = words(original.title);
    for (const Id<Component> part : original.encloses) {
        if (const auto copy = m_parts.find(part); copy != m_parts.end())
            made.encloses.push_back(copy->second);
    }
    if (made.encloses.empty())
        made.encloses.push_back(made.component_id);
    std::ranges::sort(made.encloses);
    made.permanent = original.permanent;
    made.made_by = original.made_by == MadeBy::Factory ? MadeBy::Factory : MadeBy::Builder;
    made.method = original.method;
    made.id = m_edit.put(made);
    m_closings[original.id] = made.id;
    if (made.made_by == MadeBy::Factory)
        return;
    copyHoldPoints(original);
    for (HoldPoint &point : holdPointsFor(made, m_edit.records(), m_edit.profile()))
        m_edit.put(std::move(point));
}

void BranchCopier::copyHoldPoints(const Closing &original)
{
    for (const HoldPoint &point : m_before.hold_points) {
        if (point.closing_id != original.id || point.withdrawn_on)
            continue;
        HoldPoint made;
        made.closing_id = m_closings.at(original.id);
        made.kind = point.kind;
        made.signer_role = point.signer_role;
        made.required = point.required;
        made.source = point.source;
        made.planned_on = planned(point.planned_on);
        m_edit.put(made);
    }
}

void BranchCopier::copyChecks(const Closing &original)
{
    if (original.made_by == MadeBy::Factory)
        return;
    for (const Check &check : m_before.checks) {
        if (check.closing_id != original.id || check.withdrawn_on)
            continue;
        Check made;
        made.closing_id = m_closings.at(original.id);
        made.item = words(check.item);
        made.source = check.source;
        made.planned_on = planned(check.planned_on);
        made.may_follow = mayFollow(check.may_follow);
        m_edit.put(made);
    }
}

void BranchCopier::copySteps()
{
    for (const Step &step : m_before.steps) {
        if (isCopied(step) && m_parts.contains(step.component_id))
            m_steps[step.id] = Id<Step>{m_edit.newId()};
    }
    for (const Step &step : m_before.steps) {
        if (m_steps.contains(step.id))
            copyStep(step);
    }
}

void BranchCopier::copyStep(const Step &original)
{
    Step made;
    made.id = m_steps.at(original.id);
    made.component_id = m_parts.at(original.component_id);
    made.position = original.position;
    made.title = words(original.title);
    made.plan_ref = original.plan_ref;
    made.planned_on = planned(original.planned_on);
    made.estimate_minutes = original.estimate_minutes;
    made.after = before(original);
    if (const auto closing = m_closings.find(original.closes); closing != m_closings.end())
        made.closes = closing->second;
    made.may_follow = mayFollow(original.may_follow);
    m_edit.put(made);
}

IdSet<Step> BranchCopier::before(const Step &original) const
{
    std::unordered_set<Id<Step>> seen;
    IdSet<Step> open = original.after;
    IdSet<Step> found;
    while (!open.empty()) {
        const Id<Step> id = open.back();
        open.pop_back();
        const Step *step = m_before.find(id);
        if (!step || !seen.insert(id).second)
            continue;
        const bool isPassedThrough =
            step->withdrawn_on || (step->dropped_on && m_parts.contains(step->component_id));
        if (isPassedThrough)
            open.insert(open.end(), step->after.begin(), step->after.end());
        else
            found.push_back(stepFor(id) ? stepFor(id) : id);
    }
    std::ranges::sort(found);
    return found;
}

IdSet<Closing> BranchCopier::mayFollow(const IdSet<Closing> &original) const
{
    IdSet<Closing> made;
    for (const Id<Closing> closing : original) {
        const auto copy = m_closings.find(closing);
        made.push_back(copy == m_closings.end() ? closing : copy->second);
    }
    std::ranges::sort(made);
    return made;
}

Id<Step> BranchCopier::stepFor(Id<Step> original) const
{
    const auto copy = m_steps.find(original);
    return copy == m_steps.end() ? Id<Step>{} : copy->second;
}

void BranchCopier::copyFasteners()
{
    for (const Fastener &original : m_before.fasteners) {
        if (!isCopied(original) || !m_parts.contains(original.component_id))
            continue;
        Fastener made;
        made.component_id = m_parts.at(original.component_id);
        made.step_id = stepFor(original.step_id);
        made.may_follow = mayFollow(original.may_follow);
        made.place = words(original.place);
        made.hardware = original.hardware;
        made.thread = original.thread;
        made.quantity = original.quantity;
        made.planned_on = planned(original.planned_on);
        made.torque_min = original.torque_min;
        made.torque_max = original.torque_max;
        made.torque_drag = original.torque_drag;
        made.torque_unit = original.torque_unit;
        made.locking = original.locking;
        m_edit.put(made);
    }
}

void BranchCopier::copyMeasurements()
{
    for (const Measurement &original : m_before.measurements) {
        if (!isCopied(original) || !m_parts.contains(original.component_id))
            continue;
        Measurement made;
        made.component_id = m_parts.at(original.component_id);
        made.step_id = stepFor(original.step_id);
        made.may_follow = mayFollow(original.may_follow);
        made.what = words(original.what);
        made.unit = original.unit;
        made.planned_on = planned(original.planned_on);
        made.minimum = original.minimum;
        made.maximum = original.maximum;
        m_edit.put(made);
    }
}

} // namespace lastrivet::acts
