// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QIcon>
#include <QString>

class QPainter;
class QRectF;

namespace lastrivet::ui {

/// An icon of resources/icons by its path there ("pages/today"), drawn at any scale.
///
/// Without a colour it takes the palette's colour of text, and so follows the theme.
QIcon svgIcon(const QString &name, const QColor &colour = {});

/// Draws such an icon into a rectangle.
void paintSvg(QPainter &painter, const QRectF &place, const QString &name, const QColor &colour);

} // namespace lastrivet::ui
