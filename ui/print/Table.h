// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/Mark.h"
#include "ui/print/Type.h"

#include <QString>

#include <vector>

namespace lastrivet::print {

class Pages;

/// A table as it is to be printed: the head is repeated on every page, and so is the row that names
/// those which go on there; no row is cut unless it takes most of a page, and a column without
/// content is left out. A text that would run down a narrow column for half a page and more only
/// begins there, and stands whole below its row, across the table.
struct Table {
    struct Column {
        QString head;
        /// Share of the width among the columns that are shown.
        double share = 1;
        bool is_right_aligned = false;
        /// Kept even when all its cells are empty: a column to write in.
        bool is_kept = false;
    };
    struct Cell {
        QString text;
        Mark mark = Mark::None;
        bool is_bold = false;
    };
    enum class Bar { None, Must, Should };
    struct Row {
        std::vector<Cell> cells;
        Bar bar = Bar::None;
        /// A row that names the rows below it, across the whole width: only its first cell counts.
        bool is_group = false;
        /// Room to write in by hand, in print units.
        double least_height = 0;
        /// Not to be torn from the row below it, which it leads to.
        bool is_with_next = false;
        /// A text across the whole width that belongs to the row above: only its first cell counts.
        bool is_across = false;
    };

    std::vector<Column> columns;
    std::vector<Row> rows;
    Size size = Size::Small;
    /// Lines between the columns, for tables that are filled in by hand.
    bool has_grid = false;
    /// Height of what follows the table and must not stand without its last rows on the next page.
    double kept_behind = 0;
};

void drawTable(Pages &pages, const Table &table);
/// Height of the head and the first row, or two low ones, of a row to be cut a part: what must not
/// be torn from a heading above.
double leastHeightOf(const Table &table, double width);
/// Height of the whole table where no page ends within it.
double wholeHeightOf(const Table &table, double width);
/// A name for a cell, as far to the right as it lies deep in its tree.
QString inTree(const QString &name, int depth);

} // namespace lastrivet::print
