// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/workshop/FigureView.h"

#include "ui/widgets/Density.h"

#include <QHeaderView>
#include <QWheelEvent>

#include <algorithm>
#include <vector>

namespace lastrivet::ui {

FigureView::FigureView(QWidget *parent)
    : QTableView(parent)
    , m_model(new FigureModel(this))
{
    setModel(m_model);
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setShowGrid(false);
    setWordWrap(true);
    setTabKeyNavigation(false);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    verticalHeader()->hide();
    verticalHeader()->setMinimumSectionSize(ui::rowHeight());
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    horizontalHeader()->setMinimumSectionSize(24);
    horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    connect(selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &FigureView::chosenChanged);
}

void FigureView::setTable(FigureTable table)
{
    setAccessibleName(table.title);
    m_model->setTable(std::move(table));
    for (int column = 0; column < m_model->columnCount(); ++column)
        setColumnHidden(column, m_model->isColumnEmpty(column));
    fit();
    Q_EMIT chosenChanged();
}

QString FigureView::chosenSubject() const
{
    const auto row = currentIndex().row();
    return row < 0 ? QString() : m_model->table().rows[std::size_t(row)].subject;
}

/// Narrow columns keep what they need; long texts share what is left, by their length.
void FigureView::fit()
{
    if (m_isFitting)
        return;
    m_isFitting = true;
    std::vector<std::pair<int, int>> wants;
    int total = 0;
    for (int column = 0; column < m_model->columnCount(); ++column) {
        if (isColumnHidden(column))
            continue;
        const int want =
            std::max(sizeHintForColumn(column), horizontalHeader()->sectionSizeHint(column)) + 12;
        wants.emplace_back(want, column);
        total += want;
    }
    std::ranges::sort(wants);
    int room = viewport()->width();
    int left = int(wants.size());
    for (const auto &[want, column] : wants) {
        const int share = left > 0 ? room / left : room;
        const int width = total <= viewport()->width() ? want : std::min(want, share);
        setColumnWidth(column, left == 1 ? std::max(room, 24) : width);
        room -= width;
        --left;
    }
    resizeRowsToContents();
    m_isFitting = false;
    updateGeometry();
}

QSize FigureView::sizeHint() const
{
    return {400, horizontalHeader()->sizeHint().height() + verticalHeader()->length() +
                     2 * frameWidth()};
}

QSize FigureView::minimumSizeHint() const
{
    return {200, sizeHint().height()};
}

void FigureView::resizeEvent(QResizeEvent *event)
{
    QTableView::resizeEvent(event);
    if (event->oldSize().width() != event->size().width())
        fit();
}

/// The page scrolls, not the table.
void FigureView::wheelEvent(QWheelEvent *event)
{
    event->ignore();
}

} // namespace lastrivet::ui
