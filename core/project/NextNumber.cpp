// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/Edit.h"

#include <algorithm>
#include <charconv>
#include <fmt/format.h>

namespace lastrivet {

template <class Record> std::string nextNumber(const Records &records)
{
    // After a merge there may be a 12b, which counts as 12.
    std::int64_t greatest = 0;
    for (const auto &record : records.of<Record>()) {
        std::int64_t number = 0;
        const char *first = record.number.data();
        std::from_chars(first, first + record.number.size(), number);
        if (number < largestId)
            greatest = std::max(greatest, number);
    }
    return fmt::to_string(greatest + 1);
}

template std::string nextNumber<Squawk>(const Records &records);
template std::string nextNumber<Deviation>(const Records &records);
template std::string nextNumber<Bulletin>(const Records &records);

} // namespace lastrivet
