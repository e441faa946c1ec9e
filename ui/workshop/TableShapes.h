// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/workshop/Quantities.h"

#include <span>
#include <string_view>

namespace lastrivet::ui {

/// How a column of a workshop table is shown.
struct ColumnShape {
    /// In English; translated in the context "Workshop".
    const char *head;
    std::string_view column;
    workshop::Quantity quantity = workshop::Quantity::Number;
    /// The column of the upper end, where two make one span.
    std::string_view upto{};
    /// A rule or basis with words of its own.
    bool isRule = false;
    /// The column that names the unit of each row.
    std::string_view unit{};
};

/// How a workshop table is shown. Note, source and mark follow the columns.
struct TableShape {
    std::string_view name;
    const char *title;
    std::span<const ColumnShape> columns;
};

/// Null for a table that has none.
const TableShape *tableShape(std::string_view name);

} // namespace lastrivet::ui
