// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/RowListView.h"

#include "ui/shell/Theme.h"
#include "ui/widgets/RowDelegate.h"

#include <QKeyEvent>
#include <QMouseEvent>

#include <utility>

namespace lastrivet::ui {

RowListView::RowListView(const Theme &theme, const QString &name, QWidget *parent)
    : QListView(parent)
    , m_model(new RowListModel(this))
    , m_delegate(new RowDelegate(theme, this))
{
    setModel(m_model);
    setItemDelegate(m_delegate);
    setResizeMode(QListView::Adjust);
    setAccessibleName(name);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setMouseTracking(true);
    setProperty("ownRing", true);
}

void RowListView::setRows(std::vector<ListRow> rows)
{
    m_model->setRows(std::move(rows));
    updateGeometry();
}

QSize RowListView::sizeHint() const
{
    int height = 2 * frameWidth() + 2;
    QStyleOptionViewItem option;
    initViewItemOption(&option);
    for (int i = 0; i < m_model->rowCount(); ++i)
        height += itemDelegate()->sizeHint(option, m_model->index(i)).height();
    return {200, height};
}

QSize RowListView::minimumSizeHint() const
{
    return {120, sizeHint().height()};
}

void RowListView::setTitleLines(int lines)
{
    m_delegate->setTitleLines(lines);
    updateGeometry();
}

void RowListView::setDetailLines(int lines)
{
    m_delegate->setDetailLines(lines);
    updateGeometry();
}

void RowListView::setTouch()
{
    m_delegate->setTouch();
    updateGeometry();
}

void RowListView::resizeEvent(QResizeEvent *event)
{
    QListView::resizeEvent(event);
    // Wrapped titles are higher in a narrower list.
    scheduleDelayedItemsLayout();
    updateGeometry();
}

void RowListView::keyPressEvent(QKeyEvent *event)
{
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (!currentIndex().isValid() || (!isEnter && event->key() != Qt::Key_Space)) {
        QListView::keyPressEvent(event);
        return;
    }
    const ListRow row = m_model->row(currentIndex().row());
    if (isEnter)
        Q_EMIT chosen(row.record);
    else if (!row.action.isEmpty())
        Q_EMIT acted(row.acts_on.value_or(row.record));
}

void RowListView::mousePressEvent(QMouseEvent *event)
{
    m_pressed = event->button() == Qt::LeftButton ? indexAt(event->pos()) : QModelIndex();
    QListView::mousePressEvent(event);
}

void RowListView::mouseReleaseEvent(QMouseEvent *event)
{
    const QModelIndex pressed = std::exchange(m_pressed, QPersistentModelIndex());
    QListView::mouseReleaseEvent(event);
    const QModelIndex index = indexAt(event->pos());
    // Moving off the row with the button held down cancels the click.
    if (event->button() != Qt::LeftButton || !index.isValid() || index != pressed)
        return;
    const ListRow row = m_model->row(index.row());
    const QRect button = RowDelegate::actionPlace(visualRect(index), fontMetrics(), row.action);
    if (button.contains(event->pos()))
        Q_EMIT acted(row.acts_on.value_or(row.record));
    else
        Q_EMIT chosen(row.record);
}

void RowListView::focusInEvent(QFocusEvent *event)
{
    QListView::focusInEvent(event);
    // A menu, the finder or another page that was looked at between leaves the place as it was.
    if (!currentIndex().isValid() && m_model->rowCount() > 0)
        setCurrentIndex(m_left.isValid() ? QModelIndex(m_left) : m_model->index(0));
}

void RowListView::focusOutEvent(QFocusEvent *event)
{
    QListView::focusOutEvent(event);
    // In a list without the focus a selected row would look like the thing to do; a menu may be
    // about it.
    const auto reason = event->reason();
    if (reason == Qt::ActiveWindowFocusReason || reason == Qt::PopupFocusReason ||
        reason == Qt::MenuBarFocusReason)
        return;
    m_left = currentIndex();
    setCurrentIndex({});
}

} // namespace lastrivet::ui
