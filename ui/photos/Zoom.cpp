// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/Zoom.h"

#include <algorithm>
#include <cmath>

namespace lastrivet::ui {

namespace {

constexpr double greatestScale = 8;

/// How far the middle may lie from the middle so that no empty edge shows.
double within(double offset, double picture, double view)
{
    const double room = std::max(0.0, (picture - view) / 2);
    return std::clamp(offset, -room, room);
}

/// A small picture may be smaller than its view; a large one never is.
double leastScale(double wholeScale)
{
    return std::min(wholeScale, 0.5);
}

} // namespace

void Zoom::setPicture(const QSizeF &picture)
{
    m_picture = picture.expandedTo({1, 1});
    showWhole();
}

void Zoom::setView(const QSizeF &view)
{
    m_view = view.expandedTo({1, 1});
    keepInSight();
}

double Zoom::wholeScale() const
{
    return std::min(m_view.width() / m_picture.width(), m_view.height() / m_picture.height());
}

double Zoom::scale() const
{
    return m_isWhole ? wholeScale() : m_scale;
}

void Zoom::showWhole()
{
    m_isWhole = true;
    m_offset = {};
}

void Zoom::zoomTo(double scale, const QPointF &anchor)
{
    const QPointF held = toPicture(anchor);
    const double whole = wholeScale();
    m_scale = std::clamp(scale, leastScale(whole), std::max(greatestScale, whole));
    m_isWhole = std::abs(m_scale - whole) < whole * 0.001;
    if (m_isWhole) {
        showWhole();
        return;
    }
    const QRectF now = place();
    const QPointF lies(now.left() + held.x() * now.width(), now.top() + held.y() * now.height());
    m_offset += anchor - lies;
    keepInSight();
}

void Zoom::moveBy(const QPointF &distance)
{
    m_offset += distance;
    keepInSight();
}

void Zoom::keepInSight()
{
    if (!m_isWhole && m_scale < leastScale(wholeScale()))
        showWhole();
    const QSizeF size = m_picture * scale();
    m_offset = {within(m_offset.x(), size.width(), m_view.width()),
                within(m_offset.y(), size.height(), m_view.height())};
}

QRectF Zoom::place() const
{
    const QSizeF size = m_picture * scale();
    return {(m_view.width() - size.width()) / 2 + m_offset.x(),
            (m_view.height() - size.height()) / 2 + m_offset.y(), size.width(), size.height()};
}

QPointF Zoom::toPicture(const QPointF &inView) const
{
    const QRectF lies = place();
    return {(inView.x() - lies.left()) / lies.width(), (inView.y() - lies.top()) / lies.height()};
}

} // namespace lastrivet::ui
