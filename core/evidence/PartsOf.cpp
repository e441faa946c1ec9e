// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/PartsOf.h"

#include "core/records/Description.h"

#include <algorithm>

namespace lastrivet::evidence {

namespace {

bool isLive(const Records &records, const Media::Link &link)
{
    const void *record = records.find(link.subject, link.id);
    return link.subject != RecordType::Project && record &&
           !isWithdrawn(describe(link.subject), record);
}

void addPartsOf(const Records &records, const Media::Link &link, std::vector<std::int64_t> &parts)
{
    if (link.subject == RecordType::Component) {
        parts.push_back(link.id);
        return;
    }
    const auto &description = describe(link.subject);
    const void *record = records.find(link.subject, link.id);
    if (const Field *one = description.find("component_id")) {
        const Scalar value = one->value(record);
        if (const auto *id = std::get_if<std::int64_t>(&value))
            parts.push_back(*id);
    }
    if (const Field *several = description.find("component_ids")) {
        for (std::size_t i = 0; i < several->size(record); ++i)
            parts.push_back(std::get<std::int64_t>(several->item(record, i)));
    }
}

} // namespace

std::vector<Id<Component>> partsOf(const Records &records, const Media &media)
{
    std::vector<std::int64_t> ids;
    for (const Media::Link &link : media.links) {
        if (isLive(records, link))
            addPartsOf(records, link, ids);
    }
    std::ranges::sort(ids);
    ids.erase(std::unique(ids.begin(), ids.end()), ids.end());
    std::vector<Id<Component>> parts;
    for (const std::int64_t id : ids) {
        if (records.findLive(Id<Component>{id}))
            parts.push_back(Id<Component>{id});
    }
    return parts;
}

bool isUnassigned(const Records &records, const Media &media)
{
    static constexpr WordSet<Shows> papers{Shows::SignedSheet, Shows::Receipt};
    if (media.kind == MediaKind::Document ||
        (!media.shows.isEmpty() && !media.shows.hasOthersThan(papers)))
        return false;
    const bool isOfClosing = std::ranges::any_of(media.links, [&](const Media::Link &link) {
        return link.subject == RecordType::Closing && isLive(records, link);
    });
    return !isOfClosing && partsOf(records, media).empty();
}

} // namespace lastrivet::evidence
