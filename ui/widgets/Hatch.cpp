// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/Hatch.h"

#include "ui/shell/Colours.h"

#include <QPainter>
#include <QPainterPath>
#include <QTransform>

#include <cmath>

namespace lastrivet::ui {

namespace {

using readiness::State;

/// What lies between the outlines: lines at an angle, how far apart and how broad, in pixels.
struct Lines {
    qreal angle;
    qreal apart;
    qreal width;
    Qt::PenStyle style = Qt::SolidLine;
};

void paintLines(QPainter &painter, const QRectF &place, const Lines &lines, const QColor &colour)
{
    QPen pen(colour, lines.width, lines.style, Qt::FlatCap);
    if (lines.style == Qt::CustomDashLine) {
        pen.setCapStyle(Qt::RoundCap);
        pen.setDashPattern({0.01, lines.apart / lines.width});
    }
    painter.setPen(pen);
    const qreal reach = std::hypot(place.width(), place.height()) / 2 + lines.apart;
    painter.save();
    // From the corner of the whole picture, so that the hatching of neighbours is continuous.
    painter.rotate(lines.angle);
    const QPointF centre = QTransform().rotate(-lines.angle).map(place.center());
    const qreal first = std::floor((centre.y() - reach) / lines.apart) * lines.apart;
    for (qreal y = first; y < centre.y() + reach; y += lines.apart)
        painter.drawLine(QPointF(centre.x() - reach, y), QPointF(centre.x() + reach, y));
    painter.restore();
}

qreal tintOf(State state)
{
    switch (state) {
    case State::Closed:
        return 1;
    case State::ClosedEarly:
        return 0.3;
    default:
        return 0.14;
    }
}

void paintInside(QPainter &painter, const QRectF &place, State state, const QColor &colour)
{
    switch (state) {
    case State::Hold:
        paintLines(painter, place, {45, 6, 2}, colour);
        break;
    case State::ReadyToInspect:
        paintLines(painter, place, {0, 6, 2.6, Qt::CustomDashLine}, colour);
        break;
    case State::ReadyToSign:
        paintLines(painter, place, {90, 5, 1.4}, colour);
        break;
    case State::Clear:
        paintLines(painter, place, {0, 7, 1}, colour);
        break;
    case State::Closed:
        break;
    case State::ClosedEarly:
        paintLines(painter, place, {45, 7, 1.6}, colour);
        paintLines(painter, place, {-45, 7, 1.6}, colour);
        break;
    }
}

} // namespace

void paintHatched(QPainter &painter, const QPainterPath &shape, const std::optional<State> &state,
                  bool begun, const Colours &colours)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const bool isQuiet = !state || !begun;
    const QColor colour = !state  ? colours.border
                          : begun ? colours.state(*state)
                                  : colours.notBegun;
    painter.fillPath(shape, colours.surface);
    if (!isQuiet) {
        QColor tint = colour;
        tint.setAlphaF(float(tintOf(*state)));
        painter.fillPath(shape, tint);
        painter.save();
        painter.setClipPath(shape, Qt::IntersectClip);
        paintInside(painter, shape.boundingRect(), *state, colour);
        painter.restore();
    }
    QPen outline(colour, isQuiet ? 1.2 : 1.6);
    if (state && !begun) {
        outline.setCapStyle(Qt::RoundCap);
        outline.setDashPattern({0.01, 3});
        outline.setWidthF(1.8);
    }
    painter.strokePath(shape, outline);
    painter.restore();
}

} // namespace lastrivet::ui
