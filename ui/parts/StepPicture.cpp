// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/StepPicture.h"

#include "core/steps/StepOrder.h"
#include "ui/convert/QtText.h"
#include "ui/parts/StepMoves.h"
#include "ui/shell/Session.h"
#include "ui/shell/ShortcutSheet.h"
#include "ui/widgets/RecordNames.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QScrollBar>
#include <QToolTip>

#include <algorithm>
#include <utility>

namespace lastrivet::ui {

namespace {

/// What a person can follow with the eye, and what the layout does between two key strokes.
constexpr std::size_t mostSteps = 160;
constexpr qreal boxHeight = 54;
constexpr qreal gapAcross = 40;
constexpr qreal gapDown = 12;
constexpr qreal edge = 16;

} // namespace

StepPicture::StepPicture(Session &session, QWidget *parent)
    : QAbstractScrollArea(parent)
    , m_session(session)
{
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Order of the steps"));
    setProperty(ShortcutSheet::toldKeys,
                QStringList{QStringLiteral("W"), tr("One step waits for another")});
    viewport()->setMouseTracking(false);
}

void StepPicture::show(const std::vector<RecordRef> &steps)
{
    const auto records = m_session.records();
    const Id<Step> kept = current();
    std::vector<Id<Step>> own;
    for (const RecordRef &step : steps)
        own.push_back(Id<Step>{step.id});
    m_isTooMany = own.size() > mostSteps;
    m_steps = m_isTooMany ? std::vector<Id<Step>>{} : steps::withNeighbours(*records, own);
    m_isOwn.clear();
    std::vector<steps::Arrow> arrows;
    for (std::size_t node = 0; node < m_steps.size(); ++node) {
        m_isOwn.push_back(std::ranges::find(own, m_steps[node]) != own.end());
        for (const Id<Step> earlier : steps::stepsBefore(*records, *records->find(m_steps[node]))) {
            if (const auto from = nodeOf(earlier))
                arrows.push_back({*from, node});
        }
    }
    m_layering = steps::layered(m_steps.size(), std::move(arrows));
    m_current.reset();
    setCurrent(kept.value());
    updateBars();
    viewport()->update();
}

std::optional<std::size_t> StepPicture::nodeOf(Id<Step> step) const
{
    const auto place = std::ranges::lower_bound(m_steps, step);
    if (place == m_steps.end() || *place != step)
        return std::nullopt;
    return std::size_t(place - m_steps.begin());
}

void StepPicture::setCurrent(std::int64_t step)
{
    const auto node = nodeOf(Id<Step>{step});
    if (!node || node == m_current)
        return;
    m_current = node;
    setAccessibleDescription(describe(*node));
    const QRectF place = box(*node);
    if (!QRectF(viewport()->rect()).contains(place)) {
        horizontalScrollBar()->setValue(
            int(horizontalScrollBar()->value() + place.center().x() - viewport()->width() / 2.0));
        verticalScrollBar()->setValue(
            int(verticalScrollBar()->value() + place.center().y() - viewport()->height() / 2.0));
    }
    viewport()->update();
}

Id<Step> StepPicture::current() const
{
    return m_current ? m_steps[*m_current] : Id<Step>{};
}

QPointF StepPicture::centre(const steps::Layering::Place &place) const
{
    return {edge + qreal(place.layer) * (boxWidth + gapAcross) + boxWidth / 2 -
                horizontalScrollBar()->value(),
            edge + qreal(place.row) * (boxHeight + gapDown) + boxHeight / 2 -
                verticalScrollBar()->value()};
}

QRectF StepPicture::box(std::size_t node) const
{
    const QPointF middle = centre(m_layering.places[node]);
    return {middle.x() - boxWidth / 2, middle.y() - boxHeight / 2, boxWidth, boxHeight};
}

QRectF StepPicture::boxOf(Id<Step> step) const
{
    const auto node = nodeOf(step);
    return node ? box(*node) : QRectF();
}

std::optional<std::size_t> StepPicture::nodeAt(const QPointF &point) const
{
    for (std::size_t node = 0; node < m_steps.size(); ++node) {
        if (box(node).contains(point))
            return node;
    }
    return std::nullopt;
}

void StepPicture::updateBars()
{
    const qreal width = 2 * edge + qreal(m_layering.layers) * (boxWidth + gapAcross) - gapAcross;
    const qreal height = 2 * edge + qreal(m_layering.rows) * (boxHeight + gapDown) - gapDown;
    horizontalScrollBar()->setRange(0, std::max(0, int(width) - viewport()->width()));
    horizontalScrollBar()->setPageStep(viewport()->width());
    verticalScrollBar()->setRange(0, std::max(0, int(height) - viewport()->height()));
    verticalScrollBar()->setPageStep(viewport()->height());
}

void StepPicture::resizeEvent(QResizeEvent *event)
{
    QAbstractScrollArea::resizeEvent(event);
    updateBars();
}

QString StepPicture::describe(std::size_t node) const
{
    const auto records = m_session.records();
    const Step &step = *records->find(m_steps[node]);
    QStringList before;
    for (const Id<Step> earlier : steps::stepsBefore(*records, step))
        before.append(shortName(*records, {RecordType::Step, earlier.value()}));
    const QString name = shortName(*records, {RecordType::Step, step.id.value()});
    return before.isEmpty() ? name
                            : tr("%1, after %2").arg(name, before.join(QStringLiteral(", ")));
}

void StepPicture::go(std::size_t node)
{
    setCurrent(m_steps[node].value());
    if (m_isOwn[node])
        Q_EMIT chosen(m_steps[node].value());
}

void StepPicture::goAlong(bool isForward)
{
    if (!m_current)
        return;
    for (const auto &line : m_layering.lines) {
        const std::size_t here = isForward ? line.from : line.to;
        if (here == *m_current) {
            go(isForward ? line.to : line.from);
            return;
        }
    }
}

void StepPicture::goWithin(int by)
{
    if (!m_current)
        return;
    const auto place = m_layering.places[*m_current];
    std::optional<std::size_t> nearest;
    for (std::size_t node = 0; node < m_steps.size(); ++node) {
        const auto other = m_layering.places[node];
        const auto distance = (std::ptrdiff_t(other.row) - std::ptrdiff_t(place.row)) * by;
        if (other.layer != place.layer || distance <= 0)
            continue;
        const auto known =
            nearest
                ? (std::ptrdiff_t(m_layering.places[*nearest].row) - std::ptrdiff_t(place.row)) * by
                : std::ptrdiff_t(m_layering.rows) + 1;
        if (distance < known)
            nearest = node;
    }
    if (nearest)
        go(*nearest);
}

void StepPicture::joinFrom()
{
    if (!m_current || m_session.isReadOnly())
        return;
    if (!m_earlier) {
        m_earlier = current();
        m_session.say(tr("Go to the step that has to wait for it, and press W again."));
    } else {
        const Id<Step> earlier = *m_earlier;
        m_earlier.reset();
        orderByPerson(m_session, earlier, current());
    }
    viewport()->update();
}

void StepPicture::keyPressEvent(QKeyEvent *event)
{
    if (!m_current && !m_steps.empty())
        setCurrent(m_steps.front().value());
    switch (event->key()) {
    case Qt::Key_Right:
    case Qt::Key_Left:
        goAlong(event->key() == Qt::Key_Right);
        return;
    case Qt::Key_Down:
    case Qt::Key_Up:
        goWithin(event->key() == Qt::Key_Down ? 1 : -1);
        return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (m_current)
            m_session.goTo({RecordType::Step, current().value()});
        return;
    case Qt::Key_W:
        joinFrom();
        return;
    case Qt::Key_Escape:
        m_earlier.reset();
        viewport()->update();
        [[fallthrough]];
    default:
        QAbstractScrollArea::keyPressEvent(event);
    }
}

void StepPicture::mousePressEvent(QMouseEvent *event)
{
    if (event->button() != Qt::LeftButton)
        return;
    const auto node = nodeAt(event->position());
    m_pressed = node ? std::optional(m_steps[*node]) : std::nullopt;
    m_pointer = event->position();
    if (node)
        go(*node);
}

void StepPicture::mouseMoveEvent(QMouseEvent *event)
{
    m_pointer = event->position();
    viewport()->update();
}

void StepPicture::mouseReleaseEvent(QMouseEvent *event)
{
    if (event->button() != Qt::LeftButton)
        return;
    const auto from = std::exchange(m_pressed, std::nullopt);
    viewport()->update();
    const auto to = nodeAt(event->position());
    if (from && nodeOf(*from) && to && *from != m_steps[*to] && !m_session.isReadOnly())
        orderByPerson(m_session, *from, m_steps[*to]);
}

void StepPicture::mouseDoubleClickEvent(QMouseEvent *event)
{
    const auto node = nodeAt(event->position());
    if (node && event->button() == Qt::LeftButton)
        m_session.goTo({RecordType::Step, m_steps[*node].value()});
}

bool StepPicture::viewportEvent(QEvent *event)
{
    if (event->type() != QEvent::ToolTip)
        return QAbstractScrollArea::viewportEvent(event);
    const auto *help = static_cast<QHelpEvent *>(event);
    const auto node = nodeAt(help->pos());
    QToolTip::showText(help->globalPos(), node ? describe(*node) : QString(), this);
    return true;
}

} // namespace lastrivet::ui
