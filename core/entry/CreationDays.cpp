// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/CreationDays.h"

#include "core/project/JournalMarks.h"

#include <algorithm>
#include <limits>

namespace lastrivet::entry {

CreationDays::CreationDays(const Project &project)
    : m_project(project)
{
}

bool CreationDays::readSome(std::size_t rows)
{
    if (!m_isListed) {
        m_rows = m_project.journalLines();
        m_isListed = true;
    }
    const std::size_t end = m_next + std::min(rows, m_rows.size() - m_next);
    const bool isAny = m_next < end;
    const std::string zone = m_project.records()->project.time_zone;
    for (; m_next < end; ++m_next) {
        const JournalLine &row = m_rows[m_next];
        if (!isWrittenDown(row))
            continue;
        const std::chrono::sys_time<std::chrono::milliseconds> stamp{
            std::chrono::milliseconds{row.stamp}};
        for (const JournalChange &change : m_project.changesOf(row.seq)) {
            if (change.record.type == RecordType::WorkSession && change.kind == RowChange::Insert)
                note(change.record.id, localMoment(stamp, zone).dayOnly());
        }
    }
    return isAny;
}

void CreationDays::apply(const ChangeNotice &notice)
{
    if (notice.kind == ChangeKind::Merge) {
        // What it carried over was written down at other times, which its rows tell.
        m_isListed = false;
        readSome(std::numeric_limits<std::size_t>::max());
        return;
    }
    if (notice.kind != ChangeKind::Change && notice.kind != ChangeKind::Automatic)
        return;
    for (const RecordRef &record : notice.touched) {
        if (record.type == RecordType::WorkSession && !notice.before->find(record.type, record.id))
            note(record.id, m_project.today());
    }
}

/// The first time counts.
void CreationDays::note(std::int64_t session, Moment day)
{
    m_days.emplace(session, day);
}

std::optional<Moment> CreationDays::createdOn(Id<WorkSession> session) const
{
    const auto day = m_days.find(session.value());
    return day == m_days.end() ? std::nullopt : std::optional(day->second);
}

bool CreationDays::isLate(const WorkSession &session, std::int64_t allowedDays) const
{
    const auto created = createdOn(session.id);
    if (!created || !session.began)
        return false;
    return (created->day() - session.began->day()).count() > allowedDays;
}

} // namespace lastrivet::entry
