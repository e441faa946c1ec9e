// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/PhotoTimes.h"

#include <algorithm>
#include <chrono>

namespace lastrivet::acts {

namespace {

constexpr std::int64_t minutesPerDay = 24 * 60;

bool isTimeKnown(const Media &media, std::int64_t minutes)
{
    return media.taken_on && (media.taken_on->hasTime() || minutes % minutesPerDay == 0);
}

} // namespace

TimeShift timeShift(const Records &records, const std::vector<Id<Media>> &media,
                    std::int64_t minutes)
{
    TimeShift shift;
    if (minutes == 0)
        return shift;
    for (const Id<Media> id : media) {
        const Media *one = records.findLive(id);
        if (!one)
            continue;
        if (!isTimeKnown(*one, minutes))
            shift.left.push_back(id);
        else if (const auto becomes = one->taken_on->plusMinutes(minutes))
            shift.moved.push_back({id, *one->taken_on, *becomes});
        else
            shift.beyond.push_back(id);
    }
    std::stable_sort(shift.moved.begin(), shift.moved.end(),
                     [](const TimeShift::Moved &a, const TimeShift::Moved &b) {
                         return sortsBefore(a.was, b.was);
                     });
    return shift;
}

const Media *takenFirst(const Records &records, const std::vector<Id<Media>> &media, bool timed)
{
    const Media *first = nullptr;
    for (const Id<Media> id : media) {
        const Media *one = records.findLive(id);
        if (!one || !one->taken_on || (timed && !one->taken_on->hasTime()))
            continue;
        if (!first || sortsBefore(*one->taken_on, *first->taken_on))
            first = one;
    }
    return first;
}

std::optional<std::int64_t> minutesUntil(const Records &records,
                                         const std::vector<Id<Media>> &media, Moment first)
{
    const Media *known = takenFirst(records, media, first.hasTime());
    if (!known)
        return std::nullopt;
    const Moment was = *known->taken_on;
    const std::int64_t days = std::chrono::days(first.day() - was.day()).count();
    const int minutes = first.hasTime() ? first.minuteOfDay() - was.minuteOfDay() : 0;
    return days * minutesPerDay + minutes;
}

void shiftTimes(Edit &edit, const std::vector<Id<Media>> &media, std::int64_t minutes)
{
    for (const TimeShift::Moved &one : timeShift(edit.records(), media, minutes).moved)
        edit.update(one.media, [&](Media &changed) { changed.taken_on = one.becomes; });
}

} // namespace lastrivet::acts
