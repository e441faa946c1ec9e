// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/Answer.h"
#include "core/readiness/Ledger.h"
#include "core/records/Vocabulary.h"

#include <QRectF>

class QPainter;

namespace lastrivet::print {

/// A shape that says something without colour, so that it survives a photocopier.
enum class Mark {
    None,
    StateClosed,
    StateClosedEarly,
    StateClear,
    StateReadyToSign,
    StateReadyToInspect,
    StateHold,
    Airworthiness,
    Workmanship,
    Cosmetic,
    Met,
    NotMet,
    Advice,
    NothingOnRecord,
    EmptyBox,
    TickedBox,
    CrossedBox,
};

Mark markOf(readiness::State state);
/// As `markOf` of the state, but that of nothing on record where no work was begun.
Mark markOf(readiness::State state, bool begun);
Mark markOf(Severity severity);
Mark markOf(readiness::Outcome outcome);

/// Draws the mark into the largest square in the middle of the place.
void drawMark(QPainter &painter, Mark mark, const QRectF &place);
/// Fills with slanting lines, in place of a colour.
void drawHatching(QPainter &painter, const QRectF &place, double distance);

} // namespace lastrivet::print
