// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/MarkShapes.h"

#include <QLineF>

#include <algorithm>
#include <limits>

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

/// Places that are looked at along a line, and how many of them the box at its beginning may cover.
constexpr int steps = 64;
constexpr int stepsSpared = 4;

/// How many of the places along a line lie in a box.
int placesIn(const QRectF &box, const QPainterPath &line)
{
    int count = 0;
    for (int i = 0; i <= steps && !line.isEmpty(); ++i)
        count += box.contains(line.pointAtPercent(double(i) / steps)) ? 1 : 0;
    return count;
}

/// Moves a box to where it lies on the picture; what is too wide or too high begins at its edge.
QRectF movedOnto(const QRectF &picture, QRectF box)
{
    box.moveLeft(std::max(picture.left(), std::min(box.left(), picture.right() - box.width())));
    box.moveTop(std::max(picture.top(), std::min(box.top(), picture.bottom() - box.height())));
    return box;
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

QRectF wordsBox(const QRectF &picture, QPointF place, QSizeF size, const QPainterPath &line,
                double lineWidth)
{
    const QPointF left(-size.width(), 0);
    const QPointF above(0, -size.height());
    const double edge = lineWidth / 2;
    // At the edge of a picture no corner may do; then above or below all of the line.
    const QRectF around = line.boundingRect().adjusted(0, -lineWidth, 0, lineWidth);
    QRectF best;
    int least = std::numeric_limits<int>::max();
    for (const QPointF &corner :
         {place, place + left, place + above, place + left + above,
          QPointF(place.x(), around.top() - size.height()), QPointF(place.x(), around.bottom())}) {
        const QRectF box = movedOnto(picture, QRectF(corner, size));
        const int covered = placesIn(box.adjusted(-edge, -edge, edge, edge), line);
        if (covered + stepsSpared >= least)
            continue;
        best = box;
        least = covered;
    }
    return best;
}

} // namespace lastrivet::print
