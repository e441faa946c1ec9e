// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/OutsideLimits.h"

#include "core/base/Tongue.h"
#include "core/readiness/Limits.h"

#include <fmt/format.h>

namespace lastrivet::readiness {

namespace {

using Limit = std::optional<double>;

/// Without binary fractions, and with the sign for decimals that the language of its sentence has.
Message figure(double value)
{
    const std::string digits = fmt::format("{:.9g}", value);
    const auto point = digits.find('.');
    if (point == std::string::npos || digits.find('e') != std::string::npos)
        return verbatim(digits);
    return {"{0}.{1}", {digits.substr(0, point), digits.substr(point + 1)}};
}

Message withUnit(const Message &figures, const std::string &unit)
{
    return unit.empty() ? figures : Message{"{0} {1}", {nested(figures), unit}};
}

Message limits(Limit least, Limit most)
{
    if (least && most)
        return {"{0} to {1}", {nested(figure(*least)), nested(figure(*most))}};
    return least ? Message{"at least {0}", {nested(figure(*least))}}
                 : Message{"at most {0}", {nested(figure(most.value_or(0)))}};
}

} // namespace

std::optional<Message> torqueOutside(const Fastener &fastener, const std::string &name)
{
    const auto torque = netTorque(fastener.torque_value, fastener.torque_drag);
    if (!torque || (!fastener.torque_min && !fastener.torque_max))
        return std::nullopt;
    const std::string unit{word(fastener.torque_unit)};
    const auto asked = withUnit(limits(fastener.torque_min, fastener.torque_max), unit);
    const auto value = withUnit(figure(*torque), unit);
    if (fastener.torque_drag.value_or(0) == 0)
        return Message{"{0}: the torque is {1}, outside its limits ({2})",
                       {name, nested(value), nested(asked)}};
    return Message{"{0}: the torque is {1} ({3} less a drag of {4}), outside its limits ({2})",
                   {name, nested(value), nested(asked), nested(figure(*fastener.torque_value)),
                    nested(figure(*fastener.torque_drag))}};
}

std::optional<Message> measurementOutside(const Measurement &measurement, const std::string &name)
{
    if (!measurement.value || (!measurement.minimum && !measurement.maximum))
        return std::nullopt;
    return Message{
        "{0}: the last measurement is {1}, outside its limits ({2})",
        {name, nested(withUnit(figure(*measurement.value), measurement.unit)),
         nested(withUnit(limits(measurement.minimum, measurement.maximum), measurement.unit))}};
}

} // namespace lastrivet::readiness
