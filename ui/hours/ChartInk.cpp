// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/hours/ChartInk.h"

#include "ui/shell/Theme.h"

namespace lastrivet::ui {

using print::ChartLook;

namespace {

/// In units of the drawing, so that a printer's many dots do not change it.
constexpr int pixelsOnPaper = 12;

} // namespace

ChartInk ChartInk::of(const Theme &theme)
{
    const Colours &colours = theme.colours();
    return {colours.surface, colours.text,   colours.quietText, colours.line,
            colours.closed,  colours.accent, theme.font(0)};
}

ChartInk ChartInk::onPaper()
{
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setPixelSize(pixelsOnPaper);
    return {Qt::white, Qt::black, Qt::black, QColor(0xC8, 0xC8, 0xC8), QColor(0x60, 0x60, 0x60),
            Qt::black, font};
}

QBrush ChartInk::brush(ChartLook look) const
{
    switch (look) {
    case ChartLook::Filled:
        return fill;
    case ChartLook::Hatched:
        return QBrush(text, Qt::BDiagPattern);
    case ChartLook::Outlined:
    case ChartLook::Line:
    case ChartLook::Dashed:
    case ChartLook::Marked:
        break;
    }
    return ground;
}

QPen ChartInk::pen(ChartLook look) const
{
    switch (look) {
    case ChartLook::Line:
    case ChartLook::Marked:
        return QPen(line, 2);
    case ChartLook::Dashed:
        return QPen(text, 1.6, Qt::DashLine);
    case ChartLook::Hatched:
        // In the legend there is room for one stroke of the hatching: the edge shows the square.
        return QPen(text, 1);
    case ChartLook::Filled:
    case ChartLook::Outlined:
        break;
    }
    return QPen(quiet, 1);
}

} // namespace lastrivet::ui
