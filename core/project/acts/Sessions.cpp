// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/Sessions.h"

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

} // namespace lastrivet::acts
