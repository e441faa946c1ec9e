// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/MeasurementPlot.h"

#include "ui/convert/NumberText.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Theme.h"

#include <QPainter>
#include <QStringList>

#include <algorithm>

namespace lastrivet::ui {

namespace {

constexpr qreal dot = 4;

} // namespace

MeasurementPlot::MeasurementPlot(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
{
    setAccessibleName(tr("Values over time"));
    setMinimumSize(200, 120);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void MeasurementPlot::show(std::vector<PlottedValue> values, std::optional<double> minimum,
                           std::optional<double> maximum, const QString &unit)
{
    m_values = std::move(values);
    m_minimum = minimum;
    m_maximum = maximum;
    m_unit = unit;
    QStringList told;
    std::vector<double> all;
    for (const PlottedValue &value : m_values) {
        told << withColon(value.name, QStringLiteral("%1 %2").arg(numberText(value.value), unit));
        all.push_back(value.value);
    }
    for (const auto &limit : {minimum, maximum}) {
        if (limit)
            all.push_back(*limit);
    }
    if (!all.empty()) {
        const auto [lowest, highest] = std::ranges::minmax(all);
        const double room = highest > lowest ? (highest - lowest) * 0.1 : 1;
        m_lowest = lowest - room;
        m_highest = highest + room;
    }
    setAccessibleDescription(told.join(QStringLiteral("; ")));
    update();
}

QRectF MeasurementPlot::plot() const
{
    const int line = fontMetrics().height();
    int left = 0;
    for (const auto &limit : {m_minimum, m_maximum}) {
        if (limit)
            left = std::max(left, fontMetrics().horizontalAdvance(numberText(*limit)));
    }
    return QRectF(rect()).adjusted(left + 8, line / 2.0, -dot - 4, -line - 4);
}

qreal MeasurementPlot::heightOf(double value) const
{
    const QRectF area = plot();
    return area.bottom() - area.height() * (value - m_lowest) / (m_highest - m_lowest);
}

QPointF MeasurementPlot::place(std::size_t value) const
{
    const QRectF area = plot();
    const qreal step =
        m_values.size() < 2 ? 0 : (area.width() - 2 * dot) / qreal(m_values.size() - 1);
    return {area.left() + dot + step * qreal(value), heightOf(m_values[value].value)};
}

void MeasurementPlot::paintLimit(QPainter &painter, double limit) const
{
    const Colours &colours = m_theme.colours();
    const qreal y = heightOf(limit);
    painter.setPen(QPen(colours.quietText, 1, Qt::DashLine));
    painter.drawLine(QPointF(plot().left(), y), QPointF(width(), y));
    const qreal line = fontMetrics().height();
    painter.setPen(colours.quietText);
    painter.drawText(QRectF(0, y - line / 2, plot().left() - 4, line),
                     Qt::AlignRight | Qt::AlignVCenter, numberText(limit));
}

/// A value outside is a diamond, one inside a dot: told by its shape, too.
void MeasurementPlot::paintValues(QPainter &painter) const
{
    const Colours &colours = m_theme.colours();
    painter.setPen(QPen(colours.closed, 1.5));
    for (std::size_t i = 1; i < m_values.size(); ++i)
        painter.drawLine(place(i - 1), place(i));
    painter.setPen(Qt::NoPen);
    for (std::size_t i = 0; i < m_values.size(); ++i) {
        const QPointF at = place(i);
        painter.setBrush(m_values[i].isOutside ? colours.closedEarly : colours.text);
        if (m_values[i].isOutside)
            painter.drawPolygon(
                QPolygonF{{QPointF(at.x(), at.y() - dot - 2), QPointF(at.x() + dot + 2, at.y()),
                           QPointF(at.x(), at.y() + dot + 2), QPointF(at.x() - dot - 2, at.y())}});
        else
            painter.drawEllipse(at, dot, dot);
    }
}

void MeasurementPlot::paintEvent(QPaintEvent *)
{
    if (m_values.empty())
        return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    for (const auto &limit : {m_minimum, m_maximum}) {
        if (limit)
            paintLimit(painter, *limit);
    }
    paintValues(painter);
    const QRectF area = plot();
    const QRectF below(area.left(), area.bottom() + 4, area.width() + dot, fontMetrics().height());
    painter.setPen(m_theme.colours().quietText);
    painter.drawText(below, Qt::AlignLeft, m_values.front().name);
    painter.drawText(below, Qt::AlignRight, m_values.back().name);
}

} // namespace lastrivet::ui
