// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stores/StoreTexts.h"

#include "core/stores/Lots.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

#include <cstdlib>

// Lots of material, and what still cures.
namespace lastrivet::ui::storeroom {

namespace {

using stores::LotState;

constexpr std::int64_t minutesPerDay = 24 * 60;

QString tr(const char *text, int count = -1)
{
    return QCoreApplication::translate("StoreTexts", text, nullptr, count);
}

const MaterialLot &lotOf(const Session &session, std::int64_t id)
{
    return *session.records()->find(Id<MaterialLot>{id});
}

stores::LotStanding standing(const Session &session, std::int64_t id)
{
    return stores::standingOf(lotOf(session, id), *session.records(), session.today());
}

std::int64_t minutesBetween(Moment from, Moment to)
{
    return (to.day() - from.day()).count() * minutesPerDay + to.minuteOfDay() - from.minuteOfDay();
}

QString heldWords(const Session &session, Id<MaterialUse> use)
{
    QStringList titles;
    for (const auto &held : stores::running(*session.records(), *session.answer(), session.now())) {
        if (held.cure.use != use)
            continue;
        for (const auto closing : held.closings)
            titles << toQt(session.records()->find(closing)->title);
    }
    return titles.join(QStringLiteral(", "));
}

} // namespace

QString spanText(Minutes minutes)
{
    constexpr std::int64_t perHour = 60;
    const auto days = minutes.count() / minutesPerDay;
    const auto hours = minutes.count() % minutesPerDay / perHour;
    if (days > 0)
        return tr("%1 d %2 h").arg(days).arg(hours);
    return hoursText(minutes);
}

QString lotName(const Session &session, std::int64_t id)
{
    return toQt(lotOf(session, id).name);
}

QString lotNumber(const Session &session, std::int64_t id)
{
    return toQt(lotOf(session, id).lot_number);
}

QString lotExpires(const Session &session, std::int64_t id)
{
    const auto &day = lotOf(session, id).expires_on;
    return day ? dayText(*day) : QString();
}

QString lotStands(const Session &session, std::int64_t id)
{
    const auto stands = standing(session, id);
    switch (stands.state) {
    case LotState::WithoutDate:
        return {};
    case LotState::Expired:
        return tr("expired %n days ago", int(-*stands.days_left));
    default:
        return tr("%n days left", int(*stands.days_left));
    }
}

Tone lotTone(const Session &session, std::int64_t id)
{
    switch (standing(session, id).state) {
    case LotState::WithoutDate:
        return Tone::Plain;
    case LotState::Good:
        return Tone::Settled;
    case LotState::ExpiresSoon:
        return Tone::Soon;
    case LotState::Expired:
        return Tone::Alert;
    }
    return Tone::Plain;
}

QString lotUsed(const Session &session, std::int64_t id)
{
    const auto stands = standing(session, id);
    if (stands.uses.empty())
        return {};
    const QString times = tr("%n times", int(stands.uses.size()));
    return stands.used_expired > 0 ? tr("%1, %2 after expiry").arg(times).arg(stands.used_expired)
                                   : times;
}

QString cureWords(const Session &session, Id<MaterialUse> id)
{
    const MaterialUse &use = *session.records()->find(id);
    const auto cure = stores::cureOf(use, session.now());
    if (!use.cure_minutes)
        return tr("cure time not on record");
    if (!cure.ends)
        return {};
    if (!cure.is_running)
        return tr("cured %1").arg(dateText(*cure.ends));
    const QString left = spanText(Minutes{minutesBetween(session.now(), *cure.ends)});
    const QString words = tr("cures until %1: %2 left").arg(dateText(*cure.ends), left);
    const QString held = heldWords(session, id);
    return held.isEmpty() ? words : tr("%1; keeps open: %2").arg(words, held);
}

} // namespace lastrivet::ui::storeroom
