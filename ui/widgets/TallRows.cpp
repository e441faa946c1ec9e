// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/TallRows.h"

#include "ui/widgets/Density.h"

#include <QApplication>
#include <QLineEdit>
#include <QPainter>

#include <utility>

namespace lastrivet::ui {

namespace {

constexpr int leftOfFigure = 3;
constexpr int rightOfFigure = 8;

} // namespace

bool isFigure(const QStyleOptionViewItem &cell)
{
    return cell.displayAlignment.testFlag(Qt::AlignRight) && !cell.text.isEmpty() &&
           cell.icon.isNull() && !(cell.features & QStyleOptionViewItem::HasCheckIndicator);
}

bool isTypedIn(const QWidget &editor)
{
    const auto *line = qobject_cast<const QLineEdit *>(&editor);
    return line && line->isModified();
}

void paintFigure(QPainter &painter, QStyleOptionViewItem cell)
{
    const QString words = std::exchange(cell.text, QString());
    const QStyle *style = cell.widget ? cell.widget->style() : QApplication::style();
    style->drawControl(QStyle::CE_ItemViewItem, &cell, &painter, cell.widget);
    const QRect place = cell.rect.adjusted(leftOfFigure, 0, -rightOfFigure, 0);
    painter.save();
    painter.setFont(cell.font);
    painter.setPen(cell.palette.color(QPalette::Text));
    painter.drawText(place, int(cell.displayAlignment),
                     cell.fontMetrics.elidedText(words, cell.textElideMode, place.width()));
    painter.restore();
}

void TallRows::paint(QPainter *painter, const QStyleOptionViewItem &option,
                     const QModelIndex &index) const
{
    QStyleOptionViewItem cell = option;
    initStyleOption(&cell, index);
    if (isFigure(cell))
        paintFigure(*painter, cell);
    else
        QStyledItemDelegate::paint(painter, option, index);
}

QSize TallRows::sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    QStyleOptionViewItem cell = option;
    initStyleOption(&cell, index);
    QSize size = QStyledItemDelegate::sizeHint(option, index).expandedTo({0, rowHeight()});
    if (isFigure(cell))
        size.rwidth() += rightOfFigure;
    return size;
}

void TallRows::setEditorData(QWidget *editor, const QModelIndex &index) const
{
    if (!isTypedIn(*editor))
        QStyledItemDelegate::setEditorData(editor, index);
}

} // namespace lastrivet::ui
