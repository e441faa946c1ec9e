// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fasteners/TorqueUnits.h"

#include "core/base/Trimmed.h"
#include "core/base/TypedNumber.h"
#include "core/fasteners/SpokenWords.h"
#include "core/workshop/Quantities.h"

#include <string>

namespace lastrivet::fasteners {

double converted(double torque, TorqueUnit from, TorqueUnit to)
{
    return from == to ? torque : torque * workshop::inchPoundsIn(from) / workshop::inchPoundsIn(to);
}

Result<double, Message> readTorque(std::string_view text, TorqueUnit unit)
{
    const Message notOne{"“{0}” is no torque; write it as 20 in-lb, 2 ft-lb or 2.3 N·m.",
                         {std::string(text)}};
    const auto plain =
        workshop::inTableUnits(text, workshop::Quantity::Number, UnitSystem::Imperial);
    if (plain && *plain > 0)
        return *plain;
    auto rest = trimmed(text);
    const auto number = takeNumber(rest);
    const auto said = number ? torqueUnitSaid(rest) : std::nullopt;
    if (!said || !(*number > 0))
        return notOne;
    return converted(*number, *said, unit);
}

} // namespace lastrivet::fasteners
