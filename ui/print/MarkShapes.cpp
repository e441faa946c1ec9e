// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/MarkShapes.h"

#include <QLineF>

#include <algorithm>

namespace lastrivet::print {

namespace {

QPainterPath arrow(QPointF from, QPointF to, double headLength)
{
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

QPainterPath circle(QPointF centre, QPointF through)
{
    const double radius = QLineF(centre, through).length();
    QPainterPath path;
    path.addEllipse(centre, radius, radius);
    return path;
}

} // namespace

std::vector<QPointF> placesOn(const QRectF &picture, const std::vector<double> &numbers)
{
    std::vector<QPointF> places;
    for (std::size_t i = 0; i + 1 < numbers.size(); i += 2)
        places.emplace_back(picture.left() + std::clamp(numbers[i], 0.0, 1.0) * picture.width(),
                            picture.top() +
                                std::clamp(numbers[i + 1], 0.0, 1.0) * picture.height());
    return places;
}

QPainterPath outline(const Media::Annotation &mark, const std::vector<QPointF> &places,
                     double headLength)
{
    if (places.size() < 2 || mark.shape == AnnotationShape::Text)
        return {};
    return mark.shape == AnnotationShape::Arrow ? arrow(places[0], places[1], headLength)
                                                : circle(places[0], places[1]);
}

QPointF wordsPlace(const Media::Annotation &mark, const std::vector<QPointF> &places)
{
    if (places.empty())
        return {};
    return mark.shape == AnnotationShape::Arrow ? places.front() : places.back();
}

} // namespace lastrivet::print
