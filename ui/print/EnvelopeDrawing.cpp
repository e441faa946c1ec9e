// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/EnvelopeDrawing.h"

#include "ui/print/SignPlaces.h"

#include <QFontMetricsF>
#include <QLineF>
#include <QPainter>
#include <QPolygonF>

#include <algorithm>
#include <cmath>

namespace lastrivet::print {

namespace {

/// The least and the most of a direction, with round steps between.
struct Axis {
    double low = 0;
    double high = 1;
    double step = 1;
};

/// 1, 2 or 5 times a power of ten, so that there are about `wanted` steps.
double roundStep(double span, int wanted)
{
    const double rough = std::max(span, 1e-9) / wanted;
    const double power = std::pow(10, std::floor(std::log10(rough)));
    for (const double factor : {1.0, 2.0, 5.0}) {
        if (factor * power >= rough)
            return factor * power;
    }
    return 10 * power;
}

Axis axisOver(double low, double high, int wanted)
{
    const double step = roundStep(high - low, wanted);
    return {step * std::floor(low / step), step * std::ceil(high / step), step};
}

/// False for figures so large that the next step is no other figure.
bool hasSteps(const Axis &axis)
{
    return std::isfinite(axis.high - axis.low) && axis.low + axis.step > axis.low &&
           axis.high - axis.step < axis.high;
}

QPointF nearestIn(const QRectF &box, const QPointF &point)
{
    return {std::clamp(point.x(), box.left(), box.right()),
            std::clamp(point.y(), box.top(), box.bottom())};
}

class Drawing {
public:
    Drawing(QPainter &painter, const QRectF &place, const EnvelopePlot &plot,
            const EnvelopeLook &look);

    void draw();

private:
    void spread();
    QPointF at(double arm, double weight) const;
    void drawGrid();
    void drawLimits();
    QRectF placeOf(const EnvelopePoint &point) const;
    void drawMark(const EnvelopePoint &point);
    void drawSigns();

    QPainter &m_painter;
    QRectF m_place;
    const EnvelopePlot &m_plot;
    const EnvelopeLook &m_look;
    QFontMetricsF m_metrics;
    QRectF m_field;
    Axis m_arms;
    Axis m_weights;
};

Drawing::Drawing(QPainter &painter, const QRectF &place, const EnvelopePlot &plot,
                 const EnvelopeLook &look)
    : m_painter(painter)
    , m_place(place)
    , m_plot(plot)
    , m_look(look)
    , m_metrics(look.font, painter.device())
{
    spread();
    const double line = m_metrics.height();
    const double left = m_metrics.horizontalAdvance(m_plot.number(m_weights.high)) + line;
    m_field = place.adjusted(left, 1.4 * line, -2 * line, -2.6 * line);
}

void Drawing::spread()
{
    double leftmost = 1e300;
    double rightmost = -1e300;
    double lowest = 1e300;
    double highest = -1e300;
    const auto take = [&](double arm, double weight) {
        leftmost = std::min(leftmost, arm);
        rightmost = std::max(rightmost, arm);
        lowest = std::min(lowest, weight);
        highest = std::max(highest, weight);
    };
    for (const auto &corner : m_plot.corners)
        take(corner.arm, corner.weight);
    for (const auto &point : m_plot.points)
        take(point.arm, point.weight);
    // Around a single point steps of less than half a unit say nothing, and are no round figures.
    constexpr double leastRoom = 1;
    const double armRoom = std::max(0.08 * (rightmost - leftmost), leastRoom);
    const double weightRoom = std::max(0.08 * (highest - lowest), leastRoom);
    m_arms = axisOver(leftmost - armRoom, rightmost + armRoom, 6);
    m_weights = axisOver(lowest - weightRoom, highest + weightRoom, 5);
}

QPointF Drawing::at(double arm, double weight) const
{
    return {m_field.left() + m_field.width() * (arm - m_arms.low) / (m_arms.high - m_arms.low),
            m_field.bottom() -
                m_field.height() * (weight - m_weights.low) / (m_weights.high - m_weights.low)};
}

void Drawing::drawGrid()
{
    const double line = m_metrics.height();
    m_painter.setFont(m_look.font);
    for (double arm = m_arms.low; arm <= m_arms.high + m_arms.step / 2; arm += m_arms.step) {
        const QPointF foot = at(arm, m_weights.low);
        m_painter.setPen(QPen(m_look.quiet, m_look.pen / 3));
        m_painter.drawLine(foot, at(arm, m_weights.high));
        m_painter.setPen(m_look.ink);
        m_painter.drawText(QRectF(foot.x() - 6 * line, foot.y() + 0.2 * line, 12 * line, line),
                           Qt::AlignHCenter, m_plot.number(arm));
    }
    for (double weight = m_weights.low; weight <= m_weights.high + m_weights.step / 2;
         weight += m_weights.step) {
        const QPointF side = at(m_arms.low, weight);
        m_painter.setPen(QPen(m_look.quiet, m_look.pen / 3));
        m_painter.drawLine(side, at(m_arms.high, weight));
        m_painter.setPen(m_look.ink);
        m_painter.drawText(QRectF(m_place.left(), side.y() - line / 2,
                                  side.x() - m_place.left() - 0.4 * line, line),
                           Qt::AlignRight | Qt::AlignVCenter, m_plot.number(weight));
    }
    m_painter.drawText(
        QRectF(m_field.left(), m_field.bottom() + 1.3 * line, m_field.width(), 1.2 * line),
        Qt::AlignRight, m_plot.arm_title);
    m_painter.drawText(QRectF(m_place.left(), m_place.top(), m_place.width(), 1.2 * line),
                       Qt::AlignLeft, m_plot.weight_title);
}

void Drawing::drawLimits()
{
    if (m_plot.corners.size() < 2)
        return;
    QPolygonF limits;
    for (const auto &corner : m_plot.corners)
        limits << at(corner.arm, corner.weight);
    m_painter.setPen(QPen(m_look.ink, m_look.pen));
    m_painter.setBrush(m_look.fill);
    m_painter.drawPolygon(limits);
}

/// The rectangle that the mark fills.
QRectF Drawing::placeOf(const EnvelopePoint &point) const
{
    const QPointF middle = at(point.arm, point.weight);
    const double r = 0.32 * m_metrics.height();
    // An extreme is often one of the loadings: its triangle goes around the disc, touching nothing.
    const double around = 1.4 * r;
    const double corner = std::sqrt(3.0) * around;
    switch (point.shape) {
    case EnvelopePoint::Shape::Forward:
        return {middle.x() - 2 * around, middle.y() - corner, 3 * around, 2 * corner};
    case EnvelopePoint::Shape::Aft:
        return {middle.x() - around, middle.y() - corner, 3 * around, 2 * corner};
    case EnvelopePoint::Shape::Empty:
    case EnvelopePoint::Shape::Case:
        break;
    }
    return {middle.x() - r, middle.y() - r, 2 * r, 2 * r};
}

void Drawing::drawMark(const EnvelopePoint &point)
{
    const QRectF place = placeOf(point);
    m_painter.setPen(QPen(m_look.ink, m_look.pen));
    m_painter.setBrush(m_look.ink);
    switch (point.shape) {
    case EnvelopePoint::Shape::Empty:
        m_painter.setBrush(Qt::NoBrush);
        m_painter.drawRect(place);
        return;
    case EnvelopePoint::Shape::Case:
        m_painter.drawEllipse(place);
        return;
    case EnvelopePoint::Shape::Forward:
        m_painter.setBrush(Qt::NoBrush);
        m_painter.drawPolygon(QPolygonF{QPointF(place.left(), place.center().y()), place.topRight(),
                                        place.bottomRight()});
        return;
    case EnvelopePoint::Shape::Aft:
        m_painter.setBrush(Qt::NoBrush);
        m_painter.drawPolygon(QPolygonF{QPointF(place.right(), place.center().y()), place.topLeft(),
                                        place.bottomLeft()});
        return;
    }
}

/// Of a sign that found its place only farther away, a line says which mark it is of.
void Drawing::drawSigns()
{
    const double gap = 0.25 * m_metrics.height();
    std::vector<SignedMark> marks;
    for (const auto &point : m_plot.points)
        marks.push_back({placeOf(point),
                         {m_metrics.horizontalAdvance(point.sign), m_metrics.height()},
                         point.shape == EnvelopePoint::Shape::Forward});
    const std::vector<QRectF> places = placesOfSigns(marks, m_field, gap);
    for (std::size_t i = 0; i < places.size(); ++i) {
        const QLineF line(nearestIn(marks[i].mark, places[i].center()),
                          nearestIn(places[i], marks[i].mark.center()));
        m_painter.setPen(QPen(m_look.ink, m_look.pen / 2));
        if (line.length() > 2 * gap)
            m_painter.drawLine(line);
        m_painter.setPen(m_look.ink);
        m_painter.drawText(places[i], Qt::AlignCenter | Qt::TextDontClip, m_plot.points[i].sign);
    }
}

void Drawing::draw()
{
    if (!hasSteps(m_arms) || !hasSteps(m_weights))
        return;
    m_painter.save();
    m_painter.setRenderHint(QPainter::Antialiasing);
    drawGrid();
    drawLimits();
    for (const auto &point : m_plot.points)
        drawMark(point);
    drawSigns();
    m_painter.restore();
}

} // namespace

QString signOfCase(std::size_t index)
{
    return QString::number(index + 1);
}

EnvelopePlot envelopePlot(const packet::WeightReport &report)
{
    using Shape = EnvelopePoint::Shape;
    EnvelopePlot plot;
    if (report.limits)
        plot.corners = report.limits->corners;
    if (report.empty)
        plot.points.push_back(
            {QStringLiteral("E"), report.empty->sum.weight, report.empty->sum.cg, Shape::Empty});
    for (std::size_t i = 0; i < report.cases.size(); ++i) {
        if (!report.cases[i].refusal)
            plot.points.push_back(
                {signOfCase(i), report.cases[i].sum.weight, report.cases[i].sum.cg, Shape::Case});
    }
    if (report.extremes) {
        const auto &forward = report.extremes->forward.sum;
        const auto &aft = report.extremes->aft.sum;
        plot.points.push_back({QStringLiteral("F"), forward.weight, forward.cg, Shape::Forward});
        plot.points.push_back({QStringLiteral("A"), aft.weight, aft.cg, Shape::Aft});
    }
    return plot;
}

void paintEnvelope(QPainter &painter, const QRectF &place, const EnvelopePlot &plot,
                   const EnvelopeLook &look)
{
    if (plot.corners.empty() && plot.points.empty())
        return;
    Drawing(painter, place, plot, look).draw();
}

} // namespace lastrivet::print
