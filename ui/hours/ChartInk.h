// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/ChartPlan.h"

#include <QBrush>
#include <QColor>
#include <QFont>
#include <QPen>

namespace lastrivet::ui {

class Theme;

/// The colours and the type of a chart; what is told apart is told by hatching and dashes.
struct ChartInk {
    QColor ground;
    QColor text;
    QColor quiet;
    QColor grid;
    QColor fill;
    QColor line;
    QFont font;

    /// On the screen.
    static ChartInk of(const Theme &theme);
    /// Black on white.
    static ChartInk onPaper();

    QBrush brush(print::ChartLook look) const;
    QPen pen(print::ChartLook look) const;
};

} // namespace lastrivet::ui
