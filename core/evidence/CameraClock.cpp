// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/CameraClock.h"

#include <algorithm>
#include <chrono>

namespace lastrivet::evidence {

std::size_t datedWrongly(const Records &records, const std::vector<Id<Media>> &taken, Moment today)
{
    using std::chrono::days;
    constexpr days someYears{3 * 366};
    const auto &begun = records.project.started_on;
    const auto isWrong = [&](Id<Media> id) {
        const Media *media = records.find(id);
        if (!media || !media->taken_on)
            return false;
        const auto day = media->taken_on->day();
        return day > today.day() + days{1} || (begun && begun->day() - day > someYears);
    };
    return std::size_t(std::count_if(taken.begin(), taken.end(), isWrong));
}

} // namespace lastrivet::evidence
