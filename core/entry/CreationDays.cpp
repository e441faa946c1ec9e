// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/CreationDays.h"

#include <algorithm>

namespace lastrivet::entry {

namespace {

/// Kinds of journal rows by which a person writes something down here and now.
bool isWriting(ChangeKind kind)
{
    return kind == ChangeKind::Change || kind == ChangeKind::Automatic || kind == ChangeKind::Redo;
}

} // namespace

CreationDays::CreationDays(const Project &project)
    : m_project(project)
{
}

bool CreationDays::readSome(std::size_t rows)
{
    if (!m_isListed) {
        m_rows = m_project.journal();
        m_isListed = true;
    }
    const std::size_t end = std::min(m_next + rows, m_rows.size());
    const bool isAny = m_next < end;
    const std::string zone = m_project.records()->project.time_zone;
    for (; m_next < end; ++m_next) {
        const JournalEntry &row = m_rows[m_next];
        if (!isWriting(row.kind))
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
    for (const RecordRef &record : notice.touched) {
        if (record.type == RecordType::WorkSession && !notice.before->find(record.type, record.id))
            note(record.id, m_project.today());
    }
}

/// The first time counts: what was undone and done again was written down then.
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
