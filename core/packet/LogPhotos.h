// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/Logbook.h"

#include <map>
#include <vector>

namespace lastrivet::packet {

/// Finds the log entry and the part that a photograph belongs to.
class LogPhotos {
public:
    /// `sessions` outlive this.
    LogPhotos(const Records &records, const std::vector<const WorkSession *> &sessions);

    /// The photographs of work whose day the choice asks for, by day.
    std::vector<const Media *> chosen(const LogbookChoice &choice) const;
    /// The entry that the photograph is linked to, else the first of its day on its part or step;
    /// null when there is none.
    const WorkSession *entryFor(const Media &photo) const;
    /// The first part that it shows; none when it shows no part.
    Id<Component> partFor(const Media &photo) const;
    Photo photoOf(const Media &photo) const;

private:
    bool isOf(const WorkSession &session, const Media &photo) const;

    const Records &m_records;
    std::map<Id<WorkSession>, const WorkSession *> m_sessions;
    std::multimap<std::int64_t, const WorkSession *> m_byDay;
};

} // namespace lastrivet::packet
