// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/RecordType.h"
#include "ui/print/Table.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

namespace lastrivet::print {

/// A table of figures as it is shown and as it is printed: the first column names, the others
/// stand right.
struct FigureTable {
    struct Row {
        QStringList cells;
        /// How deep it lies in its tree.
        int depth = 0;
        bool is_bold = false;
        /// What the row is about.
        std::optional<RecordRef> record;
    };

    QStringList heads;
    std::vector<Row> rows;
    /// Said when there is no row.
    QString when_empty;
};

/// The same for paper.
Table printed(const FigureTable &table);

} // namespace lastrivet::print
