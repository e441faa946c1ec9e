// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/PictureView.h"

#include "ui/shell/Theme.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QWheelEvent>

#include <cmath>

namespace lastrivet::ui {

namespace {

constexpr double keyFactor = 1.25;
constexpr double nudge = 0.005;
constexpr int moveStep = 60;

QPointF direction(int key)
{
    switch (key) {
    case Qt::Key_Left:
        return {-1, 0};
    case Qt::Key_Right:
        return {1, 0};
    case Qt::Key_Up:
        return {0, -1};
    case Qt::Key_Down:
        return {0, 1};
    default:
        return {};
    }
}

} // namespace

PictureView::PictureView(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
{
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setMinimumSize(160, 120);
    connect(&m_marks, &MarkEditor::looked, this, [this] { update(); });
}

void PictureView::showPicture(const QPixmap &picture, const QSize &size)
{
    m_picture = picture;
    m_size = size.isEmpty() ? picture.size() : size;
    m_words.clear();
    m_zoom.setPicture(m_size);
    m_moving.reset();
    looksOther();
}

void PictureView::refine(const QPixmap &picture)
{
    if (m_size.isEmpty()) {
        m_size = picture.size();
        m_zoom.setPicture(m_size);
    }
    m_words.clear();
    m_picture = picture;
    update();
}

void PictureView::showWords(const QString &words)
{
    m_words = words;
    update();
}

void PictureView::looksOther()
{
    update();
    Q_EMIT zoomed();
    const double pixels = m_zoom.place().width() * devicePixelRatioF();
    if (!m_zoom.isWhole() && !m_picture.isNull() && pixels > m_picture.width() * 1.05 &&
        m_picture.width() < m_size.width())
        Q_EMIT morePixelsWanted();
}

void PictureView::showWhole()
{
    m_zoom.showWhole();
    looksOther();
}

void PictureView::showFullSize()
{
    m_zoom.zoomTo(1 / devicePixelRatioF(), rect().center());
    looksOther();
}

void PictureView::zoomAround(double factor, const QPointF &anchor)
{
    m_zoom.zoomBy(factor, anchor);
    looksOther();
}

void PictureView::zoomIn()
{
    zoomAround(keyFactor, rect().center());
}

void PictureView::zoomOut()
{
    zoomAround(1 / keyFactor, rect().center());
}

void PictureView::setTool(std::optional<AnnotationShape> tool)
{
    if (m_isReadOnly || tool == m_tool)
        return;
    m_tool = tool;
    setCursor(tool ? Qt::CrossCursor : Qt::ArrowCursor);
    Q_EMIT toolChanged();
}

void PictureView::addMark(AnnotationShape shape)
{
    if (m_isReadOnly || m_picture.isNull())
        return;
    setTool(std::nullopt);
    m_marks.add(shape, m_zoom.toPicture(rect().center()));
    if (shape == AnnotationShape::Text)
        Q_EMIT wordsWanted();
}

MarkPainter PictureView::painter() const
{
    return {m_marks.marks(), m_zoom.place(), font()};
}

void PictureView::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    const Colours &colours = m_theme.colours();
    if (m_picture.isNull() || !m_words.isEmpty()) {
        painter.setPen(colours.text);
        painter.drawText(rect().adjusted(24, 24, -24, -24), Qt::AlignCenter | Qt::TextWordWrap,
                         m_words.isEmpty() ? tr("Reading the picture …") : m_words);
    } else {
        const QRectF place = m_zoom.place();
        const QRectF seen = place & QRectF(rect());
        const double x = m_picture.width() / place.width();
        const double y = m_picture.height() / place.height();
        painter.setRenderHint(QPainter::SmoothPixmapTransform);
        painter.drawPixmap(seen, m_picture,
                           QRectF((seen.left() - place.left()) * x, (seen.top() - place.top()) * y,
                                  seen.width() * x, seen.height() * y));
        painter.setClipRect(seen);
        this->painter().draw(painter, m_marks.chosen(), colours);
        painter.setClipping(false);
    }
    if (hasFocus()) {
        painter.setPen(QPen(colours.accent, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(rect().adjusted(1, 1, -1, -1));
    }
}

void PictureView::resizeEvent(QResizeEvent *)
{
    m_zoom.setView(size());
}

void PictureView::wheelEvent(QWheelEvent *event)
{
    zoomAround(std::pow(1.0015, event->angleDelta().y()), event->position());
    event->accept();
}

void PictureView::mousePressEvent(QMouseEvent *event)
{
    if (event->button() != Qt::LeftButton || m_picture.isNull())
        return;
    const QPointF at = m_zoom.toPicture(event->position());
    if (m_tool && m_zoom.place().contains(event->position())) {
        m_marks.begin(*m_tool, at);
        return;
    }
    const auto grip = painter().gripAt(event->position(), m_marks.chosen());
    if (grip && m_isReadOnly)
        m_marks.choose(grip->mark);
    else if (grip)
        m_marks.take(*grip, at);
    else {
        m_marks.choose(-1);
        m_moving = event->position();
    }
}

void PictureView::mouseMoveEvent(QMouseEvent *event)
{
    if (m_moving) {
        m_zoom.moveBy(event->position() - *m_moving);
        m_moving = event->position();
        update();
    } else if (event->buttons().testFlag(Qt::LeftButton)) {
        m_marks.drag(m_zoom.toPicture(event->position()));
    } else {
        updateCursor(event->position());
    }
}

void PictureView::updateCursor(const QPointF &at)
{
    if (!m_tool)
        setCursor(painter().gripAt(at, m_marks.chosen()) ? Qt::PointingHandCursor
                                                         : Qt::ArrowCursor);
}

void PictureView::mouseReleaseEvent(QMouseEvent *)
{
    m_moving.reset();
    const auto tool = m_tool;
    m_marks.release();
    setTool(std::nullopt);
    if (tool == AnnotationShape::Text)
        Q_EMIT wordsWanted();
}

void PictureView::mouseDoubleClickEvent(QMouseEvent *event)
{
    if (painter().gripAt(event->position(), m_marks.chosen())) {
        Q_EMIT wordsWanted();
    } else if (m_zoom.isWhole()) {
        m_zoom.zoomTo(1 / devicePixelRatioF(), event->position());
        looksOther();
    } else {
        showWhole();
    }
}

void PictureView::focusOutEvent(QFocusEvent *event)
{
    m_marks.flush();
    QWidget::focusOutEvent(event);
}

/// Tab goes through the marks before it goes on.
bool PictureView::focusNextPrevChild(bool next)
{
    return m_marks.chooseNext(next ? 1 : -1) || QWidget::focusNextPrevChild(next);
}

bool PictureView::zoomKey(int key)
{
    switch (key) {
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        zoomIn();
        return true;
    case Qt::Key_Minus:
        zoomOut();
        return true;
    case Qt::Key_0:
    case Qt::Key_F:
        showWhole();
        return true;
    case Qt::Key_O:
        showFullSize();
        return true;
    default:
        return false;
    }
}

bool PictureView::markKey(const QKeyEvent &event)
{
    switch (event.key()) {
    case Qt::Key_A:
        addMark(AnnotationShape::Arrow);
        return true;
    case Qt::Key_C:
        addMark(AnnotationShape::Circle);
        return true;
    case Qt::Key_W:
        addMark(AnnotationShape::Text);
        return true;
    case Qt::Key_Delete:
    case Qt::Key_Backspace:
        if (!m_isReadOnly)
            m_marks.removeChosen();
        return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (m_marks.chosen() < 0 || m_isReadOnly)
            return false;
        Q_EMIT wordsWanted();
        return true;
    case Qt::Key_Escape:
        if (!m_tool && m_marks.chosen() < 0)
            return false;
        setTool(std::nullopt);
        m_marks.choose(-1);
        return true;
    default:
        return false;
    }
}

/// Arrow keys move the chosen mark, else the enlarged picture, else they go on in the list.
bool PictureView::moveKey(const QKeyEvent &event)
{
    const QPointF way = direction(event.key());
    if (way.isNull())
        return false;
    if (m_marks.chosen() >= 0 && !m_isReadOnly)
        m_marks.nudge(way * nudge, event.modifiers().testFlag(Qt::ShiftModifier));
    else if (!m_zoom.isWhole())
        m_zoom.moveBy(-way * moveStep);
    else
        Q_EMIT stepped(way.x() + way.y() > 0 ? 1 : -1);
    update();
    return true;
}

void PictureView::keyPressEvent(QKeyEvent *event)
{
    if (event->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier)) {
        QWidget::keyPressEvent(event);
        return;
    }
    if (zoomKey(event->key()) || markKey(*event) || moveKey(*event))
        return;
    switch (event->key()) {
    case Qt::Key_PageUp:
        Q_EMIT stepped(-1);
        break;
    case Qt::Key_PageDown:
    case Qt::Key_Space:
        Q_EMIT stepped(1);
        break;
    case Qt::Key_Escape:
    case Qt::Key_Return:
    case Qt::Key_Enter:
        Q_EMIT left();
        break;
    default:
        QWidget::keyPressEvent(event);
    }
}

} // namespace lastrivet::ui
