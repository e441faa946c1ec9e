// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stores/Delivery.h"

#include <algorithm>
#include <map>
#include <unordered_map>

namespace lastrivet::stores {

namespace {

std::int64_t atLeastZero(std::int64_t number)
{
    return std::max<std::int64_t>(number, 0);
}

std::int64_t daysBetween(const std::optional<Moment> &from, const std::optional<Moment> &to)
{
    return from && to ? atLeastZero((to->day() - from->day()).count()) : 0;
}

LineState stateOf(const LineStanding &standing, bool isCounted, std::int64_t good,
                  std::int64_t listed)
{
    if (!isCounted)
        return standing.days_late > 0 ? LineState::Late : LineState::Awaited;
    if (standing.missing > 0)
        return LineState::Missing;
    if (standing.wanted > 0)
        return LineState::Damaged;
    return good > listed ? LineState::Surplus : LineState::Complete;
}

bool isOpen(const Step &step, Moment asOf)
{
    return !step.withdrawn_on && !happened(step.done_on, asOf) && !happened(step.dropped_on, asOf);
}

/// The open steps by their part, looked through once for all lines.
class OpenSteps {
public:
    OpenSteps(const Records &records, Moment asOf)
        : m_records(records)
        , m_asOf(asOf)
    {
        for (const Step &step : records.steps) {
            if (step.component_id && isOpen(step, asOf))
                m_byPart[step.component_id].push_back(step.id);
        }
    }

    std::vector<Id<Step>> waitingFor(const PartLine &line) const
    {
        if (line.step_id) {
            const Step *step = m_records.find(line.step_id);
            return step && isOpen(*step, m_asOf) ? std::vector{step->id} : std::vector<Id<Step>>{};
        }
        const auto found = m_byPart.find(line.component_id);
        return found == m_byPart.end() ? std::vector<Id<Step>>{} : found->second;
    }

private:
    const Records &m_records;
    Moment m_asOf;
    std::unordered_map<Id<Component>, std::vector<Id<Step>>> m_byPart;
};

void count(Shipment &shipment, const PartLine &line, const LineStanding &standing)
{
    shipment.lines.push_back(line.id);
    shipment.to_count +=
        standing.state == LineState::Awaited || standing.state == LineState::Late ? 1 : 0;
    shipment.late += standing.isOverdue() ? 1 : 0;
    shipment.missing += standing.state == LineState::Missing ? 1 : 0;
    shipment.damaged += standing.damaged > 0 && standing.wanted > 0 ? 1 : 0;
}

} // namespace

LineStanding standingOf(const PartLine &line, Moment asOf)
{
    const bool isCounted = happened(line.received_on, asOf);
    const auto listed = atLeastZero(line.quantity);
    const auto came = isCounted ? atLeastZero(line.received_quantity) : 0;
    LineStanding standing;
    standing.damaged = isCounted ? std::min(atLeastZero(line.damaged_quantity), came) : 0;
    standing.missing = atLeastZero(listed - came);
    standing.wanted = atLeastZero(listed - (came - standing.damaged));
    standing.days_late =
        daysBetween(line.expected_on, standing.wanted > 0 ? std::optional(asOf) : line.received_on);
    standing.state = stateOf(standing, isCounted, came - standing.damaged, listed);
    return standing;
}

std::vector<Shipment> shipments(const Records &records, Moment asOf)
{
    std::map<std::string, std::size_t, std::less<>> places;
    std::vector<Shipment> found;
    for (const PartLine &line : records.part_lines) {
        if (line.withdrawn_on)
            continue;
        const auto [place, isNew] = places.try_emplace(line.shipment, found.size());
        if (isNew)
            found.push_back({line.shipment});
        count(found[place->second], line, standingOf(line, asOf));
    }
    std::stable_partition(found.begin(), found.end(),
                          [](const Shipment &shipment) { return !shipment.isSettled(); });
    return found;
}

std::vector<Wait> waits(const Records &records, Moment asOf)
{
    std::vector<Wait> found;
    const OpenSteps steps(records, asOf);
    for (const PartLine &line : records.part_lines) {
        if (line.withdrawn_on)
            continue;
        const auto standing = standingOf(line, asOf);
        if (standing.wanted > 0)
            found.push_back({line.id, standing, steps.waitingFor(line)});
    }
    std::stable_sort(found.begin(), found.end(), [](const Wait &a, const Wait &b) {
        return a.standing.days_late > b.standing.days_late;
    });
    return found;
}

} // namespace lastrivet::stores
