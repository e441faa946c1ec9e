// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/airframe/AircraftKind.h"
#include "core/airframe/Zone.h"

#include <QPainterPath>
#include <QSizeF>

#include <vector>

namespace lastrivet::ui {

/// One of our drawings of an aeroplane: each zone as seen from above and from the side.
class AirframeDrawing {
public:
    /// A zone in one of the two views.
    struct Shape {
        airframe::Zone zone;
        QPainterPath path;
    };

    /// Reads resources/airframes, whose paths keep to M, L, C and Z with absolute coordinates.
    explicit AirframeDrawing(airframe::AircraftKind kind);

    QSizeF size() const { return m_size; }
    /// In the order of drawing: what comes later lies on top.
    const std::vector<Shape> &shapes() const { return m_shapes; }
    /// What belongs to no zone: propeller, struts, legs.
    const QPainterPath &lines() const { return m_lines; }

    /// The file of a drawing.
    static QString file(airframe::AircraftKind kind);

private:
    QSizeF m_size;
    std::vector<Shape> m_shapes;
    QPainterPath m_lines;
};

} // namespace lastrivet::ui
