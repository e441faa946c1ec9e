// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stores/AmountBars.h"

#include "ui/convert/MoneyText.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Theme.h"

#include <QHelpEvent>
#include <QPainter>
#include <QStringList>
#include <QToolTip>

#include <algorithm>

namespace lastrivet::ui {

namespace {

constexpr int barHeight = 6;
constexpr qreal widestColumn = 28;

/// Only for drawing: figures are never added up this way.
qreal drawnSize(const NamedAmount &amount)
{
    return qreal(std::max<std::int64_t>(amount.amount.minor_units, 0));
}

qreal greatest(const std::vector<NamedAmount> &amounts)
{
    qreal most = 1;
    for (const NamedAmount &amount : amounts)
        most = std::max(most, drawnSize(amount));
    return most;
}

QString told(const std::vector<NamedAmount> &amounts)
{
    QStringList lines;
    for (const NamedAmount &amount : amounts) {
        if (amount.amount.minor_units != 0)
            lines << withColon(amount.name, moneyText(amount.amount));
    }
    return lines.join(QStringLiteral("; "));
}

} // namespace

AmountBars::AmountBars(const Theme &theme, const QString &name, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
{
    setAccessibleName(name);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void AmountBars::show(std::vector<NamedAmount> amounts)
{
    m_amounts = std::move(amounts);
    setAccessibleDescription(told(m_amounts));
    setVisible(!m_amounts.empty());
    updateGeometry();
    update();
}

int AmountBars::rowHeight() const
{
    return fontMetrics().height() + barHeight + 2 * Theme::space;
}

QSize AmountBars::sizeHint() const
{
    return {260, int(m_amounts.size()) * rowHeight()};
}

void AmountBars::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    const Colours &colours = m_theme.colours();
    const qreal most = greatest(m_amounts);
    for (std::size_t i = 0; i < m_amounts.size(); ++i) {
        const NamedAmount &amount = m_amounts[i];
        const QRect row(0, int(i) * rowHeight(), width(), fontMetrics().height());
        const QString figure = figureText(amount.amount);
        const int room = row.width() - fontMetrics().horizontalAdvance(figure) - 8;
        painter.setPen(colours.text);
        painter.drawText(row, Qt::AlignRight | Qt::AlignVCenter, figure);
        painter.drawText(row, Qt::AlignLeft | Qt::AlignVCenter,
                         fontMetrics().elidedText(amount.name, Qt::ElideRight, room));
        painter.fillRect(
            QRectF(0, row.bottom() + 3, qreal(width()) * drawnSize(amount) / most, barHeight),
            colours.closed);
    }
}

AmountColumns::AmountColumns(const Theme &theme, const QString &name, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
{
    setAccessibleName(name);
    setMinimumSize(200, 96);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void AmountColumns::show(std::vector<NamedAmount> amounts)
{
    m_amounts = std::move(amounts);
    setAccessibleDescription(told(m_amounts));
    setVisible(!m_amounts.empty());
    update();
}

QSize AmountColumns::sizeHint() const
{
    return {260, 7 * fontMetrics().height()};
}

qreal AmountColumns::mostShown() const
{
    return greatest(m_amounts);
}

QRectF AmountColumns::column(std::size_t place) const
{
    const qreal line = fontMetrics().height();
    const QRectF plot = QRectF(rect()).adjusted(0, line + 2, 0, -line - 2);
    const qreal step =
        std::min(plot.width() / qreal(std::max<std::size_t>(m_amounts.size(), 1)), widestColumn);
    const qreal height = plot.height() * drawnSize(m_amounts[place]) / mostShown();
    return {step * qreal(place), plot.bottom() - height, std::max(step - 2, 1.0), height};
}

void AmountColumns::paintEvent(QPaintEvent *)
{
    if (m_amounts.empty())
        return;
    QPainter painter(this);
    const Colours &colours = m_theme.colours();
    for (std::size_t i = 0; i < m_amounts.size(); ++i)
        painter.fillRect(column(i), colours.closed);
    const qreal line = fontMetrics().height();
    const qreal foot = height() - line - 2;
    painter.setPen(colours.line);
    painter.drawLine(QPointF(0, foot), QPointF(width(), foot));
    painter.setPen(colours.quietText);
    const QRectF below(0, foot + 2, width(), line);
    const qreal last = column(m_amounts.size() - 1).right();
    painter.drawText(below, Qt::AlignLeft, m_amounts.front().name);
    const qreal names =
        fontMetrics().horizontalAdvance(m_amounts.front().name + m_amounts.back().name);
    if (m_amounts.size() > 1 && last > names + 12)
        painter.drawText(QRectF(0, below.top(), last, line), Qt::AlignRight, m_amounts.back().name);
    const auto most = std::ranges::max_element(
        m_amounts, {}, [](const NamedAmount &amount) { return amount.amount.minor_units; });
    painter.drawText(QRectF(0, 0, width(), line), Qt::AlignLeft,
                     tr("most in %1: %2").arg(most->name, moneyText(most->amount)));
}

bool AmountColumns::event(QEvent *event)
{
    if (event->type() != QEvent::ToolTip)
        return QWidget::event(event);
    const auto *help = static_cast<QHelpEvent *>(event);
    for (std::size_t i = 0; i < m_amounts.size(); ++i) {
        const QRectF place = column(i);
        if (help->pos().x() >= place.left() && help->pos().x() < place.right() + 2) {
            QToolTip::showText(help->globalPos(),
                               withColon(m_amounts[i].name, moneyText(m_amounts[i].amount)), this);
            return true;
        }
    }
    QToolTip::hideText();
    return true;
}

} // namespace lastrivet::ui
