// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/PlainTable.h"

#include "ui/widgets/Density.h"
#include "ui/widgets/MarkedCell.h"

#include <QHeaderView>

#include <algorithm>
#include <utility>

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

void PlainTable::setWideColumn(int column, int least)
{
    m_wideColumn = column;
    m_leastWide = least;
    horizontalHeader()->setSectionResizeMode(column, QHeaderView::Stretch);
}

void PlainTable::setSparable(std::vector<int> columns)
{
    m_sparable = std::move(columns);
}

void PlainTable::fitColumns(int widest)
{
    constexpr int leeway = 4;
    for (const int column : m_sparable)
        setColumnHidden(column, false);
    m_widths.assign(model() ? std::size_t(model()->columnCount()) : 0, 0);
    for (int column = 0; model() && column < model()->columnCount(); ++column) {
        if (column == m_wideColumn)
            continue;
        resizeColumnToContents(column);
        setColumnWidth(column, std::min(columnWidth(column) + leeway, widest));
        m_widths[std::size_t(column)] = columnWidth(column);
    }
    makeRoom();
}

void PlainTable::makeRoom()
{
    if (m_widths.empty())
        return;
    int room = viewport()->width();
    for (const int width : m_widths)
        room -= width;
    for (const int column : m_sparable) {
        const bool isHidden = room < m_leastWide;
        room += isHidden ? m_widths[std::size_t(column)] : 0;
        setColumnHidden(column, isHidden);
    }
    if (m_wideColumn < 0)
        return;
    const bool isRoom = room >= m_leastWide;
    horizontalHeader()->setSectionResizeMode(m_wideColumn, isRoom ? QHeaderView::Stretch
                                                                  : QHeaderView::Interactive);
    if (!isRoom)
        setColumnWidth(m_wideColumn, m_leastWide);
}

void PlainTable::resizeEvent(QResizeEvent *event)
{
    QTableView::resizeEvent(event);
    makeRoom();
}

void PlainTable::currentChanged(const QModelIndex &current, const QModelIndex &previous)
{
    QTableView::currentChanged(current, previous);
    if (current.isValid() && current.row() != previous.row())
        Q_EMIT rowChosen(current.row());
}

} // namespace lastrivet::ui
