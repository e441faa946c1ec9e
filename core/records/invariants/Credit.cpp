// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/invariants/Families.h"

#include <algorithm>

namespace lastrivet::invariants {

void checkCredit(Review &review)
{
    review.each<CreditTask>([&](const CreditTask &task) {
        const std::int64_t tenths[] = {task.kit_tenths, task.commercial_tenths,
                                       task.assembly_tenths, task.fabrication_tenths};
        const bool areTenths = std::all_of(std::begin(tenths), std::end(tenths),
                                           [](auto part) { return part >= 0 && part <= 10; });
        if (!areTenths) {
            review.report(task, "{0} has a share that is not between 0 and 10 tenths.");
            return;
        }
        const auto total = tenths[0] + tenths[1] + tenths[2] + tenths[3];
        if (task.not_applicable && total != 0)
            review.report(task, "{0} does not apply, but has {1} tenths instead of none.",
                          {std::to_string(total)});
        if (!task.not_applicable && total != 10)
            review.report(task, "{0} has shares that add up to {1} tenths instead of 10.",
                          {std::to_string(total)});
    });
}

} // namespace lastrivet::invariants
