// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/WeightReport.h"

#include "core/readiness/CalibrationAt.h"

#include <algorithm>

namespace lastrivet::packet {

namespace {

/// Weights that were converted may be off in their last figures.
constexpr double rounding = 1e-9;

using balance::converted;

balance::Units usualUnits(const Records &records)
{
    const bool isMetric = records.project.units == UnitSystem::Metric;
    return {isMetric ? WeightUnit::Kilograms : WeightUnit::Pounds,
            isMetric ? ArmUnit::Millimetres : ArmUnit::Inches};
}

std::string toolName(const Tool &tool)
{
    return tool.serial_number.empty() ? tool.name : tool.name + ", " + tool.serial_number;
}

/// The latest calibration that was there on the day.
std::optional<Moment> calibratedUntil(const Tool &tool, Moment day)
{
    const auto *calibration =
        readiness::calibrationAt(tool, day, [](const std::optional<Moment> &) { return true; });
    return calibration ? calibration->due_on : std::nullopt;
}

void addScales(WeightReport &report, const Records &records)
{
    for (const auto &scale : report.weighing->scale_readings) {
        WeightReport::Scale line{scale.point, scale.reading, scale.tare, scale.arm, {}, {}, false};
        if (const Tool *tool = records.findLive(scale.tool_id)) {
            line.tool = toolName(*tool);
            line.calibrated_until = calibratedUntil(*tool, *report.weighing->weighed_on);
            line.was_uncalibrated = readiness::wasUncalibrated(*tool, *report.weighing->weighed_on);
        }
        report.scales.push_back(std::move(line));
    }
}

void addEmpty(WeightReport &report, const Records &records)
{
    auto empty = balance::emptyWeight(records, *report.as_of);
    if (const auto *weighing = balance::latestWeighing(records, *report.as_of)) {
        report.weighing = *weighing;
        report.units = {weighing->weight_unit, weighing->arm_unit};
        addScales(report, records);
    }
    if (!empty) {
        report.refusal = empty.reason();
        return;
    }
    report.empty = *empty;
}

void addLimits(WeightReport &report, const Records &records)
{
    report.most_weight = balance::mostWeight(records, report.units);
    const auto *envelope = balance::envelopeOf(records);
    if (!envelope)
        return;
    report.chord = balance::chordOf(*envelope, report.units);
    report.limits = WeightReport::Limits{{}, envelope->source};
    for (const auto &point : envelope->points)
        report.limits->corners.push_back(
            {{},
             converted(point.weight, envelope->weight_unit, report.units.weight),
             converted(point.arm, envelope->arm_unit, report.units.arm)});
}

std::optional<bool> isWithinLimits(const WeightReport &report, const Records &records,
                                   const balance::Balance &sum)
{
    if (report.most_weight && sum.weight > *report.most_weight * (1 + rounding))
        return false;
    const auto *envelope = balance::envelopeOf(records);
    if (!envelope || envelope->points.size() < 3)
        return std::nullopt;
    return balance::isWithin(*envelope, sum.weight, sum.cg, report.units);
}

std::optional<balance::Item> emptyItem(const WeightReport &report)
{
    if (!report.empty)
        return std::nullopt;
    return balance::Item{"", report.empty->sum.weight, report.empty->sum.cg};
}

void addCases(WeightReport &report, const Records &records)
{
    const auto empty = emptyItem(report);
    for (const auto &loading : records.loading_cases) {
        if (loading.withdrawn_on)
            continue;
        WeightReport::Case made{loading.name, {}, {}, {}, {}};
        for (const auto &load : balance::loadsOf(loading, report.units))
            made.items.push_back({load.what, load.most, load.arm});
        const auto sum =
            balance::loaded(empty ? &*empty : nullptr, loading, report.chord, report.units);
        if (sum) {
            made.sum = *sum;
            made.is_within = isWithinLimits(report, records, *sum);
        } else {
            made.refusal = sum.reason();
        }
        report.cases.push_back(std::move(made));
    }
}

void addExtremes(WeightReport &report, const Records &records)
{
    const auto empty = emptyItem(report);
    report.loads = balance::loadsOf(records, report.units);
    if (!empty || report.loads.empty())
        return;
    auto found = balance::extremes(*empty, report.loads, report.most_weight);
    if (!found) {
        report.no_extremes = found.reason();
        return;
    }
    if (report.chord) {
        for (auto *sum : {&found->forward.sum, &found->aft.sum})
            sum->percent_mac = (sum->cg - report.chord->lemac) * 100 / report.chord->length;
    }
    report.forward_is_within = isWithinLimits(report, records, found->forward.sum);
    report.aft_is_within = isWithinLimits(report, records, found->aft.sum);
    report.extremes = *found;
}

std::optional<double> weightOf(const Equipment &item, balance::Units units)
{
    if (!item.weight || !item.weight_unit)
        return std::nullopt;
    return converted(*item.weight, *item.weight_unit, units.weight);
}

std::optional<double> armOf(const Equipment &item, balance::Units units)
{
    if (!item.arm || !item.arm_unit)
        return std::nullopt;
    return converted(*item.arm, *item.arm_unit, units.arm);
}

WeightReport::EquipmentLine lineOf(const Equipment &item, balance::Units units, Moment asOf)
{
    return {item.name,
            item.maker,
            item.part_number,
            item.serial_number,
            weightOf(item, units),
            armOf(item, units),
            item.fitted_on,
            happened(item.removed_on, asOf) ? item.removed_on : std::nullopt};
}

void addEquipment(WeightReport &report, const Records &records)
{
    for (const auto &item : records.equipment) {
        if (item.withdrawn_on || (item.fitted_on && after(*item.fitted_on, *report.as_of)))
            continue;
        report.equipment.push_back(lineOf(item, report.units, *report.as_of));
    }
    if (!report.empty)
        return;
    for (const Id<Equipment> id : report.empty->without_weight)
        report.not_in_sum.push_back(lineOf(*records.find(id), report.units, *report.as_of));
}

WeightReport::Weighed weighedWith(const WeightReport &report, const std::optional<Moment> &when)
{
    if (!report.weighing)
        return WeightReport::Weighed::NotYet;
    return when && after(*when, *report.weighing->weighed_on) ? WeightReport::Weighed::NotIn
                                                              : WeightReport::Weighed::In;
}

void addEffects(WeightReport &report, const Records &records)
{
    for (const auto &effect : balance::weightEffects(records, *report.as_of)) {
        const auto &deviation = *records.find(Id<Deviation>{effect.record.id});
        WeightReport::Effect line{deviation.title,
                                  {},
                                  {},
                                  deviation.built_on,
                                  weighedWith(report, deviation.built_on),
                                  RecordType::Deviation};
        if (effect.weight_unit)
            line.weight = converted(effect.weight, *effect.weight_unit, report.units.weight);
        if (effect.arm && effect.arm_unit)
            line.arm = converted(*effect.arm, *effect.arm_unit, report.units.arm);
        report.effects.push_back(std::move(line));
    }
    for (const auto &bulletin : records.bulletins) {
        if (bulletin.withdrawn_on || bulletin.applies == false ||
            weighedWith(report, bulletin.complied_on) != WeightReport::Weighed::NotIn ||
            after(*bulletin.complied_on, *report.as_of))
            continue;
        report.effects.push_back({bulletin.title,
                                  {},
                                  {},
                                  bulletin.complied_on,
                                  WeightReport::Weighed::NotIn,
                                  RecordType::Bulletin});
    }
}

} // namespace

std::size_t WeightReport::casesOutside() const
{
    return std::size_t(std::ranges::count(cases, std::optional(false), &Case::is_within));
}

std::size_t WeightReport::extremesOutside() const
{
    return std::size_t(forward_is_within == false) + std::size_t(aft_is_within == false);
}

std::size_t WeightReport::builtSinceWeighing() const
{
    return std::size_t(std::ranges::count_if(effects, [](const Effect &effect) {
        return effect.type == RecordType::Deviation && effect.weighed == Weighed::NotIn;
    }));
}

WeightReport weightReport(const Records &records, const Profile &profile, Moment asOf)
{
    WeightReport report;
    report.aircraft = aircraftOf(records, profile);
    report.as_of = asOf;
    report.units = usualUnits(records);
    report.cautions = profile.cautions;
    addEmpty(report, records);
    addLimits(report, records);
    if (report.empty && report.chord)
        report.percent_mac =
            (report.empty->sum.cg - report.chord->lemac) * 100 / report.chord->length;
    addEquipment(report, records);
    addEffects(report, records);
    addCases(report, records);
    addExtremes(report, records);
    return report;
}

} // namespace lastrivet::packet
