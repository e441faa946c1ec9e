// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/Sessions.h"

#include <algorithm>

namespace lastrivet::acts {

namespace {

Id<Component> placeOf(const WorkSession &session, const Records &records)
{
    if (const Step *step = records.find(session.step_id))
        return step->component_id;
    if (const Squawk *squawk = records.find(session.squawk_id))
        return squawk->component_id;
    return {};
}

/// A step or squawk of another part says nothing about work on this one.
void dropStrangers(WorkSession &session, const Records &records)
{
    const Step *step = records.find(session.step_id);
    if (step && step->component_id != session.component_id)
        session.step_id = {};
    const Squawk *squawk = records.find(session.squawk_id);
    if (squawk && squawk->component_id != session.component_id)
        session.squawk_id = {};
}

void linkPhotosToo(Edit &edit, Id<WorkSession> session, const std::vector<Id<WorkSession>> &added)
{
    const Media::Link link{RecordType::WorkSession, session.value()};
    std::vector<Id<Media>> linked;
    for (const Media &media : edit.records().media) {
        if (std::ranges::find(media.links, link) != media.links.end())
            linked.push_back(media.id);
    }
    for (const Id<Media> id : linked) {
        edit.update(id, [&](Media &media) {
            for (const Id<WorkSession> other : added)
                media.links.push_back({RecordType::WorkSession, other.value()});
        });
    }
}

} // namespace

Id<WorkSession> enterSession(Edit &edit, WorkSession session)
{
    if (!session.component_id)
        session.component_id = placeOf(session, edit.records());
    const Id<Person> builder = edit.records().project.builder_id;
    if (session.workers.empty() && builder)
        session.workers.push_back({builder, {}, false});
    return edit.put(std::move(session));
}

void moveSession(Edit &edit, Id<WorkSession> session, std::optional<Moment> day, Id<Component> part)
{
    const Records &records = edit.records();
    edit.update(session, [&](WorkSession &moved) {
        if (day && moved.began->hasTime() && !day->hasTime())
            moved.began = Moment::ofTime(day->day(), moved.began->minuteOfDay());
        else if (day)
            moved.began = day;
        if (!part)
            return;
        moved.component_id = part;
        dropStrangers(moved, records);
    });
}

void splitSession(Edit &edit, Id<WorkSession> session, const std::vector<WorkSession> &pieces)
{
    std::vector<Id<WorkSession>> added;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        WorkSession piece = pieces[i];
        dropStrangers(piece, edit.records());
        piece.id = i == 0 ? session : Id<WorkSession>{};
        const auto id = edit.put(std::move(piece));
        if (i > 0)
            added.push_back(id);
    }
    linkPhotosToo(edit, session, added);
}

} // namespace lastrivet::acts
