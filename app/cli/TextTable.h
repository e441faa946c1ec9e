// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <ostream>
#include <string>
#include <string_view>
#include <vector>

namespace lastrivet::cli {

/// Rows of texts in columns as wide as their widest cell, two spaces apart.
class TextTable {
public:
    enum class Align { Left, Right };
    struct Column {
        std::string_view head;
        Align align = Align::Left;
        /// Longer cells are cut off.
        std::size_t widest = 60;
    };

    explicit TextTable(std::vector<Column> columns);

    /// One cell per column.
    void add(std::vector<std::string> cells);
    /// With a head line; nothing at all when there are no rows.
    void print(std::ostream &out) const;

private:
    void printRow(std::ostream &out, const std::vector<std::string> &cells) const;

    std::vector<Column> m_columns;
    std::vector<std::size_t> m_widths;
    std::vector<std::vector<std::string>> m_rows;
};

} // namespace lastrivet::cli
