// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Ground.h"

#include "core/records/Description.h"

#include <array>

namespace lastrivet::readiness {

namespace {

/// True for photographs and videos that can show the inside.
bool showsInside(const Media &media)
{
    static constexpr WordSet<Shows> outside{Shows::Exterior, Shows::Receipt, Shows::SignedSheet};
    return media.kind != MediaKind::Document &&
           (media.shows.isEmpty() || media.shows.hasOthersThan(outside));
}

/// How records of a type name the parts that they are about, if they do.
struct PartFields {
    const Field *one = nullptr;
    const Field *several = nullptr;
};

const PartFields &partFieldsOf(RecordType type)
{
    static const auto fields = [] {
        std::array<PartFields, recordTypeCount> found;
        for (std::size_t i = 0; i < recordTypeCount; ++i) {
            const auto &description = describe(RecordType(i));
            found[i] = {description.find("component_id"), description.find("component_ids")};
        }
        return found;
    }();
    return fields[std::size_t(type)];
}

/// Calls `found` with each part that a linked record is about; `none` for a record that could name
/// a part and names none.
template <class Found, class None>
void forEachPart(const Records &records, RecordRef link, Found found, None none)
{
    if (link.type == RecordType::Component)
        return found(Id<Component>{link.id});
    const PartFields &fields = partFieldsOf(link.type);
    if (!fields.one && !fields.several)
        return;
    const void *record = records.find(link.type, link.id);
    if (!record || isWithdrawn(describe(link.type), record))
        return;
    if (fields.one) {
        const Scalar value = fields.one->value(record);
        const auto *id = std::get_if<std::int64_t>(&value);
        return id ? found(Id<Component>{*id}) : none();
    }
    const std::size_t count = fields.several->size(record);
    for (std::size_t i = 0; i < count; ++i)
        found(Id<Component>{std::get<std::int64_t>(fields.several->item(record, i))});
    if (count == 0)
        none();
}

/// Squawks and papers that name no part belong to the whole aircraft; other records do not.
bool belongsToAircraft(RecordType type)
{
    return type == RecordType::Squawk || type == RecordType::Deviation ||
           type == RecordType::Bulletin;
}

/// Where the links of a picture or document lead: to live closings and parts.
struct Filing {
    std::vector<std::size_t> closings;
    std::vector<Place> places;
    bool isOfAircraft = false;

    std::size_t count() const { return closings.size() + places.size() + isOfAircraft; }
};

Filing filingOf(const Ground &ground, const Media &media)
{
    Filing filing;
    for (const Media::Link &link : media.links) {
        if (link.subject == RecordType::Closing) {
            if (const auto closing = ground.closingIndex(Id<Closing>{link.id}))
                filing.closings.push_back(*closing);
        }
        forEachPart(
            ground.records, {link.subject, link.id},
            [&](Id<Component> part) {
                if (const auto place = ground.tree.placeOf(part))
                    filing.places.push_back(*place);
            },
            [&] { filing.isOfAircraft |= belongsToAircraft(link.subject); });
    }
    return filing;
}

} // namespace

void Ground::filePictures()
{
    for (const Media &media : records.media) {
        if (!isLive(media))
            continue;
        const Filing filing = filingOf(*this, media);
        for (const std::size_t closing : filing.closings)
            closings[closing].hasDocument |= media.kind == MediaKind::Document;
        const auto when = dayOf(media);
        if (!when || !showsInside(media))
            continue;
        const Picture picture{&media, when, filing.count() > 1};
        for (const std::size_t closing : filing.closings)
            closings[closing].pictures.push_back(picture);
        for (const Place place : filing.places)
            pictures.add(place, picture);
        if (filing.isOfAircraft)
            pictures_without_place.push_back(picture);
    }
    pictures.seal(tree.size());
}

} // namespace lastrivet::readiness
