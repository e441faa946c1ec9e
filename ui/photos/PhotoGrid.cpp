// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/PhotoGrid.h"

#include "ui/convert/NumberText.h"
#include "ui/photos/PhotoListModel.h"
#include "ui/shell/Theme.h"
#include "ui/widgets/PhotoDelegate.h"
#include "ui/widgets/PictureLoader.h"

#include <QFocusEvent>
#include <QItemSelectionModel>
#include <QPaintEvent>
#include <QPainter>
#include <QScrollBar>

#include <algorithm>

namespace lastrivet::ui {

namespace {

constexpr int edge = 168;
constexpr int headingHeight = 9 * Theme::space;

} // namespace

PhotoGrid::PhotoGrid(const Theme &theme, PhotoListModel &model, PictureLoader &loader,
                     QWidget *parent)
    : QAbstractItemView(parent)
    , m_theme(theme)
    , m_model(model)
    , m_loader(loader)
    , m_delegate(new PhotoDelegate(theme, edge, this))
{
    m_delegate->setShowsTold();
    setModel(&model);
    setItemDelegate(m_delegate);
    setSelectionMode(QAbstractItemView::ExtendedSelection);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setTabKeyNavigation(false);
    loader.setFrame(m_delegate->frame());
    connect(&model, &PhotoListModel::sectionsChanged, this, &PhotoGrid::arrange);
    connect(&model, &PhotoListModel::rowsInserted, this, &PhotoGrid::arrange);
    connect(&model, &PhotoListModel::rowsRemoved, this, &PhotoGrid::arrange);
    arrange();
}

/// The keys are about what is chosen: the photo with the ring is, where nothing else is.
void PhotoGrid::focusInEvent(QFocusEvent *event)
{
    QAbstractItemView::focusInEvent(event);
    const bool isByMouse = event->reason() == Qt::MouseFocusReason;
    if (!isByMouse && currentIndex().isValid() && !selectionModel()->hasSelection())
        selectionModel()->select(currentIndex(), QItemSelectionModel::Select);
}

void PhotoGrid::arrange()
{
    std::vector<CardLayout::Span> spans;
    // Between the rows that went and those that came the headings speak of other rows.
    for (const PhotoListModel::Section &section : m_model.sections()) {
        const int count = std::min(section.count, m_model.rowCount() - section.first);
        if (count > 0)
            spans.push_back({section.first, count});
    }
    m_layout.arrange(spans, m_delegate->cardSize(fontMetrics()), headingHeight,
                     viewport()->width());
    m_asked = {-1, 0};
    updateGeometries();
    viewport()->update();
}

void PhotoGrid::updateGeometries()
{
    const int page = viewport()->height();
    verticalScrollBar()->setSingleStep(m_delegate->cardSize(fontMetrics()).height() / 3);
    verticalScrollBar()->setPageStep(page);
    verticalScrollBar()->setRange(0, std::max(0, m_layout.height() - page));
    QAbstractItemView::updateGeometries();
}

void PhotoGrid::resizeEvent(QResizeEvent *event)
{
    QAbstractItemView::resizeEvent(event);
    arrange();
}

int PhotoGrid::verticalOffset() const
{
    return verticalScrollBar()->value();
}

void PhotoGrid::scrollContentsBy(int dx, int dy)
{
    scrollDirtyRegion(dx, dy);
    viewport()->scroll(dx, dy);
    const int top = topSection();
    if (top != m_topSection) {
        m_topSection = top;
        Q_EMIT topSectionChanged(top);
    }
}

int PhotoGrid::topSection() const
{
    const int row = m_layout.nearestRow({0, verticalOffset() + headingHeight});
    return row < 0 ? -1 : m_layout.sectionOf(row);
}

void PhotoGrid::scrollToSection(int section)
{
    if (section >= 0 && section < m_layout.sectionCount())
        verticalScrollBar()->setValue(m_layout.heading(section).top());
}

QRect PhotoGrid::visualRect(const QModelIndex &index) const
{
    return index.isValid() ? m_layout.card(index.row()).translated(0, -verticalOffset()) : QRect();
}

void PhotoGrid::scrollTo(const QModelIndex &index, ScrollHint hint)
{
    const QRect card = visualRect(index);
    if (card.isNull())
        return;
    const int page = viewport()->height();
    int by = 0;
    if (hint == PositionAtTop)
        by = card.top();
    else if (hint == PositionAtCenter)
        by = card.center().y() - page / 2;
    else if (card.top() < headingHeight)
        by = card.top() - headingHeight;
    else if (card.bottom() > page || hint == PositionAtBottom)
        by = card.bottom() - page + 1;
    verticalScrollBar()->setValue(verticalOffset() + by);
}

QModelIndex PhotoGrid::indexAt(const QPoint &point) const
{
    const int row = m_layout.rowAt(point + QPoint(0, verticalOffset()));
    return row < 0 ? QModelIndex() : m_model.index(row);
}

int PhotoGrid::linesOnPage() const
{
    return std::max(1, viewport()->height() / m_delegate->cardSize(fontMetrics()).height());
}

QModelIndex PhotoGrid::moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers)
{
    const int last = m_layout.rowCount() - 1;
    if (last < 0)
        return {};
    const int row = currentIndex().isValid() ? std::min(currentIndex().row(), last) : 0;
    const bool bySection = modifiers.testFlag(Qt::ControlModifier);
    const int section = m_layout.sectionOf(row);
    switch (action) {
    case MoveLeft:
    case MovePrevious:
        return m_model.index(std::max(0, row - 1));
    case MoveRight:
    case MoveNext:
        return m_model.index(std::min(last, row + 1));
    case MoveUp:
        return m_model.index(m_layout.moved(row, -1));
    case MoveDown:
        return m_model.index(m_layout.moved(row, 1));
    case MovePageUp:
        return m_model.index(bySection ? m_layout.firstRow(std::max(0, section - 1))
                                       : m_layout.moved(row, -linesOnPage()));
    case MovePageDown:
        return m_model.index(
            bySection ? m_layout.firstRow(std::min(m_layout.sectionCount() - 1, section + 1))
                      : m_layout.moved(row, linesOnPage()));
    case MoveHome:
        return m_model.index(0);
    case MoveEnd:
        return m_model.index(last);
    }
    return {};
}

void PhotoGrid::setSelection(const QRect &rect, QItemSelectionModel::SelectionFlags command)
{
    // The corners are where it began and where it is now, in this order.
    const QPoint offset(0, verticalOffset());
    const int begin = m_layout.nearestRow(rect.topLeft() + offset);
    const int end = m_layout.nearestRow(rect.bottomRight() + offset);
    const bool isClick = rect.width() <= 1 && rect.height() <= 1;
    if (begin < 0 || (isClick && m_layout.rowAt(rect.topLeft() + offset) < 0)) {
        selectionModel()->select(QItemSelection(), command);
        return;
    }
    selectionModel()->select(
        QItemSelection(m_model.index(std::min(begin, end)), m_model.index(std::max(begin, end))),
        command);
}

QRegion PhotoGrid::visualRegionForSelection(const QItemSelection &selection) const
{
    const CardLayout::Span seen =
        m_layout.rowsBetween(verticalOffset(), verticalOffset() + viewport()->height());
    QRegion region;
    for (int row = seen.first; row < seen.first + seen.count; ++row) {
        if (selection.contains(m_model.index(row)))
            region += visualRect(m_model.index(row));
    }
    return region;
}

/// What is seen now, then what comes when scrolling goes on; what was scrolled past is forgotten.
void PhotoGrid::askForPictures()
{
    const int top = verticalOffset();
    const int page = viewport()->height();
    const CardLayout::Span seen = m_layout.rowsBetween(top, top + page);
    if (seen.first == m_asked.first && seen.count == m_asked.count)
        return;
    m_asked = seen;
    m_loader.forgetWanted();
    const CardLayout::Span near = m_layout.rowsBetween(top - page / 2, top + 2 * page);
    for (int row = near.first + near.count - 1; row >= near.first; --row) {
        if (row < seen.first || row >= seen.first + seen.count)
            m_loader.small(*m_model.mediaAt(row));
    }
    for (int row = seen.first + seen.count - 1; row >= seen.first; --row)
        m_loader.small(*m_model.mediaAt(row));
}

void PhotoGrid::paintHeading(QPainter &painter, int section) const
{
    const QRect place = m_layout.heading(section).translated(0, -verticalOffset());
    const PhotoListModel::Section &about = m_model.sections()[std::size_t(section)];
    QFont bold = font();
    bold.setBold(true);
    painter.setFont(bold);
    const QFontMetrics metrics(bold);
    const QRect line = place.adjusted(2 * Theme::space, 0, -2 * Theme::space, 0);
    const QString title = metrics.elidedText(about.title, Qt::ElideMiddle, line.width() - 80);
    painter.setPen(m_theme.colours().text);
    painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter, title);
    painter.setFont(font());
    painter.setPen(m_theme.colours().quietText);
    painter.drawText(
        line.adjusted(metrics.horizontalAdvance(title) + 3 * Theme::space, 0, 0, 0),
        Qt::AlignLeft | Qt::AlignVCenter,
        about.within.isEmpty()
            ? countText(std::int64_t(about.count))
            : QStringLiteral("%1 · %2").arg(about.within, countText(std::int64_t(about.count))));
}

void PhotoGrid::tellEmpty(const QString &why)
{
    if (m_whyEmpty == why)
        return;
    m_whyEmpty = why;
    setAccessibleDescription(why);
    viewport()->update();
}

void PhotoGrid::paintEvent(QPaintEvent *event)
{
    askForPictures();
    QPainter painter(viewport());
    const int offset = verticalOffset();
    const CardLayout::Span seen =
        m_layout.rowsBetween(event->rect().top() + offset, event->rect().bottom() + offset);
    if (m_model.rowCount() == 0) {
        painter.setPen(m_theme.colours().quietText);
        painter.drawText(viewport()->rect().adjusted(24, 24, -24, -24),
                         Qt::AlignCenter | Qt::TextWordWrap, m_whyEmpty);
    }
    if (seen.count == 0)
        return;
    for (int section = m_layout.sectionOf(seen.first);
         section <= m_layout.sectionOf(seen.first + seen.count - 1); ++section)
        paintHeading(painter, section);
    QStyleOptionViewItem option;
    initViewItemOption(&option);
    const QStyle::State plain = option.state & ~(QStyle::State_HasFocus | QStyle::State_Selected);
    for (int row = seen.first; row < seen.first + seen.count; ++row) {
        const QModelIndex index = m_model.index(row);
        option.rect = visualRect(index);
        if (!event->region().intersects(option.rect))
            continue;
        option.state = plain;
        option.state.setFlag(QStyle::State_Selected, selectionModel()->isSelected(index));
        option.state.setFlag(QStyle::State_HasFocus, hasFocus() && index == currentIndex());
        m_delegate->paint(&painter, option, index);
    }
}

} // namespace lastrivet::ui
