// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/Annotations.h"

#include "ui/print/MarkShapes.h"
#include "ui/print/Measures.h"
#include "ui/print/TextBlock.h"
#include "ui/print/Wording.h"

#include <QPainter>
#include <QPainterPath>

namespace lastrivet::print {

namespace {

constexpr double strokeWidth = points(1.6);
constexpr double edgeWidth = points(4);
constexpr double headLength = points(10);

void drawPath(QPainter &painter, const QPainterPath &path)
{
    painter.setBrush(Qt::NoBrush);
    painter.strokePath(path,
                       QPen(Qt::white, edgeWidth, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.strokePath(path,
                       QPen(Qt::black, strokeWidth, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
}

void drawWords(QPainter &painter, const QRectF &picture, QPointF place, const QPainterPath &line,
               const QString &words)
{
    const TextBlock block(words, Size::Small, picture.width() * 0.5, true);
    const QSizeF size(block.naturalWidth() + points(8), block.height() + points(4));
    const QRectF label = wordsBox(picture, place, size, line, edgeWidth);
    painter.fillRect(label, Qt::white);
    painter.setPen(QPen(Qt::black, points(0.5)));
    painter.drawRect(label);
    painter.setPen(Qt::black);
    block.draw(painter, label.topLeft() + QPointF(points(4), points(2)));
}

} // namespace

void drawAnnotations(QPainter &painter, const QRectF &picture,
                     const std::vector<Media::Annotation> &annotations)
{
    painter.save();
    painter.setClipRect(picture);
    for (const Media::Annotation &annotation : annotations) {
        const std::vector<QPointF> places = placesOn(picture, annotation.points);
        const QPainterPath line = outline(annotation, places, headLength);
        drawPath(painter, line);
        if (!annotation.text.empty() && !places.empty())
            drawWords(painter, picture, wordsPlace(annotation, places), line,
                      asIs(annotation.text));
    }
    painter.restore();
}

} // namespace lastrivet::print
