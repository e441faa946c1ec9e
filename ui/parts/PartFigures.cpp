// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/PartFigures.h"

#include "core/fasteners/FastenerState.h"
#include "core/packet/Places.h"
#include "core/project/acts/SquawkActs.h"

#include <set>

namespace lastrivet::ui {

namespace {

constexpr int deepest = 256;

/// Calls `body` with the part, every part above it, and 0 for the whole aircraft.
template <class Body> void upwards(const Records &records, Id<Component> part, Body &&body)
{
    for (int depth = 0; part && depth < deepest; ++depth) {
        body(part.value());
        const Component *found = records.find(part);
        part = found ? found->parent_id : Id<Component>{};
    }
    body(std::int64_t{0});
}

void addPhotos(const Records &records, FiguresByPart &figures)
{
    for (const Media &media : records.media) {
        if (media.withdrawn_on || media.kind == MediaKind::Document)
            continue;
        // Also pictures of no part belong to the aircraft.
        std::set<std::int64_t> parts{0};
        for (const Media::Link &link : media.links) {
            if (const Id<Component> part = partOfLink(records, link))
                upwards(records, part, [&](std::int64_t id) { parts.insert(id); });
        }
        for (const std::int64_t id : parts)
            ++figures[id].photos;
    }
}

} // namespace

Id<Component> partOfLink(const Records &records, const Media::Link &link)
{
    return packet::partOf(records, {link.subject, link.id});
}

FiguresByPart figuresByPart(const Records &records, Moment asOf)
{
    FiguresByPart figures;
    for (const WorkSession &session : records.work_sessions) {
        if (!session.withdrawn_on && session.minutes)
            upwards(records, session.component_id,
                    [&](std::int64_t id) { figures[id].minutes += *session.minutes; });
    }
    for (const Squawk &squawk : records.squawks) {
        if (!squawk.withdrawn_on && acts::isOpen(squawk))
            upwards(records, squawk.component_id,
                    [&](std::int64_t id) { ++figures[id].open_squawks; });
    }
    for (const Fastener *fastener : fasteners::fingerTight(records, asOf))
        upwards(records, fastener->component_id,
                [&](std::int64_t id) { ++figures[id].finger_tight; });
    addPhotos(records, figures);
    return figures;
}

} // namespace lastrivet::ui
