// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fasteners/TorqueUnits.h"

namespace lastrivet::fasteners {

namespace {

constexpr double newtonMetresPerInchPound = 4.4482216152605 * 0.0254;
constexpr double inchPoundsPerFootPound = 12;

double inchPoundsIn(TorqueUnit unit)
{
    switch (unit) {
    case TorqueUnit::InchPounds:
        return 1;
    case TorqueUnit::FootPounds:
        return inchPoundsPerFootPound;
    case TorqueUnit::NewtonMetres:
        return 1 / newtonMetresPerInchPound;
    }
    return 1;
}

} // namespace

double converted(double torque, TorqueUnit from, TorqueUnit to)
{
    return from == to ? torque : torque * inchPoundsIn(from) / inchPoundsIn(to);
}

} // namespace lastrivet::fasteners
