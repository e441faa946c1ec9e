// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/invariants/Families.h"

namespace lastrivet::invariants {

void checkCounts(Review &review)
{
    const auto &description = describe(RecordType::PartLine);
    review.each<PartLine>([&](const PartLine &line) {
        for (const std::string_view name :
             {"quantity", "received_quantity", "damaged_quantity", "unit_price"}) {
            const Scalar value = description.find(name)->value(&line);
            const auto *number = std::get_if<std::int64_t>(&value);
            if (number && *number < 0)
                review.report(line, "{0} has {1} {2}, which is below zero.",
                              {std::string(name), std::to_string(*number)});
        }
    });
}

} // namespace lastrivet::invariants
