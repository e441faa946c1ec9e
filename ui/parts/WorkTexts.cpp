// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/SectionTexts.h"

#include "core/entry/DurationText.h"
#include "core/entry/StepFinder.h"
#include "core/project/acts/WorkActs.h"
#include "ui/convert/FieldText.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/squawks/SquawkModel.h"
#include "ui/widgets/Marks.h"
#include "ui/widgets/RecordNames.h"

#include <QCoreApplication>

// Steps, log, squawks and closings of a part.
namespace lastrivet::ui::texts {

namespace {

template <class Record> const Record &find(const Session &session, std::int64_t id)
{
    return *session.records()->find(Id<Record>{id});
}

} // namespace

QString stepTitle(const Session &session, std::int64_t id)
{
    return toQt(find<Step>(session, id).title);
}

QString stepMarkText(const Session &session, std::int64_t id)
{
    const Step &step = find<Step>(session, id);
    const QString mark = toQt(entry::stepMark(*session.records(), step));
    return mark.isEmpty() ? toQt(step.plan_ref) : mark;
}

QString stepEstimate(const Session &session, std::int64_t id)
{
    const Step &step = find<Step>(session, id);
    return step.estimate_minutes ? hoursText(*step.estimate_minutes) : QString();
}

QString stepWhen(const Session &session, std::int64_t id)
{
    const Step &step = find<Step>(session, id);
    if (step.done_on)
        return dayText(*step.done_on);
    if (step.dropped_on)
        return QCoreApplication::translate("Section", "dropped %1").arg(dayText(*step.dropped_on));
    if (step.closes)
        return QCoreApplication::translate("Section", "closes %1")
            .arg(shortName(*session.records(), {RecordType::Closing, step.closes.value()}));
    return {};
}

bool isStepDone(const Records &records, std::int64_t id)
{
    return records.find(Id<Step>{id})->done_on.has_value();
}

void tickStepOff(Edit &edit, std::int64_t id, bool isDone)
{
    if (isDone)
        acts::tickStep(edit, Id<Step>{id}, edit.today());
    else
        acts::untickStep(edit, Id<Step>{id});
}

bool writeStepTitle(Edit &edit, std::int64_t id, const QString &text)
{
    if (text.isEmpty())
        return false;
    edit.update(Id<Step>{id}, [&](Step &step) { step.title = toStd(text); });
    return true;
}

bool writeStepEstimate(Edit &edit, std::int64_t id, const QString &text)
{
    const auto minutes = entry::parseDuration(toStd(text));
    if (!minutes && !text.isEmpty())
        return false;
    edit.update(Id<Step>{id}, [&](Step &step) { step.estimate_minutes = minutes; });
    return true;
}

QString sessionDay(const Session &session, std::int64_t id)
{
    return dateText(find<WorkSession>(session, id).began);
}

QString sessionMinutes(const Session &session, std::int64_t id)
{
    const auto &minutes = find<WorkSession>(session, id).minutes;
    return minutes ? hoursText(*minutes) : QString();
}

QString sessionKind(const Session &session, std::int64_t id)
{
    return plainWord(word(find<WorkSession>(session, id).kind));
}

QString sessionNote(const Session &session, std::int64_t id)
{
    return toQt(find<WorkSession>(session, id).note);
}

QString squawkTitle(const Session &session, std::int64_t id)
{
    return shortName(*session.records(), {RecordType::Squawk, id});
}

QString squawkSeverity(const Session &session, std::int64_t id)
{
    return severityWord(find<Squawk>(session, id).severity);
}

QString squawkStateText(const Session &session, std::int64_t id)
{
    return squawkState(find<Squawk>(session, id), session.today());
}

QString closingTitle(const Session &session, std::int64_t id)
{
    return toQt(find<Closing>(session, id).title);
}

QString closingState(const Session &session, std::int64_t id)
{
    const auto answer = session.answer();
    const auto *closing = answer->closing(Id<Closing>{id});
    return closing ? stateWords(closing->state, closing->begun, waitsForAdviser(*closing))
                   : QString();
}

} // namespace lastrivet::ui::texts
