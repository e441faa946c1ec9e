// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPointF>
#include <QRectF>
#include <QSizeF>

namespace lastrivet::ui {

/// How a picture lies in a view: whole, or enlarged and moved, but never out of sight.
///
/// Places on the picture go from 0 to 1 in both directions, as marks keep them.
class Zoom {
public:
    /// `picture` in its own pixels, `view` in those of the screen.
    void setPicture(const QSizeF &picture);
    void setView(const QSizeF &view);

    bool isWhole() const { return m_isWhole; }
    /// Screen pixels per pixel of the picture.
    double scale() const;
    void showWhole();
    /// The place under `anchor` stays where it is.
    void zoomTo(double scale, const QPointF &anchor);
    void zoomBy(double factor, const QPointF &anchor) { zoomTo(scale() * factor, anchor); }
    void moveBy(const QPointF &distance);

    /// Where the whole picture lies, in pixels of the view.
    QRectF place() const;
    QPointF toPicture(const QPointF &inView) const;

private:
    double wholeScale() const;
    void keepInSight();

    QSizeF m_picture{1, 1};
    QSizeF m_view{1, 1};
    bool m_isWhole = true;
    double m_scale = 1;
    /// The middle of the picture, seen from the middle of the view.
    QPointF m_offset;
};

} // namespace lastrivet::ui
