// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/PartFigures.h"

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
        std::set<std::int64_t> parts;
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
    switch (link.subject) {
    case RecordType::Component:
        return Id<Component>{link.id};
    case RecordType::WorkSession: {
        const auto *session = records.findLive(Id<WorkSession>{link.id});
        return session ? session->component_id : Id<Component>{};
    }
    case RecordType::Squawk: {
        const auto *squawk = records.findLive(Id<Squawk>{link.id});
        return squawk ? squawk->component_id : Id<Component>{};
    }
    case RecordType::Step: {
        const auto *step = records.findLive(Id<Step>{link.id});
        return step ? step->component_id : Id<Component>{};
    }
    default:
        return {};
    }
}

FiguresByPart figuresByPart(const Records &records)
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
    addPhotos(records, figures);
    return figures;
}

} // namespace lastrivet::ui
