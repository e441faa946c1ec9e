// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Minutes.h"

#include <QPointF>
#include <QString>
#include <QStringList>

#include <chrono>
#include <vector>

namespace lastrivet::print {

/// How a curve or bar is told from others, without colour: filled, hatched, in outline, as a drawn
/// line or a dashed one.
enum class ChartLook { Filled, Hatched, Outlined, Line, Dashed, Marked };

/// What a chart shows, as figures: bars by name, or curves and bands over days. Heights are hours.
struct ChartPlan {
    struct Bars {
        QString name;
        ChartLook look = ChartLook::Filled;
        /// One per name.
        std::vector<double> hours;
    };
    /// Points lie at days since 1970, from left to right.
    struct Curve {
        QString name;
        ChartLook look = ChartLook::Line;
        std::vector<QPointF> points;
    };
    /// Between two curves over the same days.
    struct Band {
        QString name;
        ChartLook look = ChartLook::Hatched;
        std::vector<QPointF> lower;
        std::vector<QPointF> upper;
    };

    /// What it shows, in a few words and in a sentence with its most telling figures.
    QString title;
    QString summary;
    QStringList names;
    std::vector<Bars> bars;
    std::vector<Curve> curves;
    std::vector<Band> bands;
    /// What the heights count.
    QString unit;

    bool isEmpty() const { return bars.empty() && curves.empty() && bands.empty(); }
};

/// As `ChartPlan` has them.
inline double inHours(Minutes minutes)
{
    return double(minutes.count()) / 60;
}
inline double onAxis(std::chrono::sys_days day)
{
    return double(day.time_since_epoch().count());
}

} // namespace lastrivet::print
