// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/WorkLeft.h"

#include "core/hours/Estimates.h"

#include <algorithm>
#include <map>
#include <optional>
#include <unordered_map>

namespace lastrivet::forecast {

namespace {

constexpr double twoHours = 120;

std::optional<double> median(std::vector<double> values)
{
    if (values.empty())
        return std::nullopt;
    std::sort(values.begin(), values.end());
    const auto middle = values.size() / 2;
    return values.size() % 2 ? values[middle] : (values[middle - 1] + values[middle]) / 2;
}

/// The minutes that steps without an estimate are taken to need.
class Guess {
public:
    Guess(const Records &records, Moment asOf)
        : m_records(records)
    {
        for (const auto &[id, worked] : hours::minutesByStep(records, asOf)) {
            const auto *step = records.find(id);
            const double minutes = double(worked.count());
            if (!step || step->withdrawn_on || !happened(step->done_on, asOf) || minutes <= 0)
                continue;
            m_all.push_back(minutes);
            if (const auto *part = records.find(step->component_id))
                m_byKind[part->kind].push_back(minutes);
        }
        std::vector<double> estimates;
        for (const auto &step : records.steps) {
            if (!step.withdrawn_on && step.estimate_minutes)
                estimates.push_back(double(step.estimate_minutes->count()));
        }
        m_standIn = !m_all.empty()       ? StandIn::FinishedSteps
                    : !estimates.empty() ? StandIn::Estimates
                                         : StandIn::TwoHours;
        m_anything = median(m_all).value_or(median(std::move(estimates)).value_or(twoHours));
        for (auto &[kind, minutes] : m_byKind)
            m_medians[kind] = *median(std::move(minutes));
    }

    StandIn standIn() const { return m_standIn; }
    double minutesFor(const Step &step) const
    {
        const auto *part = m_records.find(step.component_id);
        const auto known = part ? m_medians.find(part->kind) : m_medians.end();
        return known == m_medians.end() ? m_anything : known->second;
    }

private:
    const Records &m_records;
    std::vector<double> m_all;
    std::map<ComponentKind, std::vector<double>> m_byKind;
    std::map<ComponentKind, double> m_medians;
    double m_anything = twoHours;
    StandIn m_standIn = StandIn::TwoHours;
};

/// The part without a parent above a part, and whether one on the way is left out.
struct Place {
    Id<Component> assembly;
    bool isExcluded = false;
};

/// Where parts lie; each is looked up once, however deep they nest.
class Places {
public:
    Places(const Records &records, const IdSet<Component> &without)
        : m_records(records)
        , m_without(without)
    {
    }

    Place of(Id<Component> part)
    {
        Place place;
        IdSet<Component> path;
        while (part) {
            // Damaged records may contain a cycle of parents: it ends where it began.
            const auto [known, isNew] = m_known.try_emplace(part, Place{part, false});
            if (!isNew) {
                place = known->second;
                break;
            }
            path.push_back(part);
            place.assembly = part;
            const auto *found = m_records.find(part);
            part = found ? found->parent_id : Id<Component>{};
        }
        for (auto at = path.rbegin(); at != path.rend(); ++at) {
            place.isExcluded =
                place.isExcluded || std::binary_search(m_without.begin(), m_without.end(), *at);
            m_known[*at] = place;
        }
        return place;
    }

private:
    const Records &m_records;
    const IdSet<Component> &m_without;
    std::unordered_map<Id<Component>, Place> m_known;
};

/// Sorts what is left by assembly.
class Gathering {
public:
    Gathering(const Records &records, Moment asOf, const WorkChoice &choice)
        : m_places(records, choice.without)
        , m_guess(records, asOf)
    {
        m_left.stand_in = m_guess.standIn();
    }

    void add(const Step &step)
    {
        const auto place = m_places.of(step.component_id);
        m_left.excluded_steps += place.isExcluded;
        if (place.isExcluded)
            return;
        ++m_left.steps;
        m_left.guessed_estimates += !step.estimate_minutes;
        workOf(place.assembly)
            .steps.push_back(step.estimate_minutes ? double(step.estimate_minutes->count())
                                                   : m_guess.minutesFor(step));
    }

    void add(const Squawk &squawk)
    {
        const auto place = m_places.of(squawk.component_id);
        m_left.excluded_squawks += place.isExcluded;
        if (place.isExcluded)
            return;
        ++m_left.squawks;
        m_left.squawks_without_estimate += !squawk.estimate_minutes;
        if (squawk.estimate_minutes)
            workOf(place.assembly).squawks += double(squawk.estimate_minutes->count());
    }

    WorkLeft left() &&
    {
        for (auto &[id, work] : m_assemblies)
            m_left.assemblies.push_back(std::move(work));
        return std::move(m_left);
    }

private:
    AssemblyWork &workOf(Id<Component> assembly)
    {
        return m_assemblies.try_emplace(assembly, AssemblyWork{assembly, {}, 0}).first->second;
    }

    Places m_places;
    Guess m_guess;
    WorkLeft m_left;
    std::map<Id<Component>, AssemblyWork> m_assemblies;
};

} // namespace

WorkLeft workLeft(const Records &records, Moment asOf, const WorkChoice &choice)
{
    Gathering gathering(records, asOf, choice);
    for (const auto &step : records.steps) {
        if (!step.withdrawn_on && !happened(step.done_on, asOf) &&
            !happened(step.dropped_on, asOf) && (!choice.takes_step || choice.takes_step(step)))
            gathering.add(step);
    }
    for (const auto &squawk : records.squawks) {
        if (!squawk.withdrawn_on && happened(squawk.found_on, asOf) &&
            !happened(squawk.fixed_on, asOf) && !happened(squawk.accepted_on, asOf) &&
            (!choice.takes_squawk || choice.takes_squawk(squawk)))
            gathering.add(squawk);
    }
    return std::move(gathering).left();
}

bool isLeftOut(const Records &records, Id<Component> part, const IdSet<Component> &without)
{
    return !without.empty() && Places(records, without).of(part).isExcluded;
}

} // namespace lastrivet::forecast
