// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/balance/Numbers.h"

#include <type_traits>

namespace lastrivet::balance {

namespace {

template <class Record, class OfWeight, class OfArm>
void visit(Record &record, const OfWeight &weight, const OfArm &arm)
{
    using Kind = std::remove_const_t<Record>;
    if constexpr (std::is_same_v<Kind, Weighing>) {
        for (auto &scale : record.scale_readings) {
            weight(scale.reading);
            weight(scale.tare);
            arm(scale.arm);
        }
        for (auto &correction : record.corrections) {
            weight(correction.weight);
            arm(correction.arm);
        }
    } else if constexpr (std::is_same_v<Kind, Envelope>) {
        for (auto &point : record.points) {
            weight(point.weight);
            arm(point.arm);
        }
        for (auto *chord : {&record.lemac, &record.mac}) {
            if (*chord)
                arm(**chord);
        }
    } else {
        for (auto &item : record.items) {
            weight(item.weight);
            arm(item.arm);
        }
    }
}

template <class Record> Numbers numbersIn(const Record &record)
{
    Numbers numbers{{record.weight_unit, record.arm_unit}, {}, {}};
    visit(
        record, [&](double weight) { numbers.weights.push_back(weight); },
        [&](double arm) { numbers.arms.push_back(arm); });
    return numbers;
}

template <class Record> void convert(Record &record, Units from)
{
    visit(
        record,
        [&](double &weight) { weight = converted(weight, from.weight, record.weight_unit); },
        [&](double &arm) { arm = converted(arm, from.arm, record.arm_unit); });
}

} // namespace

Numbers numbersOf(const Weighing &weighing)
{
    return numbersIn(weighing);
}

Numbers numbersOf(const LoadingCase &loading)
{
    return numbersIn(loading);
}

Numbers numbersOf(const Envelope &envelope)
{
    return numbersIn(envelope);
}

Numbers numbersOf(const Equipment &equipment, Units unknown)
{
    Numbers numbers{
        {equipment.weight_unit.value_or(unknown.weight), equipment.arm_unit.value_or(unknown.arm)},
        {},
        {}};
    if (equipment.weight && equipment.weight_unit)
        numbers.weights.push_back(*equipment.weight);
    if (equipment.arm && equipment.arm_unit)
        numbers.arms.push_back(*equipment.arm);
    return numbers;
}

void convertNumbers(Weighing &weighing, Units from)
{
    convert(weighing, from);
}

void convertNumbers(LoadingCase &loading, Units from)
{
    convert(loading, from);
}

void convertNumbers(Envelope &envelope, Units from)
{
    convert(envelope, from);
}

void convertNumbers(Equipment &equipment, Units from)
{
    if (equipment.weight && equipment.weight_unit)
        equipment.weight = converted(*equipment.weight, from.weight, *equipment.weight_unit);
    if (equipment.arm && equipment.arm_unit)
        equipment.arm = converted(*equipment.arm, from.arm, *equipment.arm_unit);
}

} // namespace lastrivet::balance
