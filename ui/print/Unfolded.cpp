// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/Unfolded.h"

#include "ui/print/LaidRow.h"

#include <algorithm>
#include <cstddef>
#include <utility>
#include <vector>

namespace lastrivet::print {

namespace {

/// How a text begins, up to the end of a word.
QString beginningOf(const QString &text)
{
    constexpr qsizetype most = 90;
    if (text.size() <= most)
        return text;
    const qsizetype space = text.lastIndexOf(QLatin1Char(' '), most);
    qsizetype end = space > 0 ? space : most;
    if (text[end - 1].isHighSurrogate())
        --end;
    return text.left(end) + QStringLiteral(" …");
}

/// Laying out is slow, so a text that is short by its letters is not asked how high it would be.
bool hasManyLetters(const Table::Cell &cell)
{
    constexpr qsizetype fewest = 300;
    return cell.text.size() >= fewest;
}

bool mayUnfold(const Table &table)
{
    return !table.has_grid &&
           std::any_of(table.rows.begin(), table.rows.end(), [](const Table::Row &row) {
               return std::any_of(row.cells.begin(), row.cells.end(), hasManyLetters);
           });
}

bool isLongIn(const Table &table, const Table::Cell &cell, double width)
{
    constexpr double highest = points(230);
    return hasManyLetters(cell) &&
           TextBlock(cell.text, table.size, width, cell.is_bold).height() > highest;
}

/// The row; behind it, each under the head of its column, the texts that are too long for theirs.
void addUnfolded(Table &into, const Table::Row &row, const std::vector<ShownColumn> &columns,
                 double width)
{
    constexpr double mostOfWidth = 0.5;
    const std::size_t place = into.rows.size();
    into.rows.push_back(row);
    // What stands across the table was unfolded before, or a heading is given more room than it
    // needs.
    if (row.is_group || row.is_across)
        return;
    for (const ShownColumn &column : columns) {
        if (column.index >= row.cells.size() || column.width > mostOfWidth * width)
            continue;
        const Table::Cell &cell = row.cells[column.index];
        if (!isLongIn(into, cell, column.width))
            continue;
        into.rows[place].cells[column.index].text = beginningOf(cell.text);
        into.rows[place].is_with_next = true;
        Table::Row head{{{into.columns[column.index].head, Mark::None, true}}, row.bar};
        head.is_with_next = true;
        head.is_across = true;
        Table::Row text{{{cell.text}}, row.bar};
        text.is_across = true;
        into.rows.push_back(std::move(head));
        into.rows.push_back(std::move(text));
    }
}

} // namespace

Table unfolded(const Table &table, double width)
{
    if (!mayUnfold(table))
        return table;
    const std::vector<ShownColumn> columns = shownColumns(table, 0, width);
    Table all{table.columns, {}, table.size, table.has_grid, table.kept_behind};
    for (const Table::Row &row : table.rows)
        addUnfolded(all, row, columns, width);
    return all;
}

} // namespace lastrivet::print
