// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/csv/CsvColumns.h"

#include <QTableWidget>

namespace lastrivet::ui {

/// Which field each column of a list fills.
class ColumnChoice final : public QTableWidget {
    Q_OBJECT

public:
    explicit ColumnChoice(QWidget *parent = nullptr);

    /// A line per column, with its first value and the field that its heading names.
    void show(const exchange::CsvTable &table, RecordType type);
    exchange::CsvColumns chosen() const;
    void choose(int column, const QString &field);

Q_SIGNALS:
    void chosenChanged();
};

} // namespace lastrivet::ui
