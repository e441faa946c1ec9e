// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/LogPhotos.h"

#include "core/packet/Chosen.h"
#include "core/packet/InWords.h"
#include "core/packet/Places.h"

#include <algorithm>

namespace lastrivet::packet {

namespace {

constexpr WordSet<Shows> papers{Shows::Receipt, Shows::SignedSheet};

std::int64_t dayNumber(Moment moment)
{
    return moment.day().time_since_epoch().count();
}

bool isOfWork(const Media &media)
{
    return media.kind == MediaKind::Photo &&
           (media.shows.isEmpty() || media.shows.hasOthersThan(papers));
}

bool isWithin(std::optional<Moment> moment, const LogbookChoice &choice)
{
    return moment && (!choice.from || !after(*choice.from, *moment)) &&
           (!choice.until || !after(*moment, *choice.until));
}

bool isLinkedToEntry(const Media &media)
{
    return std::ranges::any_of(media.links, [](const Media::Link &link) {
        return link.subject == RecordType::WorkSession;
    });
}

} // namespace

LogPhotos::LogPhotos(const Records &records, const std::vector<const WorkSession *> &sessions)
    : m_records(records)
{
    for (const WorkSession *session : sessions) {
        m_sessions.emplace(session->id, session);
        m_byDay.emplace(dayNumber(*session->began), session);
    }
}

std::vector<const Media *> LogPhotos::chosen(const LogbookChoice &choice) const
{
    if (!choice.has_photos)
        return {};
    return chosenFrom(
        m_records.media,
        [&](const Media &media) {
            if (!isOfWork(media))
                return false;
            if (entryFor(media))
                return true;
            // With an entry that is left out its photographs are left out too.
            return !isLinkedToEntry(media) && partFor(media) && isWithin(dayOf(media), choice);
        },
        [](const Media &) { return 0; }, dayOf);
}

bool LogPhotos::isOf(const WorkSession &session, const Media &photo) const
{
    return std::ranges::any_of(photo.links, [&](const Media::Link &link) {
        if (link.subject == RecordType::Step && session.step_id)
            return session.step_id.value() == link.id;
        return session.component_id &&
               partOf(m_records, {link.subject, link.id}) == session.component_id;
    });
}

const WorkSession *LogPhotos::entryFor(const Media &photo) const
{
    for (const Media::Link &link : photo.links) {
        if (link.subject != RecordType::WorkSession)
            continue;
        const auto session = m_sessions.find(Id<WorkSession>{link.id});
        if (session != m_sessions.end())
            return session->second;
    }
    if (!photo.taken_on || isLinkedToEntry(photo))
        return nullptr;
    const auto [first, last] = m_byDay.equal_range(dayNumber(*photo.taken_on));
    const auto entry =
        std::find_if(first, last, [&](const auto &row) { return isOf(*row.second, photo); });
    return entry == last ? nullptr : entry->second;
}

Id<Component> LogPhotos::partFor(const Media &photo) const
{
    for (const Media::Link &link : photo.links) {
        if (const auto part = partOf(m_records, {link.subject, link.id}))
            return part;
    }
    return {};
}

Photo LogPhotos::photoOf(const Media &photo) const
{
    return plainPhoto(photo, 0, partName(m_records, partFor(photo)));
}

} // namespace lastrivet::packet
