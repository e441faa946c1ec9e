// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/PlainStyle.h"

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
}

} // namespace lastrivet::ui
