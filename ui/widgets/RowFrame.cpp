// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/RowFrame.h"

#include "ui/shell/Colours.h"

#include <QPainter>
#include <QStyleOptionViewItem>

namespace lastrivet::ui {

void paintRowFrame(QPainter &painter, const QStyleOptionViewItem &option, const Colours &colours)
{
    if (option.state.testFlag(QStyle::State_Selected)) {
        painter.fillRect(option.rect, colours.selection);
        painter.fillRect(QRect(option.rect.topLeft(), QSize(3, option.rect.height())),
                         colours.accent);
    }
    painter.setPen(colours.line);
    painter.drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
    if (option.state.testFlag(QStyle::State_HasFocus)) {
        painter.setPen(QPen(colours.accent, 2));
        painter.drawRect(option.rect.adjusted(1, 1, -1, -1));
    }
}

} // namespace lastrivet::ui
