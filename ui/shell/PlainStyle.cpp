// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/PlainStyle.h"

#include <QAbstractSpinBox>
#include <QEvent>
#include <QLabel>

namespace lastrivet::ui {

PlainStyle::PlainStyle()
    : QProxyStyle(QStringLiteral("Fusion"))
{
}

void PlainStyle::polish(QWidget *widget)
{
    QProxyStyle::polish(widget);
    auto *label = qobject_cast<QLabel *>(widget);
    if (label && label->textFormat() == Qt::AutoText)
        label->setTextFormat(Qt::PlainText);
    if (qobject_cast<QAbstractSpinBox *>(widget))
        widget->installEventFilter(this);
}

int PlainStyle::styleHint(StyleHint hint, const QStyleOption *option, const QWidget *widget,
                          QStyleHintReturn *returned) const
{
    if (hint == SH_ComboBox_AllowWheelScrolling || hint == SH_ItemView_ActivateItemOnSingleClick)
        return 0;
    return QProxyStyle::styleHint(hint, option, widget, returned);
}

/// Lets the wheel pass by boxes for numbers that nobody types in.
bool PlainStyle::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() != QEvent::Wheel || static_cast<QWidget *>(watched)->hasFocus())
        return QProxyStyle::eventFilter(watched, event);
    // What lies around it scrolls.
    event->ignore();
    return true;
}

} // namespace lastrivet::ui
