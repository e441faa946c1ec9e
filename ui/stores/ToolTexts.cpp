// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stores/StoreTexts.h"

#include "core/stores/Calibrations.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"

#include <QCoreApplication>

// Tools and their calibrations.
namespace lastrivet::ui::storeroom {

namespace {

using stores::ToolState;

QString tr(const char *text, int count = -1)
{
    return QCoreApplication::translate("StoreTexts", text, nullptr, count);
}

const Tool &toolOf(const Session &session, std::int64_t id)
{
    return *session.records()->find(Id<Tool>{id});
}

stores::ToolStanding standing(const Session &session, std::int64_t id)
{
    return stores::standingOf(toolOf(session, id), *session.records(), session.today());
}

} // namespace

QString toolName(const Session &session, std::int64_t id)
{
    return toQt(toolOf(session, id).name);
}

QString toolSerial(const Session &session, std::int64_t id)
{
    return toQt(toolOf(session, id).serial_number);
}

QString toolDue(const Session &session, std::int64_t id)
{
    const auto stands = standing(session, id);
    if (!stands.calibration)
        return {};
    const auto &due = toolOf(session, id).calibrations[*stands.calibration].due_on;
    return due ? dayText(*due) : QString();
}

QString toolStands(const Session &session, std::int64_t id)
{
    const auto stands = standing(session, id);
    switch (stands.state) {
    case ToolState::NeedsNone:
        return tr("not to be calibrated");
    case ToolState::NeverCalibrated:
        return tr("no calibration on record");
    case ToolState::InCalibration:
    case ToolState::DueSoon:
        return tr("%n days left", int(*stands.days_left));
    case ToolState::Overdue:
        return tr("overdue by %n days", int(-*stands.days_left));
    }
    return {};
}

Tone toolTone(const Session &session, std::int64_t id)
{
    switch (standing(session, id).state) {
    case ToolState::NeedsNone:
        return Tone::Plain;
    case ToolState::NeverCalibrated:
    case ToolState::Overdue:
        return Tone::Alert;
    case ToolState::InCalibration:
        return Tone::Settled;
    case ToolState::DueSoon:
        return Tone::Soon;
    }
    return Tone::Plain;
}

QString toolCertificate(const Session &session, std::int64_t id)
{
    const auto stands = standing(session, id);
    if (!stands.calibration)
        return {};
    return stands.has_certificate ? tr("on file") : tr("none");
}

QString toolOutside(const Session &session, std::int64_t id)
{
    const auto stands = standing(session, id);
    if (stands.uses == 0)
        return {};
    if (stands.outside.empty())
        return tr("%n uses", int(stands.uses));
    return tr("%1 of %n uses out of calibration", int(stands.uses))
        .arg(qlonglong(stands.outside.size()));
}

Tone toolOutsideTone(const Session &session, std::int64_t id)
{
    return standing(session, id).outside.empty() ? Tone::Plain : Tone::Alert;
}

} // namespace lastrivet::ui::storeroom
