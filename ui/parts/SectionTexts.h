// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/base/Result.h"
#include "core/project/Edit.h"
#include "ui/parts/PartSection.h"

#include <QString>

#include <string>

namespace lastrivet::ui {
class Session;
}

/// What the columns of a part's sections show and do; each takes the id of the section's record.
namespace lastrivet::ui::texts {

QString stepTitle(const Session &session, std::int64_t id);
QString stepMarkText(const Session &session, std::int64_t id);
QString stepEstimate(const Session &session, std::int64_t id);
QString stepWhen(const Session &session, std::int64_t id);
bool isStepDone(const Records &records, std::int64_t id);
void tickStepOff(Edit &edit, std::int64_t id, bool isDone);
bool writeStepTitle(Edit &edit, std::int64_t id, const QString &text);
bool writeStepEstimate(Edit &edit, std::int64_t id, const QString &text);

QString sessionDay(const Session &session, std::int64_t id);
QString sessionMinutes(const Session &session, std::int64_t id);
QString sessionKind(const Session &session, std::int64_t id);
QString sessionNote(const Session &session, std::int64_t id);

QString squawkTitle(const Session &session, std::int64_t id);
QString squawkSeverity(const Session &session, std::int64_t id);
QString squawkStateText(const Session &session, std::int64_t id);

QString closingTitle(const Session &session, std::int64_t id);
QString closingState(const Session &session, std::int64_t id);

QString fastenerPlace(const Session &session, std::int64_t id);
QString fastenerHardware(const Session &session, std::int64_t id);
QString torqueLimits(const Session &session, std::int64_t id);
QString torqueValue(const Session &session, std::int64_t id);
QString markedOn(const Session &session, std::int64_t id);
QString lockedBy(const Session &session, std::int64_t id);
QString fastenerStands(const Session &session, std::int64_t id);
Tone fastenerTone(const Session &session, std::int64_t id);
bool isFitted(const Records &records, std::int64_t id);
bool isMarked(const Records &records, std::int64_t id);
bool isLocked(const Records &records, std::int64_t id);
void tickFitted(Edit &edit, std::int64_t id, bool isFitted);
void tickMarked(Edit &edit, std::int64_t id, bool isMarked);
void tickLocked(Edit &edit, std::int64_t id, bool isLocked);
/// One sentence for what is no torque; empty for one, and for nothing at all.
QString whyNotTorque(const Session &session, std::int64_t id, const QString &text);
bool writeTorque(Edit &edit, std::int64_t id, const QString &text);

/// A measured value, with or without the measurement's own unit behind it.
Result<double, Message> readMeasured(const QString &text, const std::string &unit);
QString measurementWhat(const Session &session, std::int64_t id);
QString measurementLimits(const Session &session, std::int64_t id);
QString measurementValue(const Session &session, std::int64_t id);
QString measuredOn(const Session &session, std::int64_t id);
QString measurementStands(const Session &session, std::int64_t id);
Tone measurementTone(const Session &session, std::int64_t id);
bool writeMeasurement(Edit &edit, std::int64_t id, const QString &text);

QString deviationTitle(const Session &session, std::int64_t id);
QString deviationStage(const Session &session, std::int64_t id);
QString deviationDrawing(const Session &session, std::int64_t id);
QString deviationWeight(const Session &session, std::int64_t id);

QString bulletinTitle(const Session &session, std::int64_t id);
QString bulletinIssuer(const Session &session, std::int64_t id);
QString bulletinState(const Session &session, std::int64_t id);
QString bulletinIssued(const Session &session, std::int64_t id);

QString partLineName(const Session &session, std::int64_t id);
QString partLineWanted(const Session &session, std::int64_t id);
QString partLineReceived(const Session &session, std::int64_t id);
bool writeReceived(Edit &edit, std::int64_t id, const QString &text);

QString materialName(const Session &session, std::int64_t id);
QString materialUsed(const Session &session, std::int64_t id);
QString materialSample(const Session &session, std::int64_t id);

} // namespace lastrivet::ui::texts
