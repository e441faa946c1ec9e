// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/Table.h"

#include "ui/print/Pages.h"

#include <algorithm>
#include <utility>

namespace lastrivet::print {

namespace {

constexpr double padding = points(3);
constexpr double between = points(7);
constexpr double barWidth = points(2.4);

/// The columns that have something to show, with their places on the paper.
struct Shown {
    std::size_t index;
    double left;
    double width;
};

bool hasContent(const Table &table, std::size_t column)
{
    return table.columns[column].is_kept ||
           std::any_of(table.rows.begin(), table.rows.end(), [column](const Table::Row &row) {
               return !row.is_group && column < row.cells.size() &&
                      (!row.cells[column].text.isEmpty() ||
                       row.cells[column].mark != Mark::None);
           });
}

std::vector<Shown> shownColumns(const Table &table, double left, double width)
{
    std::vector<Shown> shown;
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
    const double free = width - indent - between * double(shown.size() - 1);
    double x = left + indent;
    for (Shown &column : shown) {
        column.left = x;
        column.width = free * table.columns[column.index].share / shares;
        x += column.width + between;
    }
    return shown;
}

/// A cell broken into lines, beside its mark.
struct LaidCell {
    TextBlock text;
    Mark mark;
    double left;
    double markLeft;
};

double markWidth(const Table &table, const Table::Cell &cell)
{
    return cell.mark == Mark::None ? 0 : lineHeight(table.size) + points(2);
}

/// One row broken into lines.
class LaidRow {
public:
    LaidRow(const Table &table, const Table::Row &row, const std::vector<Shown> &columns,
            const QRectF &body);

    double height() const { return m_height; }
    int lineCount() const;
    void draw(Pages &pages, int first, int count) const;
    void drawWhole(Pages &pages) const { draw(pages, 0, lineCount()); }

private:
    std::vector<LaidCell> m_cells;
    Table::Bar m_bar;
    Size m_size;
    double m_height = 0;
};

LaidRow::LaidRow(const Table &table, const Table::Row &row, const std::vector<Shown> &columns,
                 const QRectF &body)
    : m_bar(row.bar)
    , m_size(table.size)
{
    if (row.is_group) {
        m_cells.push_back({TextBlock(row.cells.front().text, table.size, body.width(), true),
                           Mark::None, body.left(), body.left()});
    } else {
        for (const Shown &column : columns) {
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
    m_height = std::max(lineCount() * lineHeight(m_size) + 2 * padding, row.least_height);
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
    const double top = pages.y() + padding;
    painter.setPen(Qt::black);
    for (const LaidCell &cell : m_cells) {
        cell.text.drawLines(painter, {cell.left, top}, first, count);
        if (first == 0)
            drawMark(painter, cell.mark,
                     QRectF(cell.markLeft, top + line * 0.1, line * 0.8, line * 0.8));
    }
    const double height = std::max(count * line + 2 * padding, count < lineCount() ? 0 : m_height);
    const QRectF bar(pages.body().left(), pages.y() + points(2), barWidth, height - points(4));
    if (m_bar == Table::Bar::Must)
        painter.fillRect(bar, Qt::black);
    for (double y = bar.top(); m_bar == Table::Bar::Should && y < bar.bottom(); y += points(4))
        painter.fillRect(QRectF(bar.left(), y, barWidth, std::min(points(2), bar.bottom() - y)),
                         Qt::black);
    pages.advance(height);
}

class TableOnPages {
public:
    TableOnPages(Pages &pages, const Table &table)
        : m_pages(pages)
        , m_table(table)
        , m_columns(shownColumns(table, pages.body().left(), pages.body().width()))
        , m_head(table, headRow(table), m_columns, pages.body())
    {
    }

    void draw();

private:
    static Table::Row headRow(const Table &table);
    LaidRow laid(std::size_t row) const
    {
        return {m_table, m_table.rows[row], m_columns, m_pages.body()};
    }
    double keptWith(std::size_t row) const;
    void drawHead();
    void drawRow(std::size_t row);
    void drawInPieces(const LaidRow &row);
    void startOnNextPage();
    void drawGrid();

    Pages &m_pages;
    const Table &m_table;
    std::vector<Shown> m_columns;
    LaidRow m_head;
    double m_gridTop = 0;
};

Table::Row TableOnPages::headRow(const Table &table)
{
    Table::Row head;
    for (const Table::Column &column : table.columns)
        head.cells.push_back({column.head, Mark::None, true});
    return head;
}

void TableOnPages::drawHead()
{
    m_gridTop = m_pages.y();
    m_head.drawWhole(m_pages);
    m_pages.rule(points(0.8));
}

/// A group row must not stand alone at the foot of a page.
double TableOnPages::keptWith(std::size_t row) const
{
    return m_table.rows[row].is_group && row + 1 < m_table.rows.size() ? laid(row + 1).height() : 0;
}

void TableOnPages::startOnNextPage()
{
    drawGrid();
    m_pages.breakPage();
    drawHead();
}

void TableOnPages::drawGrid()
{
    if (!m_table.has_grid)
        return;
    QPainter &painter = m_pages.painter();
    painter.setPen(QPen(Qt::black, points(0.4)));
    for (std::size_t i = 1; i < m_columns.size(); ++i) {
        const double x = m_columns[i].left - between / 2;
        painter.drawLine(QLineF(x, m_gridTop, x, m_pages.y()));
    }
}

void TableOnPages::drawInPieces(const LaidRow &row)
{
    const double line = lineHeight(m_table.size);
    int drawn = 0;
    while (drawn < row.lineCount()) {
        const int fitting = int((m_pages.spaceLeft() - 2 * padding) / line);
        if (fitting < 1) {
            startOnNextPage();
            continue;
        }
        const int count = std::min(fitting, row.lineCount() - drawn);
        row.draw(m_pages, drawn, count);
        drawn += count;
    }
}

void TableOnPages::drawRow(std::size_t index)
{
    const LaidRow row = laid(index);
    const double wholePage = m_pages.body().height() - m_head.height() - points(1);
    const bool isTooTall = row.height() > wholePage;
    if (!isTooTall && row.height() + keptWith(index) > m_pages.spaceLeft())
        startOnNextPage();
    if (isTooTall)
        drawInPieces(row);
    else
        row.drawWhole(m_pages);
    m_pages.rule(m_table.rows[index].is_group ? points(0.5) : points(0.25));
}

void TableOnPages::draw()
{
    if (m_columns.empty())
        return;
    m_pages.need(leastHeightOf(m_table, m_pages.body().width()));
    drawHead();
    for (std::size_t row = 0; row < m_table.rows.size(); ++row)
        drawRow(row);
    drawGrid();
}

} // namespace

void drawTable(Pages &pages, const Table &table)
{
    if (!table.rows.empty())
        TableOnPages(pages, table).draw();
}

double leastHeightOf(const Table &table, double width)
{
    if (table.rows.empty())
        return 0;
    const QRectF body(0, 0, width, 0);
    const std::vector<Shown> columns = shownColumns(table, 0, width);
    const double head = lineHeight(table.size) + 2 * padding + points(1);
    double rows = LaidRow(table, table.rows.front(), columns, body).height();
    if (table.rows.front().is_group && table.rows.size() > 1)
        rows += LaidRow(table, table.rows[1], columns, body).height();
    constexpr double mostKept = points(240);
    return head + std::min(rows, mostKept);
}

} // namespace lastrivet::print
