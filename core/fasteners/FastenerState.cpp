// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fasteners/FastenerState.h"

#include "core/readiness/Limits.h"
#include "core/records/LockedByHand.h"

#include <algorithm>

namespace lastrivet::fasteners {

namespace {

bool isLeftOutside(const Fastener &fastener, Moment asOf)
{
    return readiness::isTorqueOutside(fastener) && !happened(fastener.accepted_on, asOf);
}

} // namespace

FastenerState stateOf(const Fastener &fastener, Moment asOf)
{
    if (happened(fastener.removed_on, asOf))
        return FastenerState::Removed;
    if (!happened(fastener.fitted_on, asOf))
        return FastenerState::ToFit;
    const bool isTorqued = happened(fastener.torqued_on, asOf);
    if ((fastener.torque_min || fastener.torque_max) && !isTorqued)
        return FastenerState::FingerTight;
    if (isTorqued && isLeftOutside(fastener, asOf))
        return FastenerState::OutOfLimits;
    if (isLockedByHand(fastener.locking) && !happened(fastener.locked_on, asOf))
        return FastenerState::ToLock;
    if (isTorqued && !happened(fastener.marked_on, asOf))
        return FastenerState::ToSeal;
    return FastenerState::Done;
}

bool isOutside(const Fastener &fastener, double shown)
{
    const auto torque = readiness::netTorque(shown, fastener.torque_drag);
    return readiness::isOutside(*torque, fastener.torque_min, fastener.torque_max);
}

std::pair<std::optional<double>, std::optional<double>> limitsOnWrench(const Fastener &fastener)
{
    const auto shown = [&](std::optional<double> limit) {
        return limit ? std::optional(*limit + fastener.torque_drag.value_or(0)) : std::nullopt;
    };
    return {shown(fastener.torque_min), shown(fastener.torque_max)};
}

std::vector<const Fastener *> fingerTight(const Records &records, Moment asOf)
{
    std::vector<const Fastener *> found;
    for (const Fastener &fastener : records.fasteners) {
        if (!fastener.withdrawn_on && stateOf(fastener, asOf) == FastenerState::FingerTight)
            found.push_back(&fastener);
    }
    std::stable_sort(found.begin(), found.end(), [](const Fastener *a, const Fastener *b) {
        return sortsBefore(*a->fitted_on, *b->fitted_on);
    });
    return found;
}

} // namespace lastrivet::fasteners
