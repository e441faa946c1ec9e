// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/daylog/EntryPhotos.h"

#include "core/packet/Places.h"

#include <algorithm>

namespace lastrivet::ui {

namespace {

std::int64_t dayNumber(Moment moment)
{
    return moment.day().time_since_epoch().count();
}

bool isOf(const Media &photo, const WorkSession &session, const Records &records)
{
    return std::ranges::any_of(photo.links, [&](const Media::Link &link) {
        if (link.subject == RecordType::Step && session.step_id)
            return session.step_id.value() == link.id;
        return session.component_id &&
               packet::partOf(records, {link.subject, link.id}) == session.component_id;
    });
}

} // namespace

void EntryPhotos::read(const Records &records)
{
    m_linked.clear();
    m_byDay.clear();
    for (const Media &media : records.media) {
        if (media.withdrawn_on || media.kind != MediaKind::Photo)
            continue;
        bool isLinked = false;
        for (const Media::Link &link : media.links) {
            if (link.subject != RecordType::WorkSession)
                continue;
            m_linked[link.id].push_back(media.id);
            isLinked = true;
        }
        if (!isLinked && media.taken_on)
            m_byDay[dayNumber(*media.taken_on)].push_back(media.id);
    }
}

std::vector<Id<Media>> EntryPhotos::of(const WorkSession &session, const Records &records) const
{
    std::vector<Id<Media>> photos;
    if (const auto linked = m_linked.find(session.id.value()); linked != m_linked.end())
        photos = linked->second;
    const auto day = m_byDay.find(dayNumber(*session.began));
    if (day == m_byDay.end())
        return photos;
    for (const Id<Media> id : day->second) {
        const Media *photo = records.find(id);
        if (photo && isOf(*photo, session, records))
            photos.push_back(id);
    }
    return photos;
}

} // namespace lastrivet::ui
