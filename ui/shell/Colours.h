// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/Answer.h"
#include "core/records/Squawk.h"

#include <QColor>

#include <optional>

namespace lastrivet::ui {

/// The colours of one theme; colour is used only where it says something, and never alone.
///
/// The state colours are those of Okabe and Ito (Color Universal Design, 2008), which colour-blind
/// eyes tell apart; on white some are darkened until they reach 3 : 1.
struct Colours {
    QColor window;     ///< behind everything
    QColor surface;    ///< lists, fields, cards
    QColor raised;     ///< rail, headings of columns, buttons
    QColor line;       ///< hairlines between things
    QColor border;     ///< around what can be typed in or pressed; 3 : 1
    QColor text;       ///< 4.5 : 1 and better on all of the above
    QColor quietText;  ///< for what comes second; still 4.5 : 1
    QColor accent;     ///< chosen, focused, to be pressed
    QColor accentText; ///< on accent
    QColor selection;  ///< behind chosen rows; carries `text`
    QColor notBegun;
    QColor hold;
    QColor waits; ///< for a signature or for an inspector
    QColor clear;
    QColor closed;
    QColor closedEarly;

    static const Colours &light();
    static const Colours &dark();

    QColor state(readiness::State state) const;
    QColor severity(Severity severity) const;
};

} // namespace lastrivet::ui
