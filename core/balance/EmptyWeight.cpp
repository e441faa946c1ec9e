// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/balance/EmptyWeight.h"

#include "core/readiness/LatestOf.h"

#include <algorithm>
#include <fmt/format.h>

namespace lastrivet::balance {

namespace {

Result<EmptyWeight, Message> summed(EmptyWeight empty)
{
    std::vector<Item> items;
    for (const auto &line : empty.lines)
        items.push_back(line.item);
    auto sum = balance(items, std::nullopt);
    if (!sum)
        return sum.reason();
    empty.sum = *sum;
    return empty;
}

/// Whether it happened after the weighing, and not after the moment that is asked about.
bool isBetween(const std::optional<Moment> &moment, const Weighing &weighing, Moment asOf)
{
    return moment && after(*moment, *weighing.weighed_on) && !after(*moment, asOf);
}

void addEquipment(EmptyWeight &empty, const Equipment &equipment, Line::Kind kind)
{
    if (!equipment.weight || !equipment.weight_unit || !equipment.arm || !equipment.arm_unit) {
        if (std::find(empty.without_weight.begin(), empty.without_weight.end(), equipment.id) ==
            empty.without_weight.end())
            empty.without_weight.push_back(equipment.id);
        return;
    }
    const auto weight = converted(*equipment.weight, *equipment.weight_unit, empty.units.weight);
    const auto arm = converted(*equipment.arm, *equipment.arm_unit, empty.units.arm);
    empty.lines.push_back({kind,
                           {equipment.name, kind == Line::Kind::Removed ? -weight : weight, arm},
                           {RecordType::Equipment, equipment.id.value()}});
}

} // namespace

Result<EmptyWeight, Message> weighed(const Weighing &weighing)
{
    if (weighing.scale_readings.empty())
        return Message{"The weighing has no scale readings.", {}};
    EmptyWeight empty{weighing.id, {weighing.weight_unit, weighing.arm_unit}, {}, {}, {}};
    const RecordRef record{RecordType::Weighing, weighing.id.value()};
    for (const auto &scale : weighing.scale_readings) {
        if (scale.tare < 0)
            return Message{"The tare of {0} is below zero: a tare is what lies on the scale "
                           "besides the aeroplane, and is taken off.",
                           {scale.point}};
        if (scale.reading < scale.tare)
            return Message{"The reading of {0} is below its tare.", {scale.point}};
        empty.lines.push_back(
            {Line::Kind::Scale, {scale.point, scale.reading - scale.tare, scale.arm}, record});
    }
    for (const auto &correction : weighing.corrections)
        empty.lines.push_back(
            {Line::Kind::Correction, {correction.what, correction.weight, correction.arm}, record});
    return summed(std::move(empty));
}

const Weighing *latestWeighing(const Records &records, Moment asOf)
{
    std::vector<const Weighing *> weighings;
    for (const auto &weighing : records.weighings) {
        if (!weighing.withdrawn_on && happened(weighing.weighed_on, asOf))
            weighings.push_back(&weighing);
    }
    return readiness::latestOf(weighings,
                               [](const Weighing &weighing) { return *weighing.weighed_on; });
}

Result<EmptyWeight, Message> emptyWeight(const Records &records, Moment asOf)
{
    const auto *weighing = latestWeighing(records, asOf);
    if (!weighing)
        return Message{"The aeroplane has not been weighed.", {}};
    auto empty = weighed(*weighing);
    if (!empty)
        return empty;
    for (const auto &equipment : records.equipment) {
        if (equipment.withdrawn_on)
            continue;
        if (isBetween(equipment.fitted_on, *weighing, asOf))
            addEquipment(*empty, equipment, Line::Kind::Fitted);
        if (isBetween(equipment.removed_on, *weighing, asOf))
            addEquipment(*empty, equipment, Line::Kind::Removed);
    }
    return summed(std::move(*empty));
}

std::vector<WeightEffect> weightEffects(const Records &records, Moment asOf)
{
    std::vector<WeightEffect> effects;
    for (const auto &deviation : records.deviations) {
        const bool isBuilt = deviation.built_on && !after(*deviation.built_on, asOf) &&
                             !(deviation.undone_on && !after(*deviation.undone_on, asOf));
        if (isBuilt && !deviation.withdrawn_on && deviation.weight_change)
            effects.push_back({{RecordType::Deviation, deviation.id.value()},
                               *deviation.weight_change,
                               deviation.weight_unit,
                               deviation.arm,
                               deviation.arm_unit});
    }
    return effects;
}

} // namespace lastrivet::balance
