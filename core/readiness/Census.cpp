// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Census.h"

#include "core/readiness/SignOffs.h"
#include "core/records/LockedByHand.h"
#include "core/records/invariants/Ancestors.h"

#include <vector>

namespace lastrivet::readiness {

namespace {

bool hasTorqueLimit(const Fastener &fastener)
{
    return fastener.torque_min.has_value() || fastener.torque_max.has_value();
}

/// The parts above `parts`, by id.
IdSet<Component> ancestorsOf(const Records &records, const IdSet<Component> &parts)
{
    IdSet<Component> above;
    for (const Id<Component> part : parts) {
        invariants::anyUpwards(records, part, [&](const Component &step) {
            if (step.parent_id)
                above.push_back(step.parent_id);
            return false;
        });
    }
    std::sort(above.begin(), above.end());
    above.erase(std::unique(above.begin(), above.end()), above.end());
    return above;
}

} // namespace

Census::Census(const ClosingAnswer &closing, const Records &records, Moment by)
    : m_closing(closing)
    , m_records(records)
    , m_by(by)
{
}

std::int64_t Census::holdPoints() const
{
    return countLive(m_records.hold_points,
                     [&](const HoldPoint &point) { return point.closing_id == m_closing.id; });
}

std::int64_t Census::signedHoldPoints() const
{
    return countLive(m_records.hold_points,
                     [&](const HoldPoint &point) { return isSigned(point); });
}

std::int64_t Census::signedByOthers() const
{
    return countLive(m_records.hold_points, [&](const HoldPoint &point) {
        return point.signer_role != SignerRole::Builder && isSigned(point);
    });
}

bool Census::isSigned(const HoldPoint &point) const
{
    if (point.closing_id != m_closing.id || happened(point.waived_on, m_by))
        return false;
    const SignOff *latest = latestSignOff(m_records, point.id, m_by);
    return latest && isAccepted(*latest);
}

std::int64_t Census::innerClosings() const
{
    const Closing *own = m_records.find(m_closing.id);
    return countLive(m_records.closings, [&](const Closing &inner) {
        return inner.id != m_closing.id && inner.permanent && inner.scope == ClosingScope::Region &&
               reaches(inner.component_id) && own && inner.component_id != own->component_id;
    });
}

std::int64_t Census::squawks() const
{
    const auto isElsewhere = [&](const Blocker &blocker) {
        const Squawk *squawk = blocker.rule == Rule::OpenSquawk
                                   ? m_records.find(Id<Squawk>{blocker.record.id})
                                   : nullptr;
        return squawk && squawk->component_id && !reaches(squawk->component_id);
    };
    return onRecord().squawks +
           std::count_if(m_closing.blockers.begin(), m_closing.blockers.end(), isElsewhere);
}

std::int64_t Census::builtDeviations() const
{
    const Closing *own = m_records.find(m_closing.id);
    const bool isAircraft = own && own->scope == ClosingScope::Aircraft;
    return countLive(m_records.deviations, [&](const Deviation &deviation) {
        const IdSet<Component> &parts = deviation.component_ids;
        return happened(deviation.built_on, m_by) &&
               ((isAircraft && parts.empty()) ||
                std::any_of(parts.begin(), parts.end(),
                            [&](Id<Component> part) { return reaches(part); }));
    });
}

std::int64_t Census::filedAbove() const
{
    const Closing *own = m_records.find(m_closing.id);
    const IdSet<Component> above = ancestorsOf(m_records, own ? own->encloses : IdSet<Component>{});
    const auto isAbove = [&](Id<Component> part) {
        return std::binary_search(above.begin(), above.end(), part) && !reaches(part);
    };
    const auto isAnyAbove = [&](const IdSet<Component> &parts) {
        return std::any_of(parts.begin(), parts.end(), isAbove);
    };
    return countLive(m_records.squawks,
                     [&](const Squawk &squawk) {
                         return happened(squawk.found_on, m_by) && isAbove(squawk.component_id);
                     }) +
           countLive(m_records.deviations,
                     [&](const Deviation &deviation) {
                         return happened(deviation.raised_on, m_by) &&
                                isAnyAbove(deviation.component_ids);
                     }) +
           countLive(m_records.bulletins, [&](const Bulletin &bulletin) {
               return happened(bulletin.received_on, m_by) && isAnyAbove(bulletin.component_ids);
           });
}

std::int64_t Census::torqueLimits() const
{
    return countFasteners(hasTorqueLimit);
}

std::int64_t Census::torqued() const
{
    return countFasteners(
        [&](const Fastener &fastener) { return happened(fastener.torqued_on, m_by); });
}

std::int64_t Census::torquedWithLimits() const
{
    return countFasteners([&](const Fastener &fastener) {
        return happened(fastener.torqued_on, m_by) && fastener.torque_value.has_value() &&
               hasTorqueLimit(fastener);
    });
}

std::int64_t Census::handLocks() const
{
    return countFasteners(
        [](const Fastener &fastener) { return isLockedByHand(fastener.locking); });
}

std::int64_t Census::measuredWithLimits() const
{
    return countMeasured([](const Measurement &measurement) {
        return measurement.minimum.has_value() || measurement.maximum.has_value();
    });
}

bool Census::isCalibratedTool(Id<Tool> id) const
{
    const Tool *tool = m_records.findLive(id);
    return tool && tool->needs_calibration;
}

std::int64_t Census::toolUses() const
{
    return countFasteners([&](const Fastener &fastener) {
               return happened(fastener.torqued_on, m_by) && isCalibratedTool(fastener.tool_id);
           }) +
           countMeasured([&](const Measurement &measurement) {
               return isCalibratedTool(measurement.tool_id);
           });
}

std::int64_t Census::usesWithExpiry() const
{
    return countUses([&](const MaterialUse &use) {
        return std::any_of(use.lot_ids.begin(), use.lot_ids.end(), [&](Id<MaterialLot> id) {
            const MaterialLot *lot = m_records.findLive(id);
            return lot && lot->expires_on;
        });
    });
}

std::int64_t Census::usesThatCure() const
{
    return countUses([&](const MaterialUse &use) {
        return use.cure_minutes.has_value() ||
               std::any_of(use.lot_ids.begin(), use.lot_ids.end(), [&](Id<MaterialLot> id) {
                   const MaterialLot *lot = m_records.findLive(id);
                   return lot && lot->cures;
               });
    });
}

std::int64_t Census::knownCureTimes() const
{
    return countUses([](const MaterialUse &use) { return use.cure_minutes.has_value(); });
}

std::int64_t Census::testedSamples() const
{
    return countUses([](const MaterialUse &use) {
        return use.sample == Sample::Good || use.sample == Sample::Failed;
    });
}

} // namespace lastrivet::readiness
