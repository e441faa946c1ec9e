// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workshop/Wrench.h"

#include <cmath>
#include <optional>

namespace lastrivet::workshop {

namespace {

std::optional<Message> wrongIn(double torque, double lever, double extension)
{
    if (!std::isfinite(torque) || torque <= 0)
        return Message{"A torque is above zero.", {}};
    if (!std::isfinite(lever) || lever <= 0)
        return Message{
            "The lever of the wrench, from the middle of the grip to the drive, is above "
            "zero.",
            {}};
    if (!std::isfinite(extension) || lever + extension <= 0)
        return Message{"The extension points back beyond the grip: it must be shorter than the "
                       "lever.",
                       {}};
    return std::nullopt;
}

Result<double, Message> finite(double torque)
{
    if (!std::isfinite(torque))
        return Message{"These numbers are too large to be reckoned with.", {}};
    return torque;
}

} // namespace

Result<double, Message> wrenchSetting(double desired, double lever, double extension)
{
    if (auto wrong = wrongIn(desired, lever, extension))
        return *wrong;
    return finite(desired * lever / (lever + extension));
}

Result<double, Message> appliedTorque(double setting, double lever, double extension)
{
    if (auto wrong = wrongIn(setting, lever, extension))
        return *wrong;
    return finite(setting * (lever + extension) / lever);
}

} // namespace lastrivet::workshop
