// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>
#include <QString>
#include <QStringList>

#include <vector>

namespace lastrivet::ui {

/// A row of figures as it is shown.
struct FigureRow {
    QStringList cells;
    /// What a limit of the project's own would be kept under; none when empty.
    QString subject{};
    bool isMain = false;
    bool isFromMemory = false;
    bool isOwn = false;
    /// A limit of the project's own stands in its place.
    bool isAside = false;
    /// A limit that is exceeded: its value has the mark of an alert.
    bool isExceeded = false;
};

/// Figures with their heads; `caption` is the source where all rows have the same.
struct FigureTable {
    QString title;
    QStringList heads;
    std::vector<FigureRow> rows;
    QString caption{};
};

/// Figures that were worked out elsewhere, as a table to read.
class FigureModel final : public QAbstractTableModel {
    Q_OBJECT

public:
    using QAbstractTableModel::QAbstractTableModel;

    void setTable(FigureTable table);
    const FigureTable &table() const { return m_table; }
    /// The heads with line breaks where their columns are narrow.
    void showHeads(const QStringList &heads);
    /// True when no row has anything in the column.
    bool isColumnEmpty(int column) const;

    int rowCount(const QModelIndex &parent = {}) const override;
    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    FigureTable m_table;
    QStringList m_heads;
};

} // namespace lastrivet::ui
