// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/daylog/Recording.h"

#include "core/project/acts/Sessions.h"
#include "core/project/acts/WorkActs.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/RecordNames.h"

#include <QCoreApplication>

namespace lastrivet::ui {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("Recording", text);
}

} // namespace

std::optional<Id<WorkSession>> recordEntry(Session &session, const entry::EntryReading &reading)
{
    const WorkSession &first = reading.sessions.front();
    const QString part = partName(*session.records(), first.component_id);
    const QString time = first.minutes ? hoursText(*first.minutes) : tr("work");
    const QString label =
        part.isEmpty() ? tr("Logged: %1").arg(time) : tr("Logged: %1 on %2").arg(time, part);
    Id<WorkSession> added;
    const bool isDone = session.change(label, [&](Edit &edit) {
        for (const WorkSession &entry : reading.sessions)
            added = acts::enterSession(edit, entry);
        for (const auto step : reading.steps_done)
            acts::tickStep(edit, step, *first.began);
    });
    return isDone ? std::optional(added) : std::nullopt;
}

} // namespace lastrivet::ui
