// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/credit/Tenths.h"

#include <algorithm>

namespace lastrivet::credit {

Tenths tenthsOf(const CreditTask &task)
{
    return {task.kit_tenths, task.commercial_tenths, task.assembly_tenths, task.fabrication_tenths};
}

void setTenths(CreditTask &task, const Tenths &tenths)
{
    task.kit_tenths = tenths.kit;
    task.commercial_tenths = tenths.commercial;
    task.assembly_tenths = tenths.assembly;
    task.fabrication_tenths = tenths.fabrication;
}

std::optional<Message> whyNot(const Tenths &tenths)
{
    const auto each = {tenths.kit, tenths.commercial, tenths.assembly, tenths.fabrication};
    if (std::ranges::any_of(each, [](std::int64_t part) { return part < 0 || part > 10; }))
        return Message{"A column holds from 0 to 10 tenths.", {}};
    if (tenths.sum() != 10)
        return Message{"The four columns add up to {0}; the tenths of a task add up to 10.",
                       {std::to_string(tenths.sum())}};
    return std::nullopt;
}

HalfTicks halfTicksOf(const CreditTask &task)
{
    if (task.not_applicable)
        return {};
    const auto builder = task.assembly_tenths + task.fabrication_tenths;
    const auto maker = task.kit_tenths + task.commercial_tenths;
    return {builder > maker    ? 2
            : builder == maker ? 1
                               : 0,
            maker > builder    ? 2
            : builder == maker ? 1
                               : 0};
}

} // namespace lastrivet::credit
