// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/Answer.h"
#include "core/records/Records.h"

#include <algorithm>
#include <cstdint>

namespace lastrivet::readiness {

/// Counts what each rule looks at within the reach of one closing at one moment.
class Census {
public:
    /// The arguments must outlive it.
    Census(const ClosingAnswer &closing, const Records &records, Moment by);

    const OnRecord &onRecord() const { return m_closing.on_record; }
    std::int64_t holdPoints() const;
    /// Accepted as they stand: a rejection or a waiver is no signature.
    std::int64_t signedHoldPoints() const;
    /// Those among them whose signer is not the builder.
    std::int64_t signedByOthers() const;
    std::int64_t innerClosings() const;
    /// Also those elsewhere whose repair needs access through here and that keep it open.
    std::int64_t squawks() const;
    std::int64_t builtDeviations() const;
    /// Squawks, deviations and bulletins of the parts above those that are enclosed.
    std::int64_t filedAbove() const;
    std::int64_t torqueLimits() const;
    std::int64_t torqued() const;
    /// Fasteners with a torque on record and a limit to compare it with.
    std::int64_t torquedWithLimits() const;
    std::int64_t handLocks() const;
    std::int64_t measuredWithLimits() const;
    /// Torques and measurements with a tool that needs calibration.
    std::int64_t toolUses() const;
    std::int64_t usesWithExpiry() const;
    /// Of material that cures, whether its cure time is known or not.
    std::int64_t usesThatCure() const;
    std::int64_t knownCureTimes() const;
    std::int64_t testedSamples() const;

private:
    bool reaches(Id<Component> part) const
    {
        return std::binary_search(m_closing.reach.begin(), m_closing.reach.end(), part);
    }
    bool isSigned(const HoldPoint &point) const;
    bool isCalibratedTool(Id<Tool> id) const;

    template <class Record, class Condition>
    static std::int64_t countLive(const Table<Record> &table, Condition condition)
    {
        return std::count_if(table.begin(), table.end(), [&](const Record &record) {
            return !record.withdrawn_on && condition(record);
        });
    }
    template <class Condition> std::int64_t countFasteners(Condition condition) const
    {
        return countLive(m_records.fasteners, [&](const Fastener &fastener) {
            return reaches(fastener.component_id) && happened(fastener.fitted_on, m_by) &&
                   !happened(fastener.removed_on, m_by) && condition(fastener);
        });
    }
    template <class Condition> std::int64_t countMeasured(Condition condition) const
    {
        return countLive(m_records.measurements, [&](const Measurement &measurement) {
            return reaches(measurement.component_id) && happened(measurement.measured_on, m_by) &&
                   condition(measurement);
        });
    }
    template <class Condition> std::int64_t countUses(Condition condition) const
    {
        return countLive(m_records.material_uses, [&](const MaterialUse &use) {
            return reaches(use.component_id) && happened(use.used_on, m_by) && condition(use);
        });
    }

    const ClosingAnswer &m_closing;
    const Records &m_records;
    Moment m_by;
};

} // namespace lastrivet::readiness
