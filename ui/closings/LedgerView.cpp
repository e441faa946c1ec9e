// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/LedgerView.h"

#include "ui/closings/LedgerDelegate.h"
#include "ui/widgets/RowDelegate.h"

#include <QKeyEvent>
#include <QMouseEvent>

#include <utility>

namespace lastrivet::ui {

namespace {

/// More advice than this of one rule starts folded.
constexpr int mostAdviceShown = 3;

} // namespace

LedgerView::LedgerView(const Theme &theme, QWidget *parent)
    : QTreeView(parent)
    , m_model(new LedgerModel(this))
{
    setModel(m_model);
    setItemDelegate(new LedgerDelegate(*m_model, theme, this));
    setHeaderHidden(true);
    setRootIsDecorated(false);
    setIndentation(0);
    setExpandsOnDoubleClick(false);
    setMouseTracking(true);
    setProperty("ownRing", true);
    setMinimumHeight(240);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setAccessibleName(tr("Ledger"));
}

void LedgerView::show(LedgerModel::Source source)
{
    const bool isNew = source.answer.id != m_shown;
    m_shown = source.answer.id;
    m_model->show(std::move(source));
    if (isNew)
        expandOpen();
    hideMet();
}

void LedgerView::resizeEvent(QResizeEvent *event)
{
    QTreeView::resizeEvent(event);
    // Wrapped sentences are higher in a narrower view.
    scheduleDelayedItemsLayout();
}

void LedgerView::setOnlyOpen(bool isOnlyOpen)
{
    m_isOnlyOpen = isOnlyOpen;
    hideMet();
}

void LedgerView::expandOpen()
{
    for (int row = 0; row < m_model->rowCount(); ++row) {
        const QModelIndex rule = m_model->index(row, 0);
        const auto &line = m_model->line(rule);
        setExpanded(rule, line.outcome == readiness::Outcome::NotMet ||
                              int(line.blockers.size()) <= mostAdviceShown);
    }
    scrollToTop();
}

void LedgerView::hideMet()
{
    for (int row = 0; row < m_model->rowCount(); ++row) {
        const auto outcome = m_model->line(m_model->index(row, 0)).outcome;
        const bool isOpen =
            outcome == readiness::Outcome::NotMet || outcome == readiness::Outcome::Advice;
        setRowHidden(row, {}, m_isOnlyOpen && !isOpen);
    }
}

void LedgerView::open(const QModelIndex &index)
{
    if (const auto *blocker = m_model->blocker(index))
        Q_EMIT recordWanted(blocker->record);
    else
        setExpanded(index, !isExpanded(index));
}

void LedgerView::mend(const QModelIndex &index)
{
    const Mend mend = m_model->mend(index);
    if (mend != Mend::None)
        Q_EMIT mendWanted(mend, m_model->blocker(index)->record);
}

void LedgerView::focusInEvent(QFocusEvent *event)
{
    QTreeView::focusInEvent(event);
    if (!currentIndex().isValid())
        setCurrentIndex(m_model->index(0, 0));
}

void LedgerView::keyPressEvent(QKeyEvent *event)
{
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (isEnter && currentIndex().isValid())
        open(currentIndex());
    else if (event->key() == Qt::Key_Space && currentIndex().isValid())
        mend(currentIndex());
    else
        QTreeView::keyPressEvent(event);
}

void LedgerView::mousePressEvent(QMouseEvent *event)
{
    m_pressed = event->button() == Qt::LeftButton ? indexAt(event->pos()) : QModelIndex();
    QTreeView::mousePressEvent(event);
}

void LedgerView::mouseReleaseEvent(QMouseEvent *event)
{
    const QModelIndex pressed = std::exchange(m_pressed, QPersistentModelIndex());
    QTreeView::mouseReleaseEvent(event);
    const QModelIndex index = indexAt(event->pos());
    // Who leaves the row with the mouse held down thought better of it.
    if (event->button() != Qt::LeftButton || !index.isValid() || index != pressed)
        return;
    const QRect button =
        RowDelegate::actionPlace(visualRect(index), fontMetrics(), mendWords(m_model->mend(index)));
    if (button.contains(event->pos()))
        mend(index);
    else
        open(index);
}

} // namespace lastrivet::ui
