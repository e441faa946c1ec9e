// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/Table.h"

#include "ui/print/LaidRow.h"
#include "ui/print/Pages.h"
#include "ui/print/Unfolded.h"

#include <algorithm>
#include <optional>

namespace lastrivet::print {

namespace {

constexpr double headRule = points(0.8);
constexpr double groupRule = points(0.5);
/// Either paper holds such a row below a heading and the table's head; a higher one is cut.
constexpr double highestWholeRow = points(560);
/// Of a row that is cut, what stands below the table's head or the row before it.
constexpr double leastOfCutRow = points(240);
/// A row that names others is not said again where that would take much of the next page.
constexpr double highestRowSaidAgain = points(60);

/// A heading with one row below it at the foot of a page reads as if that were all; so low, two
/// rows stand there or none.
constexpr double highestOfFirstTwo = points(60);

/// Of a text across the table, which is cut wherever a page ends: some lines.
constexpr double leastOfAcross = points(40);

/// None above a text that belongs to the row.
double ruleBelow(const Table &table, std::size_t row)
{
    if (row + 1 < table.rows.size() && table.rows[row + 1].is_across)
        return 0;
    return table.rows[row].is_group ? groupRule : points(0.25);
}

double leastOf(const Table &table, std::size_t row, double height)
{
    const bool isKept = row + 1 == table.rows.size() && table.kept_behind > 0;
    if (table.rows[row].is_across && !isKept)
        return std::min(height, leastOfAcross);
    return height > highestWholeRow ? leastOfCutRow : height;
}

/// What must stand on one page with a row: a row that names or leads to others must not stand alone
/// at the foot of a page, nor the first one, nor the last row, which often is a sum, at the top of
/// one; nor what is kept behind the table.
template <class HeightOf>
double keptBelow(const Table &table, std::size_t row, const HeightOf &heightOf)
{
    const std::size_t next = row + 1;
    if (next == table.rows.size())
        return heightOf(row) + table.kept_behind <= highestWholeRow ? table.kept_behind : 0;
    const bool isBeforeLast = row > 0 && next + 1 == table.rows.size();
    const bool isFirstOfTwo =
        row == 0 && heightOf(row) <= highestOfFirstTwo && heightOf(next) <= highestOfFirstTwo;
    if (!table.rows[row].is_group && !table.rows[row].is_with_next && !isBeforeLast &&
        !isFirstOfTwo)
        return 0;
    const double following = ruleBelow(table, row) + leastOf(table, next, heightOf(next));
    const double all = following + keptBelow(table, next, heightOf);
    return all <= highestWholeRow ? all : following;
}

Table::Row headRow(const Table &table)
{
    Table::Row head;
    for (const Table::Column &column : table.columns)
        head.cells.push_back({column.head, Mark::None, true});
    return head;
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
    LaidRow laid(std::size_t row) const
    {
        return {m_table, m_table.rows[row], m_columns, m_pages.body()};
    }
    void drawHead();
    /// Notes the row as the one that names those below it.
    void keepGroup(std::size_t row);
    void drawRow(std::size_t row);
    void drawInPieces(const LaidRow &row);
    void startOnNextPage();
    void drawGrid();

    Pages &m_pages;
    const Table &m_table;
    std::vector<ShownColumn> m_columns;
    LaidRow m_head;
    /// What names the row that is drawn, as it is said again where a page ends between them.
    std::optional<LaidRow> m_groupAgain;
    double m_gridTop = 0;
};

void TableOnPages::drawHead()
{
    m_gridTop = m_pages.y();
    m_head.drawWhole(m_pages);
    m_pages.rule(headRule);
}

void TableOnPages::keepGroup(std::size_t row)
{
    Table::Row again = m_table.rows[row];
    QString &name = again.cells.front().text;
    name = m_pages.wording().text("{0}, continued", {name.toStdString()});
    m_groupAgain.emplace(m_table, again, m_columns, m_pages.body());
    if (m_groupAgain->height() > highestRowSaidAgain)
        m_groupAgain.reset();
}

void TableOnPages::startOnNextPage()
{
    drawGrid();
    m_pages.breakPage();
    drawHead();
    if (!m_groupAgain)
        return;
    m_groupAgain->drawWhole(m_pages);
    m_pages.rule(groupRule);
}

void TableOnPages::drawGrid()
{
    if (!m_table.has_grid)
        return;
    QPainter &painter = m_pages.painter();
    painter.setPen(QPen(Qt::black, points(0.4)));
    for (std::size_t i = 1; i < m_columns.size(); ++i) {
        const double x = m_columns[i].left - betweenColumns / 2;
        painter.drawLine(QLineF(x, m_gridTop, x, m_pages.y()));
    }
}

void TableOnPages::drawInPieces(const LaidRow &row)
{
    const double line = lineHeight(m_table.size);
    int drawn = 0;
    while (drawn < row.lineCount()) {
        const int fitting = int((m_pages.spaceLeft() - 2 * rowPadding) / line);
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
    const bool isGroup = m_table.rows[index].is_group;
    if (isGroup)
        m_groupAgain.reset();
    const LaidRow row = laid(index);
    const double said = m_groupAgain ? m_groupAgain->height() + groupRule : 0;
    const double wholePage = m_pages.body().height() - m_head.height() - points(1) - said;
    const bool isAcross = m_table.rows[index].is_across;
    const bool isTooTall = row.height() > std::min(wholePage, highestWholeRow);
    const double own = isAcross ? leastOf(m_table, index, row.height()) : row.height();
    double needed =
        own + keptBelow(m_table, index, [this](std::size_t i) { return laid(i).height(); });
    if (needed > wholePage)
        needed = own;
    if ((isAcross || !isTooTall) && needed > m_pages.spaceLeft())
        startOnNextPage();
    if (isAcross || isTooTall)
        drawInPieces(row);
    else
        row.drawWhole(m_pages);
    if (const double weight = ruleBelow(m_table, index); weight > 0)
        m_pages.rule(weight);
    if (isGroup)
        keepGroup(index);
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
    if (table.rows.empty())
        return;
    const Table shown = unfolded(table, pages.body().width());
    TableOnPages(pages, shown).draw();
}

double leastHeightOf(const Table &asked, double width)
{
    if (asked.rows.empty())
        return 0;
    const Table table = unfolded(asked, width);
    const QRectF body(0, 0, width, 0);
    const std::vector<ShownColumn> columns = shownColumns(table, 0, width);
    const double head = LaidRow(table, headRow(table), columns, body).height() + points(1);
    const auto heightOf = [&](std::size_t row) {
        return LaidRow(table, table.rows[row], columns, body).height();
    };
    return head + leastOf(table, 0, heightOf(0)) + keptBelow(table, 0, heightOf);
}

double wholeHeightOf(const Table &asked, double width)
{
    if (asked.rows.empty())
        return 0;
    const Table table = unfolded(asked, width);
    const QRectF body(0, 0, width, 0);
    const std::vector<ShownColumn> columns = shownColumns(table, 0, width);
    double height = LaidRow(table, headRow(table), columns, body).height() + headRule;
    for (std::size_t row = 0; row < table.rows.size(); ++row)
        height += LaidRow(table, table.rows[row], columns, body).height() + ruleBelow(table, row);
    return height;
}

QString inTree(const QString &name, int depth)
{
    constexpr int step = 3;
    // Ordinary spaces at the front of a line would be dropped.
    return QString(step * depth, QChar(QChar::Nbsp)) + name;
}

} // namespace lastrivet::print
