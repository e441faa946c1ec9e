// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/widgets/AirframeDrawing.h"
#include "ui/widgets/ZoneModel.h"

#include <QAbstractItemView>

namespace lastrivet::ui {

class Theme;

/// The aeroplane from above and from the side, each zone hatched by its state.
///
/// Arrow keys walk through the zones, Enter or a click goes to a zone's part.
class AirframePicture final : public QAbstractItemView {
    Q_OBJECT

public:
    explicit AirframePicture(const Theme &theme, QWidget *parent = nullptr);

    void show(airframe::AircraftKind kind, std::vector<ZoneRow> rows);
    const ZoneModel &zones() const { return *m_model; }
    airframe::AircraftKind kind() const { return m_kind; }

    QRect visualRect(const QModelIndex &index) const override;
    void scrollTo(const QModelIndex &, ScrollHint) override {}
    QModelIndex indexAt(const QPoint &point) const override;
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

Q_SIGNALS:
    /// The zone's part, when it has one.
    void chosen(lastrivet::RecordRef part);
    /// The zone that is pointed at or walked to; none when the mouse leaves.
    void lookedAt(const QModelIndex &zone);

protected:
    QModelIndex moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) override;
    int horizontalOffset() const override { return 0; }
    int verticalOffset() const override { return 0; }
    bool isIndexHidden(const QModelIndex &) const override { return false; }
    void setSelection(const QRect &place, QItemSelectionModel::SelectionFlags flags) override;
    QRegion visualRegionForSelection(const QItemSelection &selection) const override;
    void currentChanged(const QModelIndex &current, const QModelIndex &previous) override;
    void paintEvent(QPaintEvent *event) override;
    void mouseMoveEvent(QMouseEvent *event) override;
    void mouseReleaseEvent(QMouseEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;
    void focusInEvent(QFocusEvent *event) override;
    void focusOutEvent(QFocusEvent *event) override;
    void leaveEvent(QEvent *event) override;

private:
    /// From the drawing's units to the widget's.
    QTransform scaling() const;
    void choose(const QModelIndex &index);
    void hover(const QModelIndex &index);
    void paintRing(QPainter &painter, int row, const QColor &colour, qreal width) const;

    const Theme &m_theme;
    ZoneModel *m_model;
    airframe::AircraftKind m_kind = airframe::AircraftKind::LowWing;
    AirframeDrawing m_drawing;
    QPersistentModelIndex m_hovered;
};

} // namespace lastrivet::ui
