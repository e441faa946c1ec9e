// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/Measures.h"

#include <QRectF>
#include <QSizeF>

namespace lastrivet::print {

/// A size of paper, upright, with a wide left edge for punched holes.
enum class Paper { A4, Letter };

/// In print units.
inline QSizeF sizeOf(Paper paper)
{
    return paper == Paper::A4 ? QSizeF(points(595.28), points(841.89))
                              : QSizeF(points(612), points(792));
}

/// Where text and pictures may stand, between the running head and the foot.
inline QRectF bodyOf(Paper paper)
{
    const QSizeF size = sizeOf(paper);
    const double left = millimetres(25);
    const double right = millimetres(15);
    const double top = millimetres(22);
    const double bottom = millimetres(21);
    return {left, top, size.width() - left - right, size.height() - top - bottom};
}

} // namespace lastrivet::print
