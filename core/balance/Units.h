// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/InchAndPound.h"
#include "core/records/Vocabulary.h"

namespace lastrivet::balance {

/// The units of a sum; what comes in other units is converted, never mixed in silence.
struct Units {
    WeightUnit weight = WeightUnit::Kilograms;
    ArmUnit arm = ArmUnit::Millimetres;

    friend bool operator==(const Units &, const Units &) = default;
};

constexpr double converted(double weight, WeightUnit from, WeightUnit to)
{
    if (from == to)
        return weight;
    return to == WeightUnit::Kilograms ? weight * kilogramsOfPound : weight / kilogramsOfPound;
}

constexpr double converted(double arm, ArmUnit from, ArmUnit to)
{
    if (from == to)
        return arm;
    return to == ArmUnit::Millimetres ? arm * millimetresOfInch : arm / millimetresOfInch;
}

} // namespace lastrivet::balance
