// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/RailButton.h"

#include "ui/shell/Theme.h"
#include "ui/widgets/SvgIcon.h"

#include <QKeyEvent>
#include <QPainter>

namespace lastrivet::ui {

namespace {

constexpr int pictureSize = 24;
constexpr int barWidth = 4;
constexpr int leftOfIcon = 14;
constexpr int leftOfWord = leftOfIcon + pictureSize + 10;
constexpr int buttonHeight = 44;

} // namespace

RailButton::RailButton(const Theme &theme, const QString &icon, const QString &words,
                       QWidget *parent)
    : QAbstractButton(parent)
    , m_theme(theme)
    , m_icon(icon)
{
    setText(words);
    setAccessibleName(words);
    setCheckable(true);
    setFocusPolicy(Qt::TabFocus);
    setAttribute(Qt::WA_Hover);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
}

void RailButton::setNarrow(bool isNarrow)
{
    m_isNarrow = isNarrow;
    updateGeometry();
    update();
}

QSize RailButton::sizeHint() const
{
    if (m_isNarrow)
        return {leftOfIcon + pictureSize + leftOfIcon, buttonHeight};
    QFont bold = font();
    bold.setBold(true);
    return {leftOfWord + QFontMetrics(bold).horizontalAdvance(text()) + 20, buttonHeight};
}

QSize RailButton::minimumSizeHint() const
{
    return {sizeHint().width(), 30};
}

void RailButton::keyPressEvent(QKeyEvent *event)
{
    switch (event->key()) {
    case Qt::Key_Up:
    case Qt::Key_Down:
    case Qt::Key_Right:
    case Qt::Key_Return:
    case Qt::Key_Enter:
        // For the rail, which goes from page to page by it.
        event->ignore();
        break;
    default:
        QAbstractButton::keyPressEvent(event);
    }
}

void RailButton::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    const Colours &colours = m_theme.colours();
    if (isChecked() || underMouse())
        painter.fillRect(rect(), isChecked() ? colours.window : colours.surface);
    if (isChecked())
        painter.fillRect(0, 0, barWidth, height(), colours.accent);
    const QRectF icon(leftOfIcon, (height() - pictureSize) / 2.0, pictureSize, pictureSize);
    paintSvg(painter, icon, m_icon, colours.text);
    if (!m_isNarrow) {
        QFont words = font();
        words.setBold(isChecked());
        painter.setFont(words);
        painter.setPen(colours.text);
        painter.drawText(rect().adjusted(leftOfWord, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter,
                         text());
    }
    if (hasFocus()) {
        painter.setPen(QPen(colours.accent, 2));
        painter.drawRect(rect().adjusted(1, 1, -1, -1));
    }
}

} // namespace lastrivet::ui
