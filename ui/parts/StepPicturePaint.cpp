// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/StepPicture.h"

#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"

#include <QPainter>
#include <QPainterPath>

// How the picture of steps is drawn.
namespace lastrivet::ui {

void StepPicture::paintEvent(QPaintEvent *)
{
    QPainter painter(viewport());
    painter.setRenderHint(QPainter::Antialiasing);
    if (m_isTooMany) {
        paintTooMany(painter);
        return;
    }
    paintLines(painter);
    for (std::size_t node = 0; node < m_steps.size(); ++node)
        paintBox(painter, node);
    const auto pressed = m_pressed ? nodeOf(*m_pressed) : std::nullopt;
    if (pressed && !box(*pressed).contains(m_pointer)) {
        painter.setPen(QPen(m_session.theme().colours().accent, 2, Qt::DashLine));
        painter.drawLine(box(*pressed).center(), m_pointer);
    }
}

void StepPicture::paintTooMany(QPainter &painter) const
{
    painter.setPen(m_session.theme().colours().quietText);
    painter.drawText(viewport()->rect().adjusted(12, 12, -12, -12), Qt::TextWordWrap,
                     tr("These are too many steps for a picture. Choose a part further down, or "
                        "leave out what lies below."));
}

void StepPicture::paintLines(QPainter &painter) const
{
    const Colours &colours = m_session.theme().colours();
    for (const auto &line : m_layering.lines) {
        const bool isAtCurrent = m_current == line.from || m_current == line.to;
        painter.setPen(QPen(isAtCurrent ? colours.accent : colours.border, isAtCurrent ? 2 : 1));
        QPointF last = box(line.from).center() + QPointF(boxWidth / 2, 0);
        QPainterPath path(last);
        const auto curveTo = [&](const QPointF &next) {
            const QPointF half((next.x() - last.x()) / 2, 0);
            path.cubicTo(last + half, next - half, next);
            last = next;
        };
        for (const auto &point : line.via) {
            curveTo(centre(point) - QPointF(boxWidth / 2, 0));
            path.lineTo(centre(point) + QPointF(boxWidth / 2, 0));
            last = centre(point) + QPointF(boxWidth / 2, 0);
        }
        const QPointF end = box(line.to).center() - QPointF(boxWidth / 2, 0);
        curveTo(end);
        painter.setBrush(Qt::NoBrush);
        painter.drawPath(path);
        painter.setBrush(painter.pen().color());
        painter.drawPolygon(QPolygonF{end, end + QPointF(-7, -4), end + QPointF(-7, 4)});
    }
}

void StepPicture::paintBox(QPainter &painter, std::size_t node) const
{
    const Colours &colours = m_session.theme().colours();
    const Step &step = *m_session.records()->find(m_steps[node]);
    const QRectF place = box(node);
    const bool isCurrent = m_current == node;
    const bool isFirst = m_earlier == step.id;
    QPen pen(isCurrent && hasFocus() ? colours.accent : colours.border, isCurrent ? 2 : 1);
    if (!m_isOwn[node])
        pen.setStyle(Qt::DashLine);
    painter.setPen(pen);
    painter.setBrush(isCurrent || isFirst ? colours.selection : colours.surface);
    painter.drawRect(place);
    const bool isOver = step.done_on || step.dropped_on;
    painter.setPen(isOver || !m_isOwn[node] ? colours.quietText : colours.text);
    QFont font = painter.font();
    font.setStrikeOut(step.dropped_on.has_value());
    painter.setFont(font);
    const QString mark = step.done_on ? QStringLiteral("✓ ") : QString();
    const QRectF inside = place.adjusted(6, 2, -6, -2);
    const QString words = mark + toQt(step.title);
    const auto needed = painter.boundingRect(inside, Qt::TextWordWrap | Qt::AlignLeft, words);
    // The beginning stays in sight; the tip tells the rest.
    const auto upright = needed.height() > inside.height() ? Qt::AlignTop : Qt::AlignVCenter;
    painter.setClipRect(inside);
    painter.drawText(inside, int(Qt::TextWordWrap | Qt::AlignLeft | upright), words);
    painter.setClipping(false);
    font.setStrikeOut(false);
    painter.setFont(font);
}

} // namespace lastrivet::ui
