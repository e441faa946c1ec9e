// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStyledItemDelegate>

namespace lastrivet::ui {

/// Whether the cell is one number or the like at the right, without anything beside it.
bool isFigure(const QStyleOptionViewItem &cell);

/// Whether a person has typed in the editor of a cell what is not handed in yet: what comes anew
/// from the records meanwhile does not take its place.
bool isTypedIn(const QWidget &editor);

/// Draws such a cell as far from the words of the next column as its head is.
void paintFigure(QPainter &painter, QStyleOptionViewItem cell);

/// Rows as high as our lists have them, drawn by the style.
class TallRows final : public QStyledItemDelegate {
    Q_OBJECT

public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter *painter, const QStyleOptionViewItem &option,
               const QModelIndex &index) const override;
    QSize sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const override;
    void setEditorData(QWidget *editor, const QModelIndex &index) const override;
};

} // namespace lastrivet::ui
