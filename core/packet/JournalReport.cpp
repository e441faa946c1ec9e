// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/JournalReport.h"

#include "core/base/Clock.h"

#include <algorithm>
#include <chrono>
#include <string_view>
#include <unordered_map>

namespace lastrivet::packet {

namespace {

Moment momentOf(const JournalEntry &row, std::string_view zone)
{
    using namespace std::chrono;
    return localMoment(sys_time<milliseconds>(milliseconds(row.stamp)), zone);
}

} // namespace

JournalReport journalReport(const Records &records, const Profile &profile, Moment asOf,
                            const std::vector<JournalEntry> &all,
                            const std::vector<std::int64_t> &wanted, const ChangesOf &changesOf)
{
    JournalReport report{aircraftOf(records, profile), asOf, {}, all.size(), {}, profile.cautions};
    std::unordered_map<std::string_view, const JournalEntry *> byId;
    for (const JournalEntry &row : all)
        byId.emplace(row.change_id, &row);
    const std::string &zone = records.project.time_zone;
    for (std::size_t i = 0; i < all.size(); ++i) {
        const JournalEntry &row = all[i];
        if (!std::ranges::binary_search(wanted, row.seq))
            continue;
        const auto changes = changesOf(row.seq);
        JournalReport::Entry entry{row,
                                   momentOf(row, zone),
                                   {},
                                   i > 0 && isPushedAhead(row, all[i - 1]),
                                   lateDates(row, changes, zone, profile.late_entry_days),
                                   journal::accountOf(records, changes)};
        if (const auto undone = byId.find(row.undoes); undone != byId.end())
            entry.undone = undone->second->label;
        report.entries.push_back(std::move(entry));
    }
    return report;
}

} // namespace lastrivet::packet
