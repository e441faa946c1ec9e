// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/OneRow.h"

#include <QAbstractItemView>
#include <QItemSelectionModel>

namespace lastrivet::ui {

void chooseOneRow(QAbstractItemView &view, const QModelIndex &row)
{
    QItemSelectionModel::SelectionFlags how = QItemSelectionModel::ClearAndSelect;
    if (view.selectionBehavior() == QAbstractItemView::SelectRows)
        how |= QItemSelectionModel::Rows;
    view.selectionModel()->setCurrentIndex(row, how);
}

} // namespace lastrivet::ui
