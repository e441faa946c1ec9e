// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/PlainTable.h"

#include "ui/widgets/Density.h"
#include "ui/widgets/MarkedCell.h"

#include <QHeaderView>

#include <algorithm>

namespace lastrivet::ui {

PlainTable::PlainTable(const QString &name, QWidget *parent)
    : QTableView(parent)
{
    setAccessibleName(name);
    setItemDelegate(new MarkedCell(this));
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setShowGrid(false);
    setTabKeyNavigation(false);
    setWordWrap(false);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    verticalHeader()->hide();
    verticalHeader()->setDefaultSectionSize(ui::rowHeight());
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
}

void PlainTable::setWideColumn(int column)
{
    m_wideColumn = column;
    horizontalHeader()->setSectionResizeMode(column, QHeaderView::Stretch);
}

void PlainTable::fitColumns(int widest)
{
    for (int column = 0; model() && column < model()->columnCount(); ++column) {
        if (column == m_wideColumn)
            continue;
        resizeColumnToContents(column);
        setColumnWidth(column, std::min(columnWidth(column) + 8, widest));
    }
}

void PlainTable::currentChanged(const QModelIndex &current, const QModelIndex &previous)
{
    QTableView::currentChanged(current, previous);
    if (current.isValid() && current.row() != previous.row())
        Q_EMIT rowChosen(current.row());
}

} // namespace lastrivet::ui
