// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/daylog/YearStrip.h"

#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"

#include <QKeyEvent>
#include <QLocale>
#include <QMouseEvent>
#include <QPainter>

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
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    recordsChanged();
    m_cursor = m_last;
    nameIt();
}

void YearStrip::recordsChanged()
{
    m_last = toDate(m_session.today()).addYears(-m_yearsBack);
    m_first = m_last.addYears(-1).addDays(1);
    m_minutes.clear();
    bool isAny = false;
    for (const WorkSession &session : m_session.records()->work_sessions) {
        if (session.withdrawn_on || !session.began)
            continue;
        isAny = true;
        const QDate day = toDate(*session.began);
        if (day >= m_first && day <= m_last)
            m_minutes[day] += session.minutes ? session.minutes->count() : 0;
    }
    m_cursor = std::clamp(m_cursor.isValid() ? m_cursor : m_last, m_first, m_last);
    setVisible(isAny);
    nameIt();
    update();
}

void YearStrip::nameIt()
{
    const QString year = tr("Work on %n days of the year", nullptr, int(m_minutes.size()));
    setAccessibleName(year);
    setAccessibleDescription(wordsFor(m_cursor));
}

void YearStrip::turn(int years)
{
    m_yearsBack = std::max(0, m_yearsBack - years);
    m_cursor = {};
    recordsChanged();
    Q_EMIT turned();
}

void YearStrip::moveTo(QDate day)
{
    m_cursor = std::clamp(day, m_first, m_last);
    nameIt();
    update();
}

/// Whose hours stand under the bars: the day at the mouse, else the one at the keyboard.
QDate YearStrip::toldDay() const
{
    if (m_hovered.isValid())
        return m_hovered;
    return hasFocus() ? m_cursor : QDate();
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
    paintMonths(painter);
    if (toldDay().isValid())
        paintTold(painter);
    if (hasFocus()) {
        painter.setPen(QPen(colours.accent, 2));
        painter.drawRect(rect().adjusted(1, 1, -1, -1));
    }
}

void YearStrip::paintMonths(QPainter &painter)
{
    const Colours &colours = m_session.theme().colours();
    painter.setPen(colours.quietText);
    for (QDate month(m_first.year(), m_first.month(), 1); month <= m_last;
         month = month.addMonths(1)) {
        if (month < m_first)
            continue;
        const int x = xOf(month);
        const bool isYear = month.month() == 1;
        const QString name = QLocale().standaloneMonthName(month.month(), QLocale::ShortFormat);
        painter.fillRect(QRect(x, barHeight, 1, 5), colours.border);
        painter.drawText(QRect(x + 4, barHeight + 2, 120, fontMetrics().height()),
                         Qt::AlignLeft | Qt::AlignVCenter,
                         isYear ? tr("%1 %2", "month, year").arg(name).arg(month.year()) : name);
    }
}

/// The day's bar marked, and its words in place of the months around it.
void YearStrip::paintTold(QPainter &painter)
{
    const Colours &colours = m_session.theme().colours();
    const int x = xOf(toldDay());
    const int wide = std::max(4, xOf(toldDay().addDays(1)) - x);
    painter.setPen(QPen(colours.text, 1));
    painter.drawRect(QRect(x - 1, 2, wide + 1, barHeight - 2));
    const QString words = wordsFor(toldDay());
    const int length = fontMetrics().horizontalAdvance(words) + 12;
    const int left = std::clamp(x - length / 2, 0, std::max(0, width() - length));
    const QRect place(left, barHeight + 2, length, fontMetrics().height() + 1);
    painter.fillRect(place, colours.raised);
    painter.drawText(place, Qt::AlignCenter, words);
}

void YearStrip::mousePressEvent(QMouseEvent *event)
{
    moveTo(dayAt(event->pos().x()));
    Q_EMIT dayChosen(m_cursor);
}

void YearStrip::mouseMoveEvent(QMouseEvent *event)
{
    m_hovered = dayAt(event->pos().x());
    update();
}

void YearStrip::leaveEvent(QEvent *)
{
    m_hovered = {};
    update();
}

void YearStrip::focusInEvent(QFocusEvent *event)
{
    QWidget::focusInEvent(event);
    update();
}

void YearStrip::focusOutEvent(QFocusEvent *event)
{
    QWidget::focusOutEvent(event);
    update();
}

/// Arrows by days and weeks, the page keys by years, Enter goes to the day.
void YearStrip::keyPressEvent(QKeyEvent *event)
{
    switch (event->key()) {
    case Qt::Key_Left:
        return moveTo(m_cursor.addDays(-1));
    case Qt::Key_Right:
        return moveTo(m_cursor.addDays(1));
    case Qt::Key_Up:
        return moveTo(m_cursor.addDays(-7));
    case Qt::Key_Down:
        return moveTo(m_cursor.addDays(7));
    case Qt::Key_Home:
        return moveTo(m_first);
    case Qt::Key_End:
        return moveTo(m_last);
    case Qt::Key_PageUp:
        return turn(-1);
    case Qt::Key_PageDown:
        return turn(1);
    case Qt::Key_Return:
    case Qt::Key_Enter:
        Q_EMIT dayChosen(m_cursor);
        return;
    default:
        QWidget::keyPressEvent(event);
    }
}

} // namespace lastrivet::ui
