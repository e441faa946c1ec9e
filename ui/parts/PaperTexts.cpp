// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/SectionTexts.h"

#include "core/project/acts/DeviationActs.h"
#include "ui/convert/FieldText.h"
#include "ui/convert/NumberText.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/RecordNames.h"

#include <QCoreApplication>

// Deviations and bulletins: what is written to and by those who decide.
namespace lastrivet::ui::texts {

namespace {

template <class Record> const Record &find(const Session &session, std::int64_t id)
{
    return *session.records()->find(Id<Record>{id});
}

QString tr(const char *text)
{
    return QCoreApplication::translate("Section", text);
}

} // namespace

QString deviationTitle(const Session &session, std::int64_t id)
{
    return shortName(*session.records(), {RecordType::Deviation, id});
}

QString deviationStage(const Session &session, std::int64_t id)
{
    using enum acts::DeviationStage;
    const Deviation &deviation = find<Deviation>(session, id);
    switch (acts::stageOf(deviation)) {
    case Raised:
        return tr("not asked yet");
    case Asked:
        return tr("asked %1, no answer yet").arg(dayText(*deviation.asked_on));
    case Approved:
        return deviation.built_on ? tr("approved %1, built").arg(dayText(*deviation.decided_on))
                                  : tr("approved %1").arg(dayText(*deviation.decided_on));
    case Rejected:
        return tr("rejected %1").arg(dayText(*deviation.decided_on));
    case BuiltUndecided:
        return tr("built, not decided");
    case BuiltRejected:
        return tr("built though rejected");
    case Undone:
        return tr("undone %1").arg(dayText(*deviation.undone_on));
    }
    return {};
}

QString deviationDrawing(const Session &session, std::int64_t id)
{
    return toQt(find<Deviation>(session, id).drawing_ref);
}

/// "+0.35 kg at 2100 mm"; the sign is always told.
QString deviationWeight(const Session &session, std::int64_t id)
{
    const Deviation &deviation = find<Deviation>(session, id);
    if (!deviation.weight_change)
        return {};
    QString words = numberText(*deviation.weight_change);
    if (*deviation.weight_change > 0)
        words.prepend(QLatin1Char('+'));
    if (deviation.weight_unit)
        words += QLatin1Char(' ') + toQt(word(*deviation.weight_unit));
    if (!deviation.arm)
        return words;
    QString arm = numberText(*deviation.arm);
    if (deviation.arm_unit)
        arm += QLatin1Char(' ') + toQt(word(*deviation.arm_unit));
    return tr("%1 at %2").arg(words, arm);
}

QString bulletinTitle(const Session &session, std::int64_t id)
{
    return shortName(*session.records(), {RecordType::Bulletin, id});
}

QString bulletinIssuer(const Session &session, std::int64_t id)
{
    return toQt(find<Bulletin>(session, id).issuer);
}

QString bulletinState(const Session &session, std::int64_t id)
{
    const Bulletin &bulletin = find<Bulletin>(session, id);
    if (bulletin.complied_on)
        return tr("complied with %1").arg(dayText(*bulletin.complied_on));
    if (!bulletin.applies)
        return tr("not looked into");
    if (!*bulletin.applies)
        return tr("does not apply");
    return bulletin.mandatory ? tr("applies, mandatory") : tr("applies");
}

QString bulletinIssued(const Session &session, std::int64_t id)
{
    const Bulletin &bulletin = find<Bulletin>(session, id);
    const auto &day = bulletin.issued_on ? bulletin.issued_on : bulletin.received_on;
    return day ? dayText(*day) : QString();
}

} // namespace lastrivet::ui::texts
