// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPoint>
#include <QRect>
#include <QSize>

#include <vector>

namespace lastrivet::ui {

/// Where cards of one size stand under their headings: sums over sections, never over cards.
class CardLayout {
public:
    struct Span {
        int first = 0;
        int count = 0;
    };

    /// `sections` cover all rows in order.
    void arrange(const std::vector<Span> &sections, const QSize &card, int headingHeight,
                 int width);

    int height() const { return m_height; }
    int rowCount() const;
    QRect card(int row) const;
    QRect heading(int section) const;
    int sectionCount() const { return int(m_blocks.size()); }
    int sectionOf(int row) const;
    int firstRow(int section) const { return m_blocks[std::size_t(section)].span.first; }

    /// The row whose card holds the point, or -1.
    int rowAt(const QPoint &point) const;
    /// The row whose card is nearest, reading like a text; -1 without rows.
    int nearestRow(const QPoint &point) const;
    /// The rows whose cards are between two heights.
    Span rowsBetween(int top, int bottom) const;
    /// The row above or below by so many lines of cards, as near as there is one.
    int moved(int row, int lines) const;

private:
    struct Block {
        Span span;
        int top = 0;
        int line = 0;
    };

    int lineOf(int row) const;
    int linesIn(const Block &block) const;
    const Block &blockOf(int row) const { return m_blocks[std::size_t(sectionOf(row))]; }
    /// The last section that begins at or above this height.
    int sectionAt(int y) const;

    std::vector<Block> m_blocks;
    QSize m_card{1, 1};
    int m_heading = 0;
    int m_columns = 1;
    int m_width = 0;
    int m_height = 0;
};

} // namespace lastrivet::ui
