// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/Answer.h"
#include "core/records/Records.h"
#include "ui/widgets/RowListModel.h"

#include <QString>

class QComboBox;

namespace lastrivet::ui {

QString holdPointWords(HoldPointKind kind);
QString roleWords(SignerRole role);
QString resultWords(SignOffResult result);
QString seenWords(Seen seen);
QString inspectionWords(InspectionKind kind);
/// "Pre-cover inspection 17-4", by its report or reference where it has one.
QString visitName(const Inspection &visit);
/// "pre-cover inspection of Left wing, upper skin".
QString holdPointName(const Records &records, const HoldPoint &point);

/// How a closing stands, by shape and word, where no column's head says it.
void showState(ListRow &row, const readiness::ClosingAnswer &answer);

/// The results of a signature, as choices.
void offerResults(QComboBox &box);
void offerSeen(QComboBox &box);

} // namespace lastrivet::ui
