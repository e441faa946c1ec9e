// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/WorkLeft.h"

#include "core/forecast/PastWork.h"

#include <algorithm>
#include <map>
#include <optional>

namespace lastrivet::forecast {

namespace {

constexpr double twoHours = 120;

bool hasCome(const std::optional<Moment> &moment, Moment asOf)
{
    return moment && !after(*moment, asOf);
}

std::optional<double> median(std::vector<double> values)
{
    if (values.empty())
        return std::nullopt;
    std::sort(values.begin(), values.end());
    const auto middle = values.size() / 2;
    return values.size() % 2 ? values[middle] : (values[middle - 1] + values[middle]) / 2;
}

/// What steps without an estimate are taken for.
class Guess {
public:
    Guess(const Records &records, Moment asOf)
        : m_records(records)
    {
        for (const auto &[id, minutes] : minutesByStep(records, asOf)) {
            const auto *step = records.find(id);
            if (!step || step->withdrawn_on || !hasCome(step->done_on, asOf) || minutes <= 0)
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
        m_anything = median(m_all).value_or(median(std::move(estimates)).value_or(twoHours));
        for (auto &[kind, minutes] : m_byKind)
            m_medians[kind] = *median(std::move(minutes));
    }

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
};

/// The part without a parent above a part, and whether one on the way is left out.
struct Place {
    Id<Component> assembly;
    bool isExcluded = false;
};

Place placeOf(const Records &records, Id<Component> part, const IdSet<Component> &without)
{
    Place place{part, false};
    // Records from elsewhere may hold a circle; a chain is never longer than there are parts.
    for (std::size_t i = 0; part && i <= records.components.size(); ++i) {
        place.assembly = part;
        place.isExcluded = place.isExcluded || std::binary_search(without.begin(), without.end(), part);
        const auto *found = records.find(part);
        part = found ? found->parent_id : Id<Component>{};
    }
    return place;
}

} // namespace

WorkLeft workLeft(const Records &records, Moment asOf, const IdSet<Component> &without)
{
    const Guess guess(records, asOf);
    WorkLeft left;
    std::map<Id<Component>, AssemblyWork> assemblies;
    const auto workOf = [&](Id<Component> assembly) -> AssemblyWork & {
        return assemblies.try_emplace(assembly, AssemblyWork{assembly, {}, 0}).first->second;
    };
    for (const auto &step : records.steps) {
        if (step.withdrawn_on || hasCome(step.done_on, asOf) || hasCome(step.dropped_on, asOf))
            continue;
        const auto place = placeOf(records, step.component_id, without);
        left.excluded_steps += place.isExcluded;
        if (place.isExcluded)
            continue;
        ++left.steps;
        left.guessed_estimates += !step.estimate_minutes;
        workOf(place.assembly)
            .steps.push_back(step.estimate_minutes ? double(step.estimate_minutes->count())
                                                   : guess.minutesFor(step));
    }
    for (const auto &squawk : records.squawks) {
        if (squawk.withdrawn_on || !hasCome(squawk.found_on, asOf) ||
            hasCome(squawk.fixed_on, asOf) || hasCome(squawk.accepted_on, asOf))
            continue;
        const auto place = placeOf(records, squawk.component_id, without);
        if (place.isExcluded)
            continue;
        ++left.squawks;
        left.squawks_without_estimate += !squawk.estimate_minutes;
        if (squawk.estimate_minutes)
            workOf(place.assembly).squawks += double(squawk.estimate_minutes->count());
    }
    for (auto &[id, work] : assemblies)
        left.assemblies.push_back(std::move(work));
    return left;
}

} // namespace lastrivet::forecast
