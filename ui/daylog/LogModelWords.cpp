// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/daylog/LogModel.h"

#include "ui/convert/FieldText.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/RecordNames.h"

// What the rows of the log say of an entry.
namespace lastrivet::ui {

QString LogModel::timeText(const WorkSession &session) const
{
    if (!session.began->hasTime())
        return session.approximate ? tr("about") : QString();
    const int minute = session.began->minuteOfDay();
    const QString time = QTime(minute / 60, minute % 60).toString(QStringLiteral("HH:mm"));
    return session.approximate ? tr("about %1").arg(time) : time;
}

/// Nobody is named when the builder worked alone: that goes without saying.
QString LogModel::whoText(const WorkSession &session) const
{
    const auto records = m_session.records();
    if (session.workers.empty() ||
        (session.workers.size() == 1 &&
         session.workers.front().person_id == records->project.builder_id))
        return {};
    QStringList names;
    for (const auto &worker : session.workers)
        names.append(personName(*records, worker.person_id));
    return names.join(QStringLiteral(", "));
}

QString LogModel::marksText(const WorkSession &session) const
{
    QStringList marks;
    if (m_created.isLate(session, m_session.project().profile().late_entry_days))
        marks.append(tr("written down late, %1").arg(dayText(*m_created.createdOn(session.id))));
    if (session.changed_inspected == true)
        marks.append(tr("changed what was inspected"));
    if (!session.source.empty())
        marks.append(tr("from %1").arg(toQt(session.source)));
    return marks.join(QStringLiteral(" · "));
}

QString LogModel::whatText(const WorkSession &session) const
{
    if (!session.note.empty())
        return toQt(session.note);
    const auto records = m_session.records();
    if (session.step_id)
        return shortName(*records, {RecordType::Step, session.step_id.value()});
    if (session.squawk_id)
        return tr("Squawk %1")
            .arg(shortName(*records, {RecordType::Squawk, session.squawk_id.value()}));
    return plainWord(word(session.kind));
}

QString LogModel::wholeText(const WorkSession &session) const
{
    QStringList parts{timeText(session),
                      session.minutes ? hoursText(*session.minutes) : QString(),
                      partName(*m_session.records(), session.component_id),
                      plainWord(word(session.kind)),
                      whatText(session),
                      whoText(session),
                      marksText(session)};
    parts.removeAll(QString());
    return parts.join(QStringLiteral(", "));
}

} // namespace lastrivet::ui
