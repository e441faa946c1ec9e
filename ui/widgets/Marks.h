// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/Answer.h"
#include "core/records/Squawk.h"

#include <QString>

class QPainter;
class QRectF;

namespace lastrivet::ui {

struct Colours;

/// The icon of a state: the box and its lid.
QString stateIcon(readiness::State state, bool begun = true);
/// The state as the screen says it; `waitsForAdviser` when no inspector's word is missing.
QString stateWords(readiness::State state, bool begun = true, bool waitsForAdviser = false);
/// The state in the words that a row has room for; the shape beside them says whether it is open.
QString shortStateWords(readiness::State state);
/// True when the closings' missing words are advisers', none of them an inspector's.
bool waitsForAdviser(const readiness::ClosingAnswer &answer);

/// The shape of a state in its colour.
void paintState(QPainter &painter, const QRectF &place, readiness::State state, bool begun,
                const Colours &colours);
/// The triangle of a severity: filled, half-filled, outline.
void paintSeverity(QPainter &painter, const QRectF &place, Severity severity,
                   const Colours &colours);
QString severityIcon(Severity severity);
QString severityWord(Severity severity);

/// The bar at a row's left edge: whole for must, dashed for should.
void paintWeight(QPainter &painter, const QRectF &row, readiness::Weight weight,
                 const Colours &colours);

} // namespace lastrivet::ui
