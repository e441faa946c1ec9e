// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/WeightReport.h"

#include <QColor>
#include <QFont>
#include <QString>

#include <functional>
#include <vector>

class QPainter;
class QRectF;

namespace lastrivet::print {

/// A weight and centre of gravity in the picture, with a short sign that a table explains.
struct EnvelopePoint {
    /// Told apart by shape, so that a photocopy still says it.
    enum class Shape { Empty, Case, Forward, Aft };

    QString sign;
    double weight = 0;
    double arm = 0;
    Shape shape = Shape::Case;
};

/// The limits of weight and centre of gravity with what lies in them: arms to the right, weights
/// upwards.
struct EnvelopePlot {
    std::vector<balance::Item> corners;
    std::vector<EnvelopePoint> points;
    QString arm_title;
    QString weight_title;
    std::function<QString(double)> number;
};

/// How it looks on this paper or screen.
struct EnvelopeLook {
    QColor ink;
    QColor quiet;
    QColor fill;
    QFont font;
    double pen = 1;
};

/// Corners, empty weight, cases numbered in their order, and both extremes of a report.
EnvelopePlot envelopePlot(const packet::WeightReport &report);
/// The sign of a case in the picture: its number.
QString signOfCase(std::size_t index);

/// Nothing is drawn when there is nothing to draw, or figures are too large to lie on an axis.
void paintEnvelope(QPainter &painter, const QRectF &place, const EnvelopePlot &plot,
                   const EnvelopeLook &look);

} // namespace lastrivet::print
