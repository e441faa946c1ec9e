// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/SectionList.h"

#include "ui/parts/PartSection.h"
#include "ui/parts/SectionModel.h"

#include <QHeaderView>
#include <QTreeView>

#include <algorithm>
#include <vector>

// How wide the columns of the list are, and which are shown.
namespace lastrivet::ui {

namespace {

/// Words give way down to this, or to the head over them.
constexpr int narrowest = 96;
constexpr int leeway = 8;

} // namespace

/// The words of a log entry stand last, those of everything else first.
int SectionList::wideColumn() const
{
    return m_section->type == RecordType::WorkSession ? m_model->columnCount() - 1 : 0;
}

/// One column takes the room that the others leave; none of them takes much as long as it lacks
/// any.
void SectionList::fitColumns()
{
    QHeaderView *header = m_view->header();
    constexpr int widest = 184;
    m_wanted.assign(std::size_t(m_model->columnCount()), {});
    for (int column = 0; column < m_model->columnCount(); ++column) {
        header->setSectionResizeMode(column, QHeaderView::Interactive);
        m_view->setColumnHidden(column, isUnused(column));
        if (m_view->isColumnHidden(column))
            continue;
        m_view->resizeColumnToContents(column);
        const int wanted = header->sectionSize(column) + leeway;
        if (column == wideColumn()) {
            m_wideWanted = wanted;
            continue;
        }
        ColumnWish &wish = m_wanted[std::size_t(column)];
        wish.wanted = wanted;
        wish.width = std::min(wanted, widest);
        wish.least = leastOf(column);
        give(column, wish.width);
    }
    fitWideColumn();
}

/// Without the end of a number nobody may read it; words can go without theirs.
int SectionList::leastOf(int column) const
{
    constexpr int looked = 60;
    if (m_section->columns[std::size_t(column)].isNumber)
        return m_view->header()->sectionSize(column);
    const auto isDigit = [](QChar letter) { return letter.isDigit(); };
    int least = narrowest;
    for (int row = 0; row < std::min(looked, m_model->rowCount()); ++row) {
        const QModelIndex index = m_model->index(row, column);
        const QString text = index.data().toString();
        if (std::any_of(text.begin(), text.end(), isDigit))
            least = std::max(least, m_view->sizeHintForIndex(index).width() + leeway);
    }
    return least;
}

void SectionList::give(int column, int width)
{
    m_view->header()->resizeSection(column, width);
    m_wanted[std::size_t(column)].given = m_view->header()->sectionSize(column);
}

/// What somebody made wider or narrower stays so.
bool SectionList::isOurs(int column) const
{
    return column != wideColumn() && !m_view->isColumnHidden(column) &&
           m_view->header()->sectionSize(column) == m_wanted[std::size_t(column)].given;
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
        const bool isLeftOut = m_view->isColumnHidden(column) && !isSpared(column);
        if (isLeftOut != isUnused(column)) {
            fitColumns();
            return;
        }
    }
}

bool SectionList::isSpared(int column) const
{
    return std::size_t(column) < m_wanted.size() && m_wanted[std::size_t(column)].isSpared;
}

/// Where the others leave too little, words give way, then columns that the form tells as well,
/// then the names; only where nobody could tell them apart any more goes on beyond the edge. Short
/// names ask for no more than they need, and what they leave goes to words that are cut.
void SectionList::fitWideColumn()
{
    constexpr int least = 170;
    constexpr int tightest = 148;
    constexpr int bearable = 112;
    constexpr int readable = 184;
    const int columns = m_model->columnCount();
    if (columns == 0 || m_wanted.size() != std::size_t(columns))
        return;
    QHeaderView *header = m_view->header();
    int room = m_view->viewport()->width();
    for (int column = 0; column < columns; ++column) {
        if (column == wideColumn())
            continue;
        if (isSpared(column))
            spare(column, false);
        if (isOurs(column))
            give(column, m_wanted[std::size_t(column)].width);
        room -= header->sectionSize(column);
    }
    const int needed = std::clamp(m_wideWanted, least / 2, readable);
    const int enough = std::min(needed, tightest);
    room += spareColumns(enough - room);
    room += takeFromWords(std::min(least, needed) - room);
    room -= giveRest(room - m_wideWanted);
    header->resizeSection(wideColumn(), room < std::min(needed, bearable) ? needed : room);
}

void SectionList::spare(int column, bool isSpared)
{
    // The view's own way lays everything out at once, and would come back here half way.
    m_view->header()->setSectionHidden(column, isSpared);
    m_wanted[std::size_t(column)].isSpared = isSpared;
}

/// How much of its width the words of the column can do without.
int SectionList::yieldOf(int column) const
{
    if (!isOurs(column))
        return 0;
    const QHeaderView *header = m_view->header();
    return std::max(0, header->sectionSize(column) - std::max(m_wanted[std::size_t(column)].least,
                                                              header->sectionSizeHint(column)));
}

/// As far as words that give way are not enough, in the order of the section; how much was won.
int SectionList::spareColumns(int lacking)
{
    std::vector<int> spares;
    for (int column = 0; column < m_model->columnCount(); ++column) {
        lacking -= yieldOf(column);
        if (m_section->columns[std::size_t(column)].spare > 0 && !m_view->isColumnHidden(column))
            spares.push_back(column);
    }
    std::ranges::sort(spares, {},
                      [this](int column) { return m_section->columns[std::size_t(column)].spare; });
    int won = 0;
    for (const int column : spares) {
        if (lacking <= 0)
            break;
        const int width = m_view->header()->sectionSize(column);
        lacking -= width - yieldOf(column);
        spare(column, true);
        won += width;
    }
    return won;
}

/// The last ones first; how much was won.
int SectionList::takeFromWords(int lacking)
{
    int won = 0;
    for (int column = m_model->columnCount(); column-- > 0 && won < lacking;) {
        const int less = std::min(yieldOf(column), lacking - won);
        if (less <= 0)
            continue;
        give(column, m_view->header()->sectionSize(column) - less);
        won += less;
    }
    return won;
}

/// To columns that ask for more than they got, the first ones first; how much they took.
int SectionList::giveRest(int rest)
{
    int given = 0;
    for (int column = 0; column < m_model->columnCount() && given < rest; ++column) {
        const ColumnWish &wish = m_wanted[std::size_t(column)];
        const int size = m_view->header()->sectionSize(column);
        const int more = isOurs(column) ? std::min(wish.wanted - size, rest - given) : 0;
        if (more <= 0)
            continue;
        give(column, size + more);
        given += more;
    }
    return given;
}

} // namespace lastrivet::ui
