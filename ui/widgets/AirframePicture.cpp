// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/AirframePicture.h"

#include "ui/shell/Theme.h"
#include "ui/widgets/Hatch.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QTransform>

#include <algorithm>
#include <ranges>

namespace lastrivet::ui {

namespace {

constexpr int side = 8;
constexpr int usualWidth = 320;
constexpr int leastWidth = 200;

} // namespace

AirframePicture::AirframePicture(const Theme &theme, QWidget *parent)
    : QAbstractItemView(parent)
    , m_theme(theme)
    , m_model(new ZoneModel(this))
    , m_drawing(m_kind)
{
    setModel(m_model);
    setAccessibleName(tr("The aeroplane, by zone"));
    setSelectionMode(QAbstractItemView::SingleSelection);
    setMouseTracking(true);
    setTabKeyNavigation(false);
    setProperty("ownRing", true);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void AirframePicture::show(airframe::AircraftKind kind, std::vector<ZoneRow> rows)
{
    if (kind != m_kind)
        m_drawing = AirframeDrawing(kind);
    m_kind = kind;
    m_model->setRows(std::move(rows));
    viewport()->update();
}

int AirframePicture::heightForWidth(int width) const
{
    const QSizeF size = m_drawing.size();
    return int((width - 2 * side) * size.height() / size.width()) + 2 * side;
}

QSize AirframePicture::sizeHint() const
{
    return {usualWidth, heightForWidth(usualWidth)};
}

QSize AirframePicture::minimumSizeHint() const
{
    return {leastWidth, heightForWidth(leastWidth)};
}

QTransform AirframePicture::scaling() const
{
    const QRectF place = QRectF(viewport()->rect()).adjusted(side, side, -side, -side);
    const QSizeF size = m_drawing.size();
    const qreal scale = std::min(place.width() / size.width(), place.height() / size.height());
    const QPointF corner = place.center() - QPointF(size.width(), size.height()) * scale / 2;
    return QTransform::fromTranslate(corner.x(), corner.y()).scale(scale, scale);
}

QRect AirframePicture::visualRect(const QModelIndex &index) const
{
    if (!index.isValid())
        return {};
    // The first of a zone's shapes, which is the one from above where there is one.
    const auto zone = m_model->row(index.row()).standing.zone;
    const auto shape = std::ranges::find(m_drawing.shapes(), zone, &AirframeDrawing::Shape::zone);
    return shape == m_drawing.shapes().end()
               ? QRect()
               : scaling().mapRect(shape->path.boundingRect()).toAlignedRect();
}

QModelIndex AirframePicture::indexAt(const QPoint &point) const
{
    const QPointF place = scaling().inverted().map(QPointF(point));
    for (const auto &shape : std::views::reverse(m_drawing.shapes())) {
        const int row = m_model->rowOf(shape.zone);
        if (row >= 0 && shape.path.contains(place))
            return m_model->index(row);
    }
    return {};
}

QModelIndex AirframePicture::moveCursor(CursorAction action, Qt::KeyboardModifiers)
{
    const int count = m_model->rowCount();
    if (count == 0)
        return {};
    int row = currentIndex().isValid() ? currentIndex().row() : -1;
    switch (action) {
    case MoveRight:
    case MoveDown:
    case MoveNext:
        row = std::min(row + 1, count - 1);
        break;
    case MoveLeft:
    case MoveUp:
    case MovePrevious:
        row = std::max(row - 1, 0);
        break;
    case MoveHome:
    case MovePageUp:
        row = 0;
        break;
    case MoveEnd:
    case MovePageDown:
        row = count - 1;
        break;
    }
    return m_model->index(row);
}

void AirframePicture::setSelection(const QRect &place, QItemSelectionModel::SelectionFlags flags)
{
    const QModelIndex index = indexAt(place.center());
    selectionModel()->select(QItemSelection(index, index), flags);
}

QRegion AirframePicture::visualRegionForSelection(const QItemSelection &) const
{
    return viewport()->rect();
}

void AirframePicture::currentChanged(const QModelIndex &current, const QModelIndex &previous)
{
    QAbstractItemView::currentChanged(current, previous);
    viewport()->update();
    if (current.isValid())
        Q_EMIT lookedAt(current);
}

void AirframePicture::paintRing(QPainter &painter, int row, const QColor &colour, qreal width) const
{
    const QTransform transform = scaling();
    for (const auto &shape : m_drawing.shapes()) {
        if (shape.zone == m_model->row(row).standing.zone)
            painter.strokePath(transform.map(shape.path), QPen(colour, width));
    }
}

void AirframePicture::paintEvent(QPaintEvent *)
{
    const Colours &colours = m_theme.colours();
    QPainter painter(viewport());
    painter.setRenderHint(QPainter::Antialiasing);
    const QTransform transform = scaling();
    painter.strokePath(transform.map(m_drawing.lines()), QPen(colours.border, 1.2));
    for (const auto &shape : m_drawing.shapes()) {
        const int row = m_model->rowOf(shape.zone);
        if (row < 0)
            continue;
        const auto &standing = m_model->row(row).standing;
        paintHatched(painter, transform.map(shape.path), standing.state, standing.begun, colours);
    }
    if (m_hovered.isValid())
        paintRing(painter, m_hovered.row(), colours.text, 2);
    if (hasFocus() && currentIndex().isValid())
        paintRing(painter, currentIndex().row(), colours.accent, 3);
    if (hasFocus()) {
        painter.setRenderHint(QPainter::Antialiasing, false);
        painter.setPen(QPen(colours.accent, 2));
        painter.drawRect(viewport()->rect().adjusted(1, 1, -1, -1));
    }
}

void AirframePicture::hover(const QModelIndex &index)
{
    if (m_hovered == index)
        return;
    m_hovered = index;
    viewport()->setCursor(index.isValid() && m_model->row(index.row()).standing.part
                              ? Qt::PointingHandCursor
                              : Qt::ArrowCursor);
    viewport()->update();
    Q_EMIT lookedAt(index.isValid() ? index : hasFocus() ? currentIndex() : QModelIndex());
}

void AirframePicture::mouseMoveEvent(QMouseEvent *event)
{
    hover(indexAt(event->pos()));
    QAbstractItemView::mouseMoveEvent(event);
}

void AirframePicture::leaveEvent(QEvent *event)
{
    hover({});
    QAbstractItemView::leaveEvent(event);
}

void AirframePicture::mouseReleaseEvent(QMouseEvent *event)
{
    QAbstractItemView::mouseReleaseEvent(event);
    if (event->button() == Qt::LeftButton)
        choose(indexAt(event->pos()));
}

void AirframePicture::keyPressEvent(QKeyEvent *event)
{
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (isEnter || event->key() == Qt::Key_Space)
        choose(currentIndex());
    else
        QAbstractItemView::keyPressEvent(event);
}

void AirframePicture::choose(const QModelIndex &index)
{
    if (!index.isValid())
        return;
    if (const auto part = m_model->row(index.row()).standing.part)
        Q_EMIT chosen({RecordType::Component, part.value()});
}

void AirframePicture::focusInEvent(QFocusEvent *event)
{
    QAbstractItemView::focusInEvent(event);
    if (!currentIndex().isValid() && m_model->rowCount() > 0)
        setCurrentIndex(m_model->index(0));
    viewport()->update();
}

void AirframePicture::focusOutEvent(QFocusEvent *event)
{
    QAbstractItemView::focusOutEvent(event);
    viewport()->update();
    Q_EMIT lookedAt({});
}

} // namespace lastrivet::ui
