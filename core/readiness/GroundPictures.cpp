// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Ground.h"

#include "core/records/Description.h"

namespace lastrivet::readiness {

namespace {

/// True for photographs and videos that can show the inside.
bool showsInside(const Media &media)
{
    static constexpr WordSet<Shows> outside{Shows::Exterior, Shows::Receipt, Shows::SignedSheet};
    return media.kind != MediaKind::Document &&
           (media.shows.isEmpty() || media.shows.hasOthersThan(outside));
}

/// The parts that a linked record is about; `none` is told of records that could name a part and
/// name none.
template <class Found, class None>
void forEachPart(const Records &records, RecordRef link, Found found, None none)
{
    const auto &description = describe(link.type);
    const void *record = records.find(link.type, link.id);
    if (link.type == RecordType::Project || !record || isWithdrawn(description, record))
        return;
    if (link.type == RecordType::Component)
        return found(Id<Component>{link.id});
    if (const Field *one = description.find("component_id")) {
        const Scalar value = one->value(record);
        const auto *id = std::get_if<std::int64_t>(&value);
        return id ? found(Id<Component>{*id}) : none();
    }
    const Field *several = description.find("component_ids");
    if (!several)
        return;
    const std::size_t count = several->size(record);
    for (std::size_t i = 0; i < count; ++i)
        found(Id<Component>{std::get<std::int64_t>(several->item(record, i))});
    if (count == 0)
        none();
}

/// Squawks and papers that name no part belong to the whole aircraft; other records do not.
bool belongsToAircraft(RecordType type)
{
    return type == RecordType::Squawk || type == RecordType::Deviation ||
           type == RecordType::Bulletin;
}

} // namespace

void Ground::filePictures()
{
    for (const Media &media : records.media) {
        if (!isLive(media))
            continue;
        const bool isPicture = showsInside(media);
        for (const Media::Link &link : media.links) {
            if (const auto closing = link.subject == RecordType::Closing
                                         ? closingIndex(Id<Closing>{link.id})
                                         : std::nullopt) {
                closings[*closing].hasDocument |= media.kind == MediaKind::Document;
                if (isPicture)
                    closings[*closing].media.push_back(&media);
            }
            if (!isPicture)
                continue;
            forEachPart(
                records, {link.subject, link.id},
                [&](Id<Component> part) {
                    if (const auto place = tree.placeOf(part))
                        pictures.add(*place, &media);
                },
                [&] {
                    if (belongsToAircraft(link.subject))
                        pictures_without_place.push_back(&media);
                });
        }
    }
    pictures.seal(tree.size());
}

} // namespace lastrivet::readiness
