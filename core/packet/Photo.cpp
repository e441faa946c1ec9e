// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/Photo.h"

#include "core/packet/Chosen.h"
#include "core/packet/InWords.h"

#include <algorithm>
#include <set>
#include <utility>

namespace lastrivet::packet {

namespace {

constexpr WordSet<Shows> notStructure{Shows::Exterior, Shows::Receipt, Shows::SignedSheet};

/// Media that name no record themselves, but are named by one of the region.
std::set<Id<Media>> namedMedia(const Region &region)
{
    std::set<Id<Media>> named;
    for (const Deviation &deviation : region.records().deviations) {
        if (!deviation.withdrawn_on && region.holdsAny(deviation.component_ids))
            named.insert(deviation.media_ids.begin(), deviation.media_ids.end());
    }
    for (const Check &check : region.records().checks) {
        if (!check.withdrawn_on && region.isChosen(check.closing_id))
            named.insert(check.media_ids.begin(), check.media_ids.end());
    }
    return named;
}

bool isLinked(const Region &region, const Media &media)
{
    return std::any_of(media.links.begin(), media.links.end(), [&](const Media::Link &link) {
        return region.holds(RecordRef{link.subject, link.id});
    });
}

/// The part that the picture shows: the first of the region in the order of the tree.
Id<Component> partOf(const Region &region, const Media &media)
{
    Id<Component> best;
    for (const Media::Link &link : media.links) {
        const Id<Component> part = region.partOf({link.subject, link.id});
        const bool isBetter = !best || region.placeOf(part) < region.placeOf(best);
        if (region.holds(part) && isBetter)
            best = part;
    }
    return best;
}

bool showsStructure(const Media &media)
{
    return media.shows.isEmpty() || media.shows.hasOthersThan(notStructure);
}

Photo photoOf(const Region &region, const Media &media, int number)
{
    Photo photo = plainPhoto(media, number, partName(region.records(), partOf(region, media)));
    for (const Media::Link &link : media.links) {
        const RecordRef subject{link.subject, link.id};
        if (region.holds(subject))
            photo.subjects.push_back(subject);
    }
    return photo;
}

template <class Takes>
std::vector<Photo> numbered(const Region &region, MediaKind kind, int first, Takes takes)
{
    const auto wanted = [&](const Media &media) {
        return media.kind == kind && happened(dayOf(media), region.asOf()) && takes(media);
    };
    std::vector<Photo> photos;
    for (const Media *media : chosenFrom(
             region.records().media, wanted,
             [&](const Media &record) { return region.placeOf(partOf(region, record)); }, dayOf))
        photos.push_back(photoOf(region, *media, first++));
    return photos;
}

} // namespace

Photo plainPhoto(const Media &media, int number, std::string part)
{
    Photo photo;
    photo.id = media.id;
    photo.number = number;
    photo.file = media.file;
    photo.sha256 = media.sha256;
    photo.taken_on = dayOf(media);
    photo.is_day_of_intake = !media.taken_on;
    photo.part = std::move(part);
    photo.caption = media.caption;
    photo.shows = media.shows;
    photo.annotations = media.annotations;
    return photo;
}

Photo photoOf(const Records &records, const Media &media, int number)
{
    Photo photo = plainPhoto(media, number, {});
    for (const Media::Link &link : media.links) {
        photo.subjects.push_back({link.subject, link.id});
        if (photo.part.empty() && link.subject == RecordType::Component)
            photo.part = partName(records, Id<Component>{link.id});
    }
    return photo;
}

std::vector<Photo> photos(const Region &region)
{
    const std::set<Id<Media>> named = namedMedia(region);
    return numbered(region, MediaKind::Photo, 1, [&](const Media &media) {
        return showsStructure(media) && (isLinked(region, media) || named.contains(media.id));
    });
}

std::vector<Photo> signedSheets(const Region &region, int first)
{
    std::set<Id<Media>> sheets;
    for (const SignOff &signOff : region.records().sign_offs) {
        if (!signOff.withdrawn_on && happened(signOff.signed_on, region.asOf()) &&
            region.holds(RecordRef{RecordType::SignOff, signOff.id.value()}))
            sheets.insert(signOff.scan_id);
    }
    return numbered(region, MediaKind::Photo, first,
                    [&](const Media &media) { return sheets.contains(media.id); });
}

std::vector<Photo> videos(const Region &region)
{
    return numbered(region, MediaKind::Video, 1,
                    [&](const Media &media) { return isLinked(region, media); });
}

std::vector<int> numbersOf(const std::vector<Photo> &photos, RecordRef subject)
{
    std::vector<int> numbers;
    for (const Photo &photo : photos) {
        if (std::find(photo.subjects.begin(), photo.subjects.end(), subject) !=
            photo.subjects.end())
            numbers.push_back(photo.number);
    }
    return numbers;
}

} // namespace lastrivet::packet
