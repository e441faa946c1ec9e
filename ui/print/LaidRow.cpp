// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/LaidRow.h"

#include "ui/print/Pages.h"

#include <algorithm>
#include <utility>

namespace lastrivet::print {

namespace {

constexpr double barWidth = points(2.4);

double markWidth(const Table &table, const Table::Cell &cell)
{
    return cell.mark == Mark::None ? 0 : lineHeight(table.size) + points(2);
}

bool hasContent(const Table &table, std::size_t column)
{
    return table.columns[column].is_kept ||
           std::any_of(table.rows.begin(), table.rows.end(), [column](const Table::Row &row) {
               return !row.is_group && column < row.cells.size() &&
                      (!row.cells[column].text.isEmpty() ||
                       row.cells[column].mark != Mark::None);
           });
}

} // namespace

std::vector<ShownColumn> shownColumns(const Table &table, double left, double width)
{
    std::vector<ShownColumn> shown;
    double shares = 0;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        if (!hasContent(table, i))
            continue;
        shown.push_back({i, 0, 0});
        shares += table.columns[i].share;
    }
    const bool hasBars = std::any_of(table.rows.begin(), table.rows.end(), [](const auto &row) {
        return row.bar != Table::Bar::None;
    });
    const double indent = hasBars ? barWidth + points(4) : 0;
    const double free = width - indent - betweenColumns * double(shown.size() - 1);
    double x = left + indent;
    for (ShownColumn &column : shown) {
        column.left = x;
        column.width = free * table.columns[column.index].share / shares;
        x += column.width + betweenColumns;
    }
    return shown;
}

LaidRow::LaidRow(const Table &table, const Table::Row &row, const std::vector<ShownColumn> &columns,
                 const QRectF &body)
    : m_bar(row.bar)
    , m_size(table.size)
{
    if (row.is_group) {
        m_cells.push_back({TextBlock(row.cells.front().text, table.size, body.width(), true),
                           Mark::None, body.left(), body.left()});
    } else {
        for (const ShownColumn &column : columns) {
            if (column.index >= row.cells.size())
                continue;
            const Table::Cell &cell = row.cells[column.index];
            const double indent = markWidth(table, cell);
            const bool isRight = table.columns[column.index].is_right_aligned;
            TextBlock text(cell.text, table.size, column.width - indent, cell.is_bold,
                           isRight ? Qt::AlignRight : Qt::AlignLeft);
            const double markLeft =
                column.left + (isRight ? column.width - indent - text.naturalWidth() : 0);
            m_cells.push_back({std::move(text), cell.mark, column.left + indent, markLeft});
        }
    }
    m_height = std::max(lineCount() * lineHeight(m_size) + 2 * rowPadding, row.least_height);
}

int LaidRow::lineCount() const
{
    int lines = 1;
    for (const LaidCell &cell : m_cells)
        lines = std::max(lines, cell.text.lineCount());
    return lines;
}

void LaidRow::draw(Pages &pages, int first, int count) const
{
    QPainter &painter = pages.painter();
    const double line = lineHeight(m_size);
    const double top = pages.y() + rowPadding;
    painter.setPen(Qt::black);
    for (const LaidCell &cell : m_cells) {
        cell.text.drawLines(painter, {cell.left, top}, first, count);
        if (first == 0)
            drawMark(painter, cell.mark,
                     QRectF(cell.markLeft, top + line * 0.1, line * 0.8, line * 0.8));
    }
    const double height = std::max(count * line + 2 * rowPadding, count < lineCount() ? 0 : m_height);
    const QRectF bar(pages.body().left(), pages.y() + points(2), barWidth, height - points(4));
    if (m_bar == Table::Bar::Must)
        painter.fillRect(bar, Qt::black);
    for (double y = bar.top(); m_bar == Table::Bar::Should && y < bar.bottom(); y += points(4))
        painter.fillRect(QRectF(bar.left(), y, barWidth, std::min(points(2), bar.bottom() - y)),
                         Qt::black);
    pages.advance(height);
}

} // namespace lastrivet::print
