// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Media.h"

#include <QFont>
#include <QPointF>
#include <QRectF>

#include <optional>
#include <vector>

class QPainter;

namespace lastrivet::ui {

struct Colours;

/// What is held of a mark: one of its points, or the whole when `point` is -1.
struct Grip {
    int mark = -1;
    int point = -1;

    friend bool operator==(const Grip &, const Grip &) = default;
};

/// Marks over a picture on the screen, as they are printed: black with a white edge.
class MarkPainter {
public:
    /// The picture lies in `place`.
    MarkPainter(const std::vector<Media::Annotation> &marks, const QRectF &place,
                const QFont &font);

    /// The chosen mark is drawn in the accent colour, with its points.
    void draw(QPainter &painter, int chosen, const Colours &colours) const;
    /// What lies under a place of the view; points count for the chosen mark only.
    std::optional<Grip> gripAt(const QPointF &point, int chosen) const;

private:
    QRectF wordsBox(const Media::Annotation &mark) const;
    bool isAt(const Media::Annotation &mark, const QPointF &point) const;

    const std::vector<Media::Annotation> &m_marks;
    QRectF m_place;
    QFont m_font;
};

} // namespace lastrivet::ui
