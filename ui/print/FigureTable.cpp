// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/FigureTable.h"

namespace lastrivet::print {

Table printed(const FigureTable &table)
{
    Table onPaper;
    for (const QString &head : table.heads) {
        const bool isFirst = onPaper.columns.empty();
        onPaper.columns.push_back({head, isFirst ? 4.0 : 1.5, !isFirst});
    }
    for (const auto &row : table.rows) {
        Table::Row line;
        for (const QString &cell : row.cells)
            line.cells.push_back(
                {line.cells.empty() ? inTree(cell, row.depth) : cell, Mark::None, row.is_bold});
        line.cells.resize(onPaper.columns.size());
        onPaper.rows.push_back(std::move(line));
    }
    return onPaper;
}

} // namespace lastrivet::print
