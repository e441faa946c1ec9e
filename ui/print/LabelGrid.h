// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/Paper.h"

#include <QRectF>

#include <vector>

namespace lastrivet::print {

/// How labels stand on their sheet, in millimetres from its upper left corner.
struct LabelGrid {
    Paper paper = Paper::A4;
    int columns = 1;
    int rows = 1;
    double width = 0;
    double height = 0;
    double left = 0;
    double top = 0;
    double gap_across = 0;
    double gap_down = 0;

    int count() const { return columns * rows; }
    /// The place of a label in print units, counted from 0 along the rows.
    QRectF place(int index) const;

    friend bool operator==(const LabelGrid &, const LabelGrid &) = default;
};

/// Sizes that are common in the shops of a paper's country, largest labels first. Common practice,
/// no standard: a sheet of plain paper printed first and held against the labels shows whether they
/// fit.
std::vector<LabelGrid> labelGrids(Paper paper);

} // namespace lastrivet::print
