// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/credit/TaskEvidence.h"

#include <algorithm>
#include <string>
#include <utility>

namespace lastrivet::credit {

namespace {

std::string dayText(const Media &media)
{
    const auto day = dayOf(media);
    return day ? day->text() : std::string();
}

std::string dayText(const WorkSession &session)
{
    return session.began ? session.began->text() : std::string();
}

/// By day as text, then by id. The day of each is written once, not at every comparison.
template <class Record> void sortByDay(const Records &records, std::vector<Id<Record>> &ids)
{
    std::vector<std::pair<std::string, Id<Record>>> days;
    days.reserve(ids.size());
    for (const Id<Record> id : ids)
        days.emplace_back(dayText(*records.find(id)), id);
    std::sort(days.begin(), days.end());
    std::transform(days.begin(), days.end(), ids.begin(),
                   [](const auto &day) { return day.second; });
}

} // namespace

EvidenceFinder::EvidenceFinder(const Records &records)
    : m_records(records)
    , m_tree(records.components)
{
    for (const Media &media : records.media) {
        if (media.withdrawn_on || !isPicture(media) || !media.shows.contains(Shows::BuilderAtWork))
            continue;
        for (const Media::Link &link : media.links) {
            if (link.subject == RecordType::Component)
                m_pictures[Id<Component>{link.id}].push_back(media.id);
        }
    }
    for (const WorkSession &session : records.work_sessions) {
        if (!session.withdrawn_on && session.component_id)
            m_sessions[session.component_id].push_back(session.id);
    }
}

TaskEvidence EvidenceFinder::of(const CreditTask &task) const
{
    TaskEvidence found;
    for (const Id<Media> id : task.media_ids) {
        const Media *media = m_records.findLive(id);
        if (media && isPicture(*media))
            found.pictures.push_back(id);
    }
    for (const readiness::Stretch &stretch : m_tree.subtrees(task.component_ids)) {
        for (auto place = stretch.begin; place < stretch.end; ++place) {
            const auto part = m_tree.part(place).id;
            if (const auto shown = m_pictures.find(part); shown != m_pictures.end())
                found.pictures.insert(found.pictures.end(), shown->second.begin(),
                                      shown->second.end());
            if (const auto worked = m_sessions.find(part); worked != m_sessions.end())
                found.sessions.insert(found.sessions.end(), worked->second.begin(),
                                      worked->second.end());
        }
    }
    std::ranges::sort(found.pictures);
    found.pictures.erase(std::unique(found.pictures.begin(), found.pictures.end()),
                         found.pictures.end());
    std::ranges::sort(found.sessions);
    sortByDay(m_records, found.pictures);
    sortByDay(m_records, found.sessions);
    for (const Id<WorkSession> id : found.sessions)
        found.minutes += m_records.find(id)->minutes.value_or(Minutes{0});
    return found;
}

} // namespace lastrivet::credit
