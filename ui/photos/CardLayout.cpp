// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/CardLayout.h"

#include <algorithm>

namespace lastrivet::ui {

void CardLayout::arrange(const std::vector<Span> &sections, const QSize &card, int headingHeight,
                         int width)
{
    m_card = card.expandedTo({1, 1});
    m_heading = headingHeight;
    m_width = width;
    m_columns = std::max(1, width / m_card.width());
    m_blocks.clear();
    m_height = 0;
    int line = 0;
    for (const Span &span : sections) {
        m_blocks.push_back({span, m_height, line});
        const int lines = linesIn(m_blocks.back());
        m_height += m_heading + lines * m_card.height();
        line += lines;
    }
}

int CardLayout::linesIn(const Block &block) const
{
    return (block.span.count + m_columns - 1) / m_columns;
}

int CardLayout::rowCount() const
{
    return m_blocks.empty() ? 0 : m_blocks.back().span.first + m_blocks.back().span.count;
}

int CardLayout::sectionOf(int row) const
{
    const auto after = std::ranges::upper_bound(
        m_blocks, row, {}, [](const Block &block) { return block.span.first; });
    return int(after - m_blocks.begin()) - 1;
}

int CardLayout::sectionAt(int y) const
{
    const auto after = std::ranges::upper_bound(m_blocks, y, {}, &Block::top);
    return std::max(0, int(after - m_blocks.begin()) - 1);
}

QRect CardLayout::card(int row) const
{
    if (row < 0 || row >= rowCount())
        return {};
    const Block &block = blockOf(row);
    const int place = row - block.span.first;
    return {QPoint(place % m_columns * m_card.width(),
                   block.top + m_heading + place / m_columns * m_card.height()),
            m_card};
}

QRect CardLayout::heading(int section) const
{
    return {0, m_blocks[std::size_t(section)].top, m_width, m_heading};
}

int CardLayout::nearestRow(const QPoint &point) const
{
    if (m_blocks.empty())
        return -1;
    const Block &block = m_blocks[std::size_t(sectionAt(point.y()))];
    const int line =
        std::clamp((point.y() - block.top - m_heading) / m_card.height(), 0, linesIn(block) - 1);
    const int column = std::clamp(point.x() / m_card.width(), 0, m_columns - 1);
    return block.span.first + std::min(line * m_columns + column, block.span.count - 1);
}

int CardLayout::rowAt(const QPoint &point) const
{
    const int row = nearestRow(point);
    return row >= 0 && card(row).contains(point) ? row : -1;
}

CardLayout::Span CardLayout::rowsBetween(int top, int bottom) const
{
    const int first = nearestRow({0, top});
    const int last = nearestRow({m_width, bottom});
    return first < 0 ? Span{} : Span{first, last - first + 1};
}

int CardLayout::lineOf(int row) const
{
    const Block &block = blockOf(row);
    return block.line + (row - block.span.first) / m_columns;
}

int CardLayout::moved(int row, int lines) const
{
    const int column = (row - blockOf(row).span.first) % m_columns;
    const Block &last = m_blocks.back();
    const int line = std::clamp(lineOf(row) + lines, 0, last.line + linesIn(last) - 1);
    const auto after = std::ranges::upper_bound(m_blocks, line, {}, &Block::line);
    const Block &block = *(after - 1);
    const int place = (line - block.line) * m_columns + column;
    return block.span.first + std::min(place, block.span.count - 1);
}

} // namespace lastrivet::ui
