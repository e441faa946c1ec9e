// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/PathLine.h"

#include <QPainter>
#include <QStyle>
#include <QStyleOptionFrame>

namespace lastrivet::ui {

namespace {

/// What Qt's own line keeps free beside its letters.
constexpr int besideLetters = 2;

} // namespace

PathLine::PathLine(QWidget *parent)
    : QLineEdit(parent)
{
    connect(this, &QLineEdit::textChanged, this, &QWidget::setToolTip);
}

QRect PathLine::lettersPlace() const
{
    QStyleOptionFrame panel;
    initStyleOption(&panel);
    return style()
        ->subElementRect(QStyle::SE_LineEditContents, &panel, this)
        .marginsRemoved(textMargins())
        .adjusted(besideLetters, 0, -besideLetters, 0);
}

QString PathLine::shownPath() const
{
    return fontMetrics().elidedText(text(), Qt::ElideMiddle, lettersPlace().width());
}

void PathLine::paintEvent(QPaintEvent *event)
{
    const QString shown = shownPath();
    if (hasFocus() || shown == text()) {
        QLineEdit::paintEvent(event);
        return;
    }
    QPainter painter(this);
    QStyleOptionFrame panel;
    initStyleOption(&panel);
    style()->drawPrimitive(QStyle::PE_PanelLineEdit, &panel, &painter, this);
    painter.setPen(palette().color(QPalette::Text));
    painter.drawText(lettersPlace(), Qt::AlignLeft | Qt::AlignVCenter | Qt::TextSingleLine, shown);
}

} // namespace lastrivet::ui
