// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/SectionList.h"

#include "ui/parts/PartSection.h"
#include "ui/parts/SectionModel.h"

#include <QHeaderView>
#include <QTreeView>

#include <algorithm>

// How wide the columns of the list are, and which are shown.
namespace lastrivet::ui {

/// The words of a log entry stand last, those of everything else first.
int SectionList::wideColumn() const
{
    return m_section->type == RecordType::WorkSession ? m_model->columnCount() - 1 : 0;
}

/// One column takes the room that the others leave; none of them takes much.
void SectionList::fitColumns()
{
    QHeaderView *header = m_view->header();
    constexpr int widest = 184;
    constexpr int leeway = 8;
    for (int column = 0; column < m_model->columnCount(); ++column) {
        header->setSectionResizeMode(column, QHeaderView::Interactive);
        m_view->setColumnHidden(column, isUnused(column));
        if (m_view->isColumnHidden(column))
            continue;
        m_view->resizeColumnToContents(column);
        const int wanted = header->sectionSize(column) + leeway;
        if (column == wideColumn())
            m_wideWanted = wanted;
        else
            header->resizeSection(column, std::min(wanted, widest));
    }
    fitWideColumn();
}

bool SectionList::isUnused(int column) const
{
    const SectionColumn &known = m_section->columns[std::size_t(column)];
    if (known.write || known.tick || column == wideColumn())
        return false;
    for (int row = 0; row < m_model->rowCount(); ++row) {
        if (!m_model->index(row, column).data().toString().isEmpty())
            return false;
    }
    return m_model->rowCount() > 0;
}

void SectionList::followUse()
{
    for (int column = 0; column < m_model->columnCount(); ++column) {
        if (m_view->isColumnHidden(column) != isUnused(column)) {
            fitColumns();
            return;
        }
    }
}

/// Where the others leave too little, they go on beyond the edge.
void SectionList::fitWideColumn()
{
    constexpr int least = 170;
    constexpr int readable = 220;
    QHeaderView *header = m_view->header();
    int others = 0;
    for (int column = 0; column < m_model->columnCount(); ++column)
        others += column == wideColumn() ? 0 : header->sectionSize(column);
    if (m_model->columnCount() == 0)
        return;
    const int room = m_view->viewport()->width() - others;
    const int needed = std::clamp(m_wideWanted, least / 2, readable);
    header->resizeSection(wideColumn(), room < least ? std::max(room, needed) : room);
}

} // namespace lastrivet::ui
