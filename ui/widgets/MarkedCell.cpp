// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/MarkedCell.h"

#include "ui/widgets/TallRows.h"

#include <QApplication>
#include <QPainter>

#include <utility>

namespace lastrivet::ui {

namespace {

constexpr int mark = 16;
constexpr int margin = 6;
/// The lines of one row stand closer to each other than to those of the next.
constexpr int betweenRows = 8;

} // namespace

void MarkedCell::paint(QPainter *painter, const QStyleOptionViewItem &option,
                       const QModelIndex &index) const
{
    QStyleOptionViewItem cell = option;
    initStyleOption(&cell, index);
    if (isFigure(cell)) {
        paintFigure(*painter, cell);
        return;
    }
    if (cell.icon.isNull()) {
        QStyledItemDelegate::paint(painter, option, index);
        return;
    }
    // A style sheet with padding draws the icon of a cell twice.
    const QIcon icon = std::exchange(cell.icon, QIcon());
    const QString words = std::exchange(cell.text, QString());
    cell.features &= ~QStyleOptionViewItem::HasDecoration;
    const QStyle *style = cell.widget ? cell.widget->style() : QApplication::style();
    style->drawControl(QStyle::CE_ItemViewItem, &cell, painter, cell.widget);
    const QRect room = cell.rect.adjusted(margin, 0, -margin, 0);
    icon.paint(painter, QRect(room.left(), room.center().y() - mark / 2, mark, mark));
    const QRect place = room.adjusted(mark + margin, 0, 0, 0);
    painter->save();
    painter->setFont(cell.font);
    painter->setPen(cell.palette.color(QPalette::Text));
    painter->drawText(place, int(Qt::AlignLeft | Qt::AlignVCenter),
                      cell.fontMetrics.elidedText(words, Qt::ElideRight, place.width()));
    painter->restore();
}

QSize MarkedCell::sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    QSize size = QStyledItemDelegate::sizeHint(option, index);
    QStyleOptionViewItem cell = option;
    initStyleOption(&cell, index);
    if (isFigure(cell) || !cell.icon.isNull())
        size.rwidth() += margin;
    if (option.features & QStyleOptionViewItem::WrapText)
        size.rheight() += betweenRows;
    return size;
}

} // namespace lastrivet::ui
