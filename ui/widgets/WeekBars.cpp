// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/WeekBars.h"

#include "ui/convert/QtText.h"
#include "ui/shell/Theme.h"

#include <QHelpEvent>
#include <QPainter>
#include <QToolTip>

#include <algorithm>

namespace lastrivet::ui {

namespace {

constexpr int widestBar = 24;

QString dayOf(const today::WeekHours &week)
{
    const auto monday = Moment::ofDay(week.monday);
    return monday ? dayText(*monday) : QString();
}

} // namespace

WeekBars::WeekBars(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
{
    setAccessibleName(tr("Hours per week"));
    setMinimumSize(200, 72);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void WeekBars::show(std::vector<today::WeekHours> weeks)
{
    m_weeks = std::move(weeks);
    QStringList lines;
    for (const auto &week : m_weeks) {
        if (week.minutes > Minutes{0})
            lines << words(week);
    }
    setAccessibleDescription(lines.isEmpty() ? tr("No hours in these weeks.")
                                             : lines.join(QStringLiteral("; ")));
    update();
}

QSize WeekBars::sizeHint() const
{
    return {int(m_weeks.size()) * (widestBar + 4), 5 * fontMetrics().height()};
}

Minutes WeekBars::most() const
{
    const auto most = std::ranges::max_element(m_weeks, {}, &today::WeekHours::minutes);
    return most == m_weeks.end() ? Minutes{} : most->minutes;
}

bool WeekBars::hasRework() const
{
    return std::ranges::any_of(
        m_weeks, [](const today::WeekHours &week) { return week.rework > Minutes{0}; });
}

QRectF WeekBars::plot() const
{
    const int line = fontMetrics().height();
    return QRectF(rect()).adjusted(0.5, line, -0.5, -line - 2.5);
}

QRectF WeekBars::bar(std::size_t week) const
{
    const QRectF place = plot();
    const qreal step =
        std::min(place.width() / qreal(std::max<std::size_t>(m_weeks.size(), 1)), widestBar + 4.0);
    const qreal most = qreal(std::max<std::int64_t>(this->most().count(), 1));
    const qreal height = place.height() * qreal(m_weeks[week].minutes.count()) / most;
    return {place.left() + step * qreal(week), place.bottom() - height, std::max(step - 4, 2.0),
            height};
}

QString WeekBars::words(const today::WeekHours &week) const
{
    const QString hours = hoursText(week.minutes);
    return week.rework > Minutes{0} ? tr("week of %1: %2, of that %3 done again")
                                          .arg(dayOf(week), hours, hoursText(week.rework))
                                    : tr("week of %1: %2").arg(dayOf(week), hours);
}

void WeekBars::paintBar(QPainter &painter, std::size_t week) const
{
    const Colours &colours = m_theme.colours();
    const auto &shown = m_weeks[week];
    if (shown.minutes == Minutes{0})
        return;
    const QRectF whole = bar(week);
    const bool isRunning = week + 1 == m_weeks.size();
    painter.fillRect(whole, isRunning ? colours.surface : colours.closed);
    QRectF again = whole;
    again.setTop(whole.bottom() -
                 whole.height() * qreal(shown.rework.count()) / qreal(shown.minutes.count()));
    painter.fillRect(again, colours.surface);
    painter.save();
    painter.setClipRect(again);
    painter.setPen(QPen(colours.text, 1.4));
    for (qreal y = again.top() - again.width(); y < again.bottom(); y += 4)
        painter.drawLine(QPointF(again.left(), y + again.width()), QPointF(again.right(), y));
    painter.restore();
    painter.setPen(QPen(colours.closed, 1));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(whole);
}

void WeekBars::paintAxis(QPainter &painter) const
{
    const Colours &colours = m_theme.colours();
    const QRectF place = plot();
    painter.setPen(colours.line);
    painter.drawLine(place.bottomLeft(), place.bottomRight());
    painter.setPen(colours.quietText);
    const qreal line = fontMetrics().height();
    const QRectF below(place.left(), place.bottom() + 2, place.width(), line);
    const qreal right = bar(m_weeks.size() - 1).right();
    painter.drawText(below, Qt::AlignLeft, dayOf(m_weeks.front()));
    painter.drawText(QRectF(below.left(), below.top(), right - below.left(), line), Qt::AlignRight,
                     tr("this week"));
    const QRectF above(place.left(), 0, place.width(), line);
    painter.drawText(
        above, Qt::AlignLeft,
        hasRework() ? tr("Hours per week, at most %1; hatched: done again").arg(hoursText(most()))
                    : tr("Hours per week, at most %1").arg(hoursText(most())));
}

void WeekBars::paintEvent(QPaintEvent *)
{
    if (m_weeks.empty())
        return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    for (std::size_t i = 0; i < m_weeks.size(); ++i)
        paintBar(painter, i);
    paintAxis(painter);
}

bool WeekBars::event(QEvent *event)
{
    if (event->type() != QEvent::ToolTip)
        return QWidget::event(event);
    const auto *help = static_cast<QHelpEvent *>(event);
    for (std::size_t i = 0; i < m_weeks.size(); ++i) {
        const QRectF place = bar(i);
        if (help->pos().x() >= place.left() - 2 && help->pos().x() < place.right() + 2) {
            QToolTip::showText(help->globalPos(), words(m_weeks[i]), this);
            return true;
        }
    }
    QToolTip::hideText();
    return true;
}

} // namespace lastrivet::ui
