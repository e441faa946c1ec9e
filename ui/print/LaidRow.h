// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/Measures.h"
#include "ui/print/Table.h"
#include "ui/print/TextBlock.h"

#include <QRectF>

#include <cstddef>
#include <vector>

namespace lastrivet::print {

inline constexpr double rowPadding = points(3);
inline constexpr double betweenColumns = points(7);

/// A column that has something to show, with its place on the paper.
struct ShownColumn {
    std::size_t index;
    double left;
    double width;
};

std::vector<ShownColumn> shownColumns(const Table &table, double left, double width);

/// One row broken into lines.
class LaidRow {
public:
    LaidRow(const Table &table, const Table::Row &row, const std::vector<ShownColumn> &columns,
            const QRectF &body);

    double height() const { return m_height; }
    int lineCount() const;
    void draw(Pages &pages, int first, int count) const;
    void drawWhole(Pages &pages) const { draw(pages, 0, lineCount()); }

private:
    /// A cell broken into lines, beside its mark.
    struct LaidCell {
        TextBlock text;
        Mark mark;
        double left;
        double markLeft;
    };

    std::vector<LaidCell> m_cells;
    Table::Bar m_bar;
    Size m_size;
    double m_height = 0;
};

} // namespace lastrivet::print
