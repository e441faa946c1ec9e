// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/PhotoActs.h"

#include <algorithm>

namespace lastrivet::acts {

void linkMedia(Edit &edit, Id<Media> media, RecordRef record)
{
    const Media::Link link{record.type, record.id};
    const auto &links = edit.existing(media).links;
    if (std::ranges::find(links, link) != links.end())
        return;
    edit.update(media, [&](Media &changed) { changed.links.push_back(link); });
}

void unlinkMedia(Edit &edit, Id<Media> media, RecordRef record)
{
    edit.update(media, [&](Media &changed) {
        std::erase(changed.links, Media::Link{record.type, record.id});
    });
}

void setShown(Edit &edit, Id<Media> media, Shows what, bool isShown)
{
    edit.update(media, [&](Media &changed) {
        if (isShown)
            changed.shows.insert(what);
        else
            changed.shows.remove(what);
    });
}

void setAnnotations(Edit &edit, Id<Media> media, const std::vector<Media::Annotation> &marks)
{
    edit.update(media, [&](Media &changed) { changed.annotations = marks; });
}

void linkToSession(Edit &edit, Id<Media> media, Id<WorkSession> session)
{
    linkMedia(edit, media, {RecordType::WorkSession, session.value()});
    const auto part = edit.existing(session).component_id;
    if (part)
        linkMedia(edit, media, {RecordType::Component, part.value()});
}

} // namespace lastrivet::acts
