// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/TextTable.h"

#include "app/cli/PlainText.h"

#include <algorithm>

namespace lastrivet::cli {

TextTable::TextTable(std::vector<Column> columns)
    : m_columns(std::move(columns))
{
    for (const Column &column : m_columns)
        m_widths.push_back(widthOf(column.head));
}

void TextTable::add(std::vector<std::string> cells)
{
    cells.resize(m_columns.size());
    for (std::size_t i = 0; i < cells.size(); ++i) {
        cells[i] = shortened(onOneLine(cells[i]), m_columns[i].widest);
        m_widths[i] = std::max(m_widths[i], widthOf(cells[i]));
    }
    m_rows.push_back(std::move(cells));
}

void TextTable::print(std::ostream &out) const
{
    if (m_rows.empty())
        return;
    std::vector<std::string> heads;
    for (const Column &column : m_columns)
        heads.emplace_back(column.head);
    printRow(out, heads);
    for (const auto &row : m_rows)
        printRow(out, row);
}

void TextTable::printRow(std::ostream &out, const std::vector<std::string> &cells) const
{
    std::string line;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const std::string padding(m_widths[i] - widthOf(cells[i]), ' ');
        line += i == 0 ? "" : "  ";
        line += m_columns[i].align == Align::Right ? padding + cells[i] : cells[i] + padding;
    }
    line.erase(line.find_last_not_of(' ') + 1);
    out << line << '\n';
}

} // namespace lastrivet::cli
