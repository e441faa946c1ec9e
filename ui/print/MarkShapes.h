// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Media.h"

#include <QPainterPath>
#include <QRectF>

#include <vector>

namespace lastrivet::print {

/// The points of a mark as places on a picture that lies in `picture`, whatever its size there;
/// numbers outside 0 to 1 are brought to the edge.
std::vector<QPointF> placesOn(const QRectF &picture, const std::vector<double> &numbers);

/// The line of an arrow from its first point to its second, where its head is, or of a circle
/// around its first point through its second; empty for words and for marks that lack points.
QPainterPath outline(const Media::Annotation &mark, const std::vector<QPointF> &places,
                     double headLength);

/// Where the words of a mark stand; an arrow is told at its tail.
QPointF wordsPlace(const Media::Annotation &mark, const std::vector<QPointF> &places);

/// The box of a mark's words: on the picture, at their place, and on the side where it covers
/// little of the mark's own line, which is `lineWidth` wide.
QRectF wordsBox(const QRectF &picture, QPointF place, QSizeF size, const QPainterPath &line,
                double lineWidth);

} // namespace lastrivet::print
