// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/Region.h"

#include <algorithm>
#include <vector>

namespace lastrivet::packet {

/// The live records of a table that `takes` accepts, sorted by the place that `place` gives, then
/// by the text of the moment that `date` gives (none last), then by id.
template <class Record, class Takes, class Place, class Date>
std::vector<const Record *> chosenFrom(const Table<Record> &table, Takes takes, Place place,
                                       Date date)
{
    std::vector<const Record *> chosen;
    for (const Record &record : table) {
        if (!record.withdrawn_on && takes(record))
            chosen.push_back(&record);
    }
    std::stable_sort(chosen.begin(), chosen.end(), [&](const Record *a, const Record *b) {
        const auto placeA = place(*a);
        const auto placeB = place(*b);
        if (placeA != placeB)
            return placeA < placeB;
        const std::optional<Moment> dateA = date(*a);
        const std::optional<Moment> dateB = date(*b);
        return dateA && (!dateB || sortsBefore(*dateA, *dateB));
    });
    return chosen;
}

/// As `chosenFrom`, for records of one part each: those in the region, by part, then by date.
template <class Record, class Takes, class Date>
std::vector<const Record *> chosenByPart(const Region &region, const Table<Record> &table,
                                         Takes takes, Date date)
{
    return chosenFrom(
        table,
        [&](const Record &record) { return region.holds(record.component_id) && takes(record); },
        [&](const Record &record) { return region.placeOf(record.component_id); }, date);
}

} // namespace lastrivet::packet
