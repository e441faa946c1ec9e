// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/Mark.h"

#include <QLineF>
#include <QPainter>
#include <QPolygonF>

#include <algorithm>

namespace lastrivet::print {

namespace {

QRectF squareIn(const QRectF &place)
{
    const double side = std::min(place.width(), place.height());
    QRectF square(0, 0, side, side);
    square.moveCenter(place.center());
    return square;
}

QPen strokeFor(const QRectF &square, double share = 0.08)
{
    return QPen(Qt::black, square.width() * share, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin);
}

QPointF at(const QRectF &square, double x, double y)
{
    return square.topLeft() + QPointF(square.width() * x, square.height() * y);
}

/// Three sides of a box, open at the top.
void drawOpenBox(QPainter &painter, const QRectF &square)
{
    painter.setPen(strokeFor(square));
    painter.drawPolyline(QPolygonF{at(square, 0.12, 0.32), at(square, 0.12, 0.92),
                                   at(square, 0.88, 0.92), at(square, 0.88, 0.32)});
}

void drawLidAbove(QPainter &painter, const QRectF &square)
{
    painter.setPen(strokeFor(square, 0.1));
    painter.drawLine(QLineF(at(square, 0.06, 0.12), at(square, 0.94, 0.12)));
}

void drawFilledBox(QPainter &painter, const QRectF &square, bool hasNotch)
{
    painter.setPen(Qt::NoPen);
    painter.setBrush(Qt::black);
    QPolygonF box{at(square, 0.12, 0.12)};
    if (hasNotch)
        box << at(square, 0.38, 0.12) << at(square, 0.5, 0.5) << at(square, 0.62, 0.12);
    box << at(square, 0.88, 0.12) << at(square, 0.88, 0.92) << at(square, 0.12, 0.92);
    painter.drawPolygon(box);
    painter.setBrush(Qt::NoBrush);
}

void drawState(QPainter &painter, Mark mark, const QRectF &square)
{
    if (mark == Mark::StateClosed || mark == Mark::StateClosedEarly) {
        drawFilledBox(painter, square, mark == Mark::StateClosedEarly);
        return;
    }
    drawOpenBox(painter, square);
    if (mark == Mark::StateClear)
        drawLidAbove(painter, square);
    if (mark == Mark::StateReadyToInspect) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(Qt::black);
        painter.drawEllipse(at(square, 0.5, 0.62), square.width() * 0.13, square.width() * 0.13);
        painter.setBrush(Qt::NoBrush);
    }
    if (mark == Mark::StateReadyToSign) {
        painter.setPen(strokeFor(square));
        painter.drawLine(QLineF(at(square, 0.3, 0.78), at(square, 0.7, 0.42)));
    }
}

void drawSeverity(QPainter &painter, Mark mark, const QRectF &square)
{
    const QPolygonF triangle{at(square, 0.5, 0.1), at(square, 0.94, 0.88), at(square, 0.06, 0.88)};
    const QPolygonF half{at(square, 0.5, 0.1), at(square, 0.94, 0.88), at(square, 0.5, 0.88)};
    painter.setPen(strokeFor(square));
    painter.setBrush(mark == Mark::Airworthiness ? QBrush(Qt::black) : QBrush(Qt::NoBrush));
    painter.drawPolygon(triangle);
    if (mark == Mark::Workmanship) {
        painter.setBrush(Qt::black);
        painter.drawPolygon(half);
    }
    painter.setBrush(Qt::NoBrush);
}

void drawOutcome(QPainter &painter, Mark mark, const QRectF &square)
{
    painter.setPen(strokeFor(square, 0.11));
    switch (mark) {
    case Mark::Met:
        painter.drawPolyline(
            QPolygonF{at(square, 0.14, 0.52), at(square, 0.4, 0.8), at(square, 0.88, 0.2)});
        break;
    case Mark::NotMet:
        painter.fillRect(QRectF(at(square, 0.36, 0.04), at(square, 0.64, 0.96)), Qt::black);
        break;
    case Mark::Advice:
        for (int dash = 0; dash < 3; ++dash)
            painter.fillRect(
                QRectF(at(square, 0.36, 0.04 + dash * 0.34), at(square, 0.64, 0.28 + dash * 0.34)),
                Qt::black);
        break;
    default:
        painter.drawLine(QLineF(at(square, 0.2, 0.5), at(square, 0.8, 0.5)));
    }
}

void drawBox(QPainter &painter, Mark mark, const QRectF &square)
{
    painter.setPen(strokeFor(square, 0.07));
    painter.drawRect(QRectF(at(square, 0.08, 0.08), at(square, 0.92, 0.92)));
    painter.setPen(strokeFor(square, 0.1));
    if (mark == Mark::TickedBox)
        painter.drawPolyline(
            QPolygonF{at(square, 0.24, 0.52), at(square, 0.43, 0.73), at(square, 0.78, 0.28)});
    if (mark == Mark::CrossedBox)
        painter.drawLine(QLineF(at(square, 0.25, 0.5), at(square, 0.75, 0.5)));
}

} // namespace

Mark markOf(readiness::State state)
{
    // The marks stand in the order of what they mean.
    static_assert(int(Mark::StateHold) == int(Mark::StateClosed) + int(readiness::State::Hold));
    return Mark(int(Mark::StateClosed) + int(state));
}

Mark markOf(readiness::State state, bool begun)
{
    return begun ? markOf(state) : Mark::NothingOnRecord;
}

Mark markOf(Severity severity)
{
    // The marks stand in the order of what they mean.
    static_assert(int(Mark::Cosmetic) == int(Mark::Airworthiness) + int(Severity::Cosmetic));
    return Mark(int(Mark::Airworthiness) + int(severity));
}

Mark markOf(readiness::Outcome outcome)
{
    // The marks stand in the order of what they mean.
    static_assert(int(Mark::NothingOnRecord) ==
                  int(Mark::Met) + int(readiness::Outcome::NothingOnRecord));
    return Mark(int(Mark::Met) + int(outcome));
}

void drawMark(QPainter &painter, Mark mark, const QRectF &place)
{
    if (mark == Mark::None)
        return;
    const QRectF square = squareIn(place);
    painter.save();
    painter.setBrush(Qt::NoBrush);
    if (mark <= Mark::StateHold)
        drawState(painter, mark, square);
    else if (mark <= Mark::Cosmetic)
        drawSeverity(painter, mark, square);
    else if (mark <= Mark::NothingOnRecord)
        drawOutcome(painter, mark, square);
    else
        drawBox(painter, mark, square);
    painter.restore();
}

void drawHatching(QPainter &painter, const QRectF &place, double distance)
{
    painter.save();
    painter.setClipRect(place, Qt::IntersectClip);
    painter.setPen(QPen(Qt::black, distance * 0.18));
    for (double x = place.left() - place.height(); x < place.right(); x += distance)
        painter.drawLine(QLineF(x, place.bottom(), x + place.height(), place.top()));
    painter.restore();
}

} // namespace lastrivet::print
