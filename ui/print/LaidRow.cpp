// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/LaidRow.h"

#include "ui/print/Pages.h"

#include <QStringList>

#include <algorithm>
#include <utility>

namespace lastrivet::print {

namespace {

constexpr double barWidth = points(2.4);
constexpr double barIndent = barWidth + points(4);

double markWidth(const Table &table, const Table::Cell &cell)
{
    return cell.mark == Mark::None ? 0 : lineHeight(table.size) + points(2);
}

/// Only its first cell counts, and that belongs to no column.
bool isAcross(const Table::Row &row)
{
    return row.is_group || row.is_across;
}

bool hasContent(const Table &table, std::size_t column)
{
    return table.columns[column].is_kept ||
           std::any_of(table.rows.begin(), table.rows.end(), [column](const Table::Row &row) {
               return !isAcross(row) && column < row.cells.size() &&
                      (!row.cells[column].text.isEmpty() || row.cells[column].mark != Mark::None);
           });
}

/// Figures end where the words of the next column would begin: without more room both read as one.
double gapBetween(const Table::Column &left, const Table::Column &right)
{
    constexpr double behindFigures = points(6);
    return betweenColumns + (left.is_right_aligned && !right.is_right_aligned ? behindFigures : 0);
}

double widthOfWord(const Table &table, const QString &word, bool isBold)
{
    constexpr double unbroken = points(1000);
    constexpr double rounding = points(0.5);
    return TextBlock(word, table.size, unbroken, isBold).naturalWidth() + rounding;
}

/// Blanks in front of a name indent all of its lines: its place in a tree is seen by them.
qsizetype blanksBefore(const QString &text)
{
    qsizetype blanks = 0;
    while (blanks < text.size() && text[blanks] == QChar::Nbsp)
        ++blanks;
    return blanks;
}

/// However deep it lies, a name keeps half of its column.
double widthOfBlanks(const Table &table, const Table::Cell &cell, double column)
{
    const qsizetype blanks = blanksBefore(cell.text);
    if (blanks == 0)
        return 0;
    // At the end of a line blanks may have no width.
    const QString letter = QStringLiteral("x");
    const double width = widthOfWord(table, cell.text.left(blanks) + letter, cell.is_bold) -
                         widthOfWord(table, letter, cell.is_bold);
    return std::min(width, column / 2);
}

/// As wide as the longest word of its head, which is not to be cut in two.
double widthOfHead(const Table &table, const Table::Column &column)
{
    double widest = 0;
    for (const QString &word : column.head.split(QLatin1Char(' '), Qt::SkipEmptyParts))
        widest = std::max(widest, widthOfWord(table, word, true));
    return widest;
}

/// The longest word of a column so far.
struct LongestWord {
    qsizetype letters = 0;
    double width = 0;
};

/// Measuring is slow, so words clearly shorter than the longest are passed over; a file's name or a
/// hash is no word that a column should be made wide for.
void lengthen(LongestWord &longest, const Table &table, const Table::Cell &cell, bool isFigure)
{
    constexpr qsizetype mostLetters = 24;
    constexpr qsizetype narrowLetters = 3;
    constexpr double mostWidth = points(95);
    qsizetype from = 0;
    for (qsizetype i = 0; i <= cell.text.size(); ++i) {
        const bool isEnd = i == cell.text.size() || cell.text[i] == QLatin1Char('\n') ||
                           (cell.text[i] == QLatin1Char(' ') && !isFigure);
        if (!isEnd)
            continue;
        const qsizetype letters = i - from;
        if (letters > 0 && letters <= mostLetters && letters + narrowLetters > longest.letters) {
            const double width = markWidth(table, cell) +
                                 widthOfWord(table, cell.text.mid(from, letters), cell.is_bold);
            if (width <= mostWidth)
                longest = {std::max(longest.letters, letters), std::max(longest.width, width)};
        }
        from = i + 1;
    }
}

/// As wide as the longest word in its cells; figures end in a column of their own as they are.
double widthOfWords(const Table &table, std::size_t column)
{
    LongestWord longest;
    for (const Table::Row &row : table.rows) {
        if (!isAcross(row) && column < row.cells.size())
            lengthen(longest, table, row.cells[column], table.columns[column].is_right_aligned);
    }
    return longest.width;
}

/// What a column lacks to its least width it gets from those that have more than theirs; these give
/// so much of that, and keep the rest for the words in them.
void giveLeast(std::vector<ShownColumn> &shown, const std::vector<double> &least, double share)
{
    double lacking = 0;
    double spare = 0;
    for (std::size_t i = 0; i < shown.size(); ++i) {
        lacking += std::max(0.0, least[i] - shown[i].width);
        spare += std::max(0.0, shown[i].width - least[i]);
    }
    if (lacking <= 0 || spare <= 0)
        return;
    const double given = std::min(lacking, spare * share);
    for (std::size_t i = 0; i < shown.size(); ++i) {
        const double more = shown[i].width - least[i];
        shown[i].width -= more > 0 ? more * given / spare : more * given / lacking;
    }
}

/// Shares the width out by the shares of the columns, then sees that no word is cut in two: first
/// of the heads, which all columns need, then of the cells.
void shareOut(const Table &table, std::vector<ShownColumn> &shown, double width)
{
    double shares = 0;
    for (const ShownColumn &column : shown)
        shares += table.columns[column.index].share;
    std::vector<double> least;
    for (ShownColumn &column : shown) {
        column.width = width * table.columns[column.index].share / shares;
        least.push_back(widthOfHead(table, table.columns[column.index]));
    }
    giveLeast(shown, least, 0.5);
    for (std::size_t i = 0; i < shown.size(); ++i)
        least[i] = std::max(least[i], widthOfWords(table, shown[i].index));
    // What is left to the others holds their longest words already.
    giveLeast(shown, least, 0.9);
}

} // namespace

std::vector<ShownColumn> shownColumns(const Table &table, double left, double width)
{
    std::vector<ShownColumn> shown;
    double gaps = 0;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        if (!hasContent(table, i))
            continue;
        if (!shown.empty())
            gaps += gapBetween(table.columns[shown.back().index], table.columns[i]);
        shown.push_back({i, 0, 0});
    }
    const bool hasBars = std::any_of(table.rows.begin(), table.rows.end(),
                                     [](const auto &row) { return row.bar != Table::Bar::None; });
    const double indent = hasBars ? barIndent : 0;
    shareOut(table, shown, width - indent - gaps);
    double x = left + indent;
    for (std::size_t i = 0; i < shown.size(); ++i) {
        shown[i].left = x;
        x += shown[i].width;
        if (i + 1 < shown.size())
            x += gapBetween(table.columns[shown[i].index], table.columns[shown[i + 1].index]);
    }
    return shown;
}

LaidRow::LaidRow(const Table &table, const Table::Row &row, const std::vector<ShownColumn> &columns,
                 const QRectF &body)
    : m_bar(row.bar)
    , m_size(table.size)
{
    if (isAcross(row)) {
        const double indent = row.bar == Table::Bar::None ? 0 : barIndent;
        const bool isBold = row.is_group || row.cells.front().is_bold;
        m_cells.push_back(
            {TextBlock(row.cells.front().text, table.size, body.width() - indent, isBold),
             Mark::None, body.left() + indent, body.left()});
    } else {
        for (const ShownColumn &column : columns) {
            if (column.index >= row.cells.size())
                continue;
            const Table::Cell &cell = row.cells[column.index];
            const double indent = markWidth(table, cell) + widthOfBlanks(table, cell, column.width);
            const bool isRight = table.columns[column.index].is_right_aligned;
            TextBlock text(cell.text.mid(blanksBefore(cell.text)), table.size,
                           column.width - indent, cell.is_bold,
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
    const double height =
        std::max(count * line + 2 * rowPadding, count < lineCount() ? 0 : m_height);
    const QRectF bar(pages.body().left(), pages.y() + points(2), barWidth, height - points(4));
    if (m_bar == Table::Bar::Must)
        painter.fillRect(bar, Qt::black);
    for (double y = bar.top(); m_bar == Table::Bar::Should && y < bar.bottom(); y += points(4))
        painter.fillRect(QRectF(bar.left(), y, barWidth, std::min(points(2), bar.bottom() - y)),
                         Qt::black);
    pages.advance(height);
}

} // namespace lastrivet::print
