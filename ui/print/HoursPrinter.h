// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/Aircraft.h"
#include "ui/print/Document.h"
#include "ui/print/FigureTable.h"

#include <QStringList>

#include <functional>
#include <vector>

namespace lastrivet::print {

/// A paper about hours: what it says, a chart, and the table with its figures.
struct HoursReport {
    packet::Aircraft aircraft;
    std::vector<Profile::Caution> cautions;
    QString title;
    QStringList sentences;
    /// Fills the place, in black on white; nothing for a table alone.
    std::function<void(QPainter &, const QRectF &)> draw_chart;
    FigureTable table;
};

/// Prints it; see `printDocument`.
std::optional<Printed> printHours(const HoursReport &report, const Imprint &imprint,
                                  const Choices &choices, const std::filesystem::path &place,
                                  const OnPercent &onPercent = {});

} // namespace lastrivet::print
