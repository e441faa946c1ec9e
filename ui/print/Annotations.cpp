// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/Annotations.h"

#include "ui/print/Measures.h"
#include "ui/print/TextBlock.h"
#include "ui/print/Wording.h"

#include <QLineF>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace lastrivet::print {

namespace {

constexpr double strokeWidth = points(1.6);
constexpr double edgeWidth = points(4);

/// Pairs of numbers from 0 to 1 as places on the picture.
std::vector<QPointF> placesOn(const QRectF &picture, const std::vector<double> &numbers)
{
    std::vector<QPointF> places;
    for (std::size_t i = 0; i + 1 < numbers.size(); i += 2)
        places.emplace_back(picture.left() + std::clamp(numbers[i], 0.0, 1.0) * picture.width(),
                            picture.top() +
                                std::clamp(numbers[i + 1], 0.0, 1.0) * picture.height());
    return places;
}

/// From the first place to the second, where its head is.
QPainterPath arrow(QPointF from, QPointF to)
{
    constexpr double headLength = points(10);
    constexpr double headAngle = 27;
    QPainterPath path(from);
    path.lineTo(to);
    for (const double turn : {headAngle, -headAngle}) {
        QLineF side(to, from);
        side.setAngle(side.angle() + turn);
        side.setLength(headLength);
        path.moveTo(to);
        path.lineTo(side.p2());
    }
    return path;
}

/// Around the first place, through the second.
QPainterPath circle(QPointF centre, QPointF through)
{
    const double radius = QLineF(centre, through).length();
    QPainterPath path;
    path.addEllipse(centre, radius, radius);
    return path;
}

void drawPath(QPainter &painter, const QPainterPath &path)
{
    painter.setBrush(Qt::NoBrush);
    painter.strokePath(path, QPen(Qt::white, edgeWidth, Qt::SolidLine, Qt::RoundCap,
                                  Qt::RoundJoin));
    painter.strokePath(path, QPen(Qt::black, strokeWidth, Qt::SolidLine, Qt::RoundCap,
                                  Qt::RoundJoin));
}

void drawWords(QPainter &painter, const QRectF &picture, QPointF place, const QString &words)
{
    const TextBlock block(words, Size::Small, picture.width() * 0.5, true);
    QRectF label(place, QSizeF(block.naturalWidth() + points(8), block.height() + points(4)));
    label.moveLeft(std::min(label.left(), picture.right() - label.width()));
    label.moveTop(std::min(label.top(), picture.bottom() - label.height()));
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
        if (annotation.shape == AnnotationShape::Arrow && places.size() >= 2)
            drawPath(painter, arrow(places[0], places[1]));
        if (annotation.shape == AnnotationShape::Circle && places.size() >= 2)
            drawPath(painter, circle(places[0], places[1]));
        if (!annotation.text.empty() && !places.empty())
            drawWords(painter, picture,
                      annotation.shape == AnnotationShape::Arrow ? places.front() : places.back(),
                      asIs(annotation.text));
    }
    painter.restore();
}

} // namespace lastrivet::print
