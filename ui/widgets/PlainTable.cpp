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

void PlainTable::setYielding(std::vector<int> columns, int least)
{
    m_yielding = std::move(columns);
    m_leastYielding = least;
}

void PlainTable::wrapLines()
{
    setWordWrap(true);
    verticalHeader()->setMinimumSectionSize(ui::rowHeight());
    connect(horizontalHeader(), &QHeaderView::sectionResized, this,
            &QTableView::resizeRowsToContents, Qt::QueuedConnection);
}

void PlainTable::fitColumns(int widest)
{
    constexpr int leeway = 4;
    // Heads are measured as they are going to look, also before the table is shown.
    horizontalHeader()->ensurePolished();
    for (const int column : m_sparable)
        setColumnHidden(column, false);
    m_widths.assign(model() ? std::size_t(model()->columnCount()) : 0, {});
    m_wideWanted = m_wideColumn < 0 ? 0 : sizeHintForColumn(m_wideColumn) + leeway;
    for (int column = 0; model() && column < model()->columnCount(); ++column) {
        if (column == m_wideColumn)
            continue;
        resizeColumnToContents(column);
        const int wanted = columnWidth(column) + leeway;
        // A head is never cut.
        const int most = std::max(widest, horizontalHeader()->sectionSizeHint(column));
        setColumnWidth(column, std::min(wanted, most));
        m_widths[std::size_t(column)] = {columnWidth(column), wanted, columnWidth(column)};
    }
    makeRoom();
    if (wordWrap())
        resizeRowsToContents();
}

void PlainTable::makeRoom()
{
    if (m_widths.empty())
        return;
    int room = viewport()->width();
    for (const Width &width : m_widths)
        room -= width.usual;
    for (const int column : m_sparable) {
        const bool isHidden = room < m_leastWide;
        room += isHidden ? m_widths[std::size_t(column)].usual : 0;
        setColumnHidden(column, isHidden);
    }
    if (m_wideColumn < 0)
        return;
    room += takeFromYielding(m_leastWide - room);
    const bool isRoom = room >= m_leastWide;
    horizontalHeader()->setSectionResizeMode(m_wideColumn, isRoom ? QHeaderView::Stretch
                                                                  : QHeaderView::Interactive);
    if (!isRoom)
        setColumnWidth(m_wideColumn, m_leastWide);
    giveRest(room - std::max(m_leastWide, m_wideWanted));
}

/// Returns how much width was gained. A head is never cut.
int PlainTable::takeFromYielding(int lacking)
{
    int won = 0;
    for (const int column : m_yielding) {
        Width &width = m_widths[std::size_t(column)];
        const int least = std::max(m_leastYielding, horizontalHeader()->sectionSizeHint(column));
        const int most = isColumnHidden(column) ? 0 : std::max(0, width.usual - least);
        width.taken = std::clamp(lacking - won, 0, most);
        won += width.taken;
    }
    return won;
}

/// A width that somebody chose stays.
void PlainTable::giveRest(int rest)
{
    for (int column = 0; column < int(m_widths.size()); ++column) {
        Width &width = m_widths[std::size_t(column)];
        if (column == m_wideColumn || isColumnHidden(column) || columnWidth(column) != width.given)
            continue;
        const int usual = width.usual - width.taken;
        const int wider = std::min(width.wanted, usual + std::max(0, rest));
        rest -= std::max(0, wider - usual);
        setColumnWidth(column, std::max(wider, usual));
        width.given = columnWidth(column);
    }
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
