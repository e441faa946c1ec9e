// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/daylog/YearStrip.h"

#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"

#include <QHelpEvent>
#include <QLocale>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>

#include <algorithm>

namespace lastrivet::ui {

namespace {

constexpr int barHeight = 26;
/// A bar of full height; longer days are no higher.
constexpr qint64 fullDay = 8 * 60;

} // namespace

YearStrip::YearStrip(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    recordsChanged();
}

void YearStrip::recordsChanged()
{
    m_last = toDate(m_session.today());
    m_first = m_last.addYears(-1).addDays(1);
    m_minutes.clear();
    qint64 days = 0;
    for (const WorkSession &session : m_session.records()->work_sessions) {
        if (session.withdrawn_on || !session.began)
            continue;
        const QDate day = toDate(*session.began);
        if (day < m_first || day > m_last)
            continue;
        days += m_minutes.contains(day) ? 0 : 1;
        m_minutes[day] += session.minutes ? session.minutes->count() : 0;
    }
    setAccessibleName(tr("Work on %n days of the last year", nullptr, int(days)));
    setVisible(days > 0);
    update();
}

QSize YearStrip::sizeHint() const
{
    return {400, barHeight + fontMetrics().height() + 4};
}

int YearStrip::xOf(QDate day) const
{
    const qint64 days = m_first.daysTo(m_last) + 1;
    return int(m_first.daysTo(day) * width() / std::max<qint64>(days, 1));
}

QDate YearStrip::dayAt(int x) const
{
    const qint64 days = m_first.daysTo(m_last) + 1;
    return m_first.addDays(std::clamp<qint64>(x * days / std::max(width(), 1), 0, days - 1));
}

QString YearStrip::wordsFor(QDate day) const
{
    const QString name = QLocale().toString(day, QLocale::LongFormat);
    if (!m_minutes.contains(day))
        return tr("%1: nothing logged").arg(name);
    return tr("%1: %2").arg(name, hoursText(Minutes{m_minutes.value(day)}));
}

void YearStrip::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    const Colours &colours = m_session.theme().colours();
    painter.fillRect(QRect(0, barHeight, width(), 1), colours.line);
    for (auto day = m_minutes.cbegin(); day != m_minutes.cend(); ++day) {
        const int x = xOf(day.key());
        const int wide = std::max(2, xOf(day.key().addDays(1)) - x - 1);
        const int high = 3 + int(std::min(day.value(), fullDay) * (barHeight - 3) / fullDay);
        painter.fillRect(QRect(x, barHeight - high, wide, high), colours.accent);
    }
    painter.setPen(colours.quietText);
    for (QDate month(m_first.year(), m_first.month(), 1); month <= m_last;
         month = month.addMonths(1)) {
        if (month < m_first)
            continue;
        const int x = xOf(month);
        painter.fillRect(QRect(x, barHeight, 1, 5), colours.border);
        painter.drawText(QRect(x + 4, barHeight + 2, 80, fontMetrics().height()),
                         Qt::AlignLeft | Qt::AlignVCenter,
                         QLocale().standaloneMonthName(month.month(), QLocale::ShortFormat));
    }
}

void YearStrip::mousePressEvent(QMouseEvent *event)
{
    Q_EMIT dayChosen(dayAt(event->pos().x()));
}

bool YearStrip::event(QEvent *event)
{
    if (event->type() == QEvent::ToolTip) {
        const auto *help = static_cast<QHelpEvent *>(event);
        QToolTip::showText(help->globalPos(), wordsFor(dayAt(help->pos().x())), this);
        return true;
    }
    return QWidget::event(event);
}

} // namespace lastrivet::ui
