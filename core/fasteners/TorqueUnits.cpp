// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fasteners/TorqueUnits.h"

#include "core/workshop/Quantities.h"

namespace lastrivet::fasteners {

namespace {

constexpr double inchPoundsPerFootPound = 12;

double inchPoundsIn(TorqueUnit unit)
{
    switch (unit) {
    case TorqueUnit::InchPounds:
        return 1;
    case TorqueUnit::FootPounds:
        return inchPoundsPerFootPound;
    case TorqueUnit::NewtonMetres:
        return 1 / workshop::newtonMetresOfInchPound;
    }
    return 1;
}

} // namespace

double converted(double torque, TorqueUnit from, TorqueUnit to)
{
    return from == to ? torque : torque * inchPoundsIn(from) / inchPoundsIn(to);
}

} // namespace lastrivet::fasteners
