// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"

namespace lastrivet::readiness {

/// What has happened and what exists at a moment `at`, as seen from the moment `asOf` that is asked
/// about.
///
/// A fact counts when it happened by both. A record with `planned_on` exists from that day on, or
/// from the first thing that happened to it.
class Reckoning {
public:
    Reckoning(Moment at, Moment asOf)
        : m_at(at)
        , m_asOf(asOf)
    {
    }

    Moment at() const { return m_at; }
    Moment asOf() const { return m_asOf; }

    bool counts(const std::optional<Moment> &moment) const
    {
        return happened(moment, m_at) && happened(moment, m_asOf);
    }

    bool exists(const Step &step) const { return planned(step, step.done_on, step.dropped_on); }
    bool exists(const Fastener &fastener) const
    {
        return planned(fastener, fastener.fitted_on, fastener.torqued_on) &&
               !counts(fastener.removed_on);
    }
    bool exists(const Measurement &measurement) const
    {
        return planned(measurement, measurement.measured_on);
    }
    bool exists(const PartLine &line) const
    {
        return planned(line, line.ordered_on, line.received_on);
    }
    bool exists(const Check &check) const { return planned(check, check.done_on); }
    bool exists(const HoldPoint &point) const { return planned(point, point.waived_on); }

    bool isDoneOrDropped(const Step &step) const
    {
        return counts(step.done_on) || counts(step.dropped_on);
    }

private:
    template <class Record, class... Own>
    bool planned(const Record &record, const Own &...own) const
    {
        return !record.planned_on || counts(record.planned_on) || (counts(own) || ...);
    }

    Moment m_at;
    Moment m_asOf;
};

} // namespace lastrivet::readiness
