// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/FigureTable.h"

#include <QAbstractItemModel>

#include <vector>

namespace lastrivet::ui {

/// A table of figures as a tree: a row lies within the last one above it that is less deep.
class HoursTableModel final : public QAbstractItemModel {
    Q_OBJECT

public:
    using QAbstractItemModel::QAbstractItemModel;

    void show(print::FigureTable table);
    const print::FigureTable &table() const { return m_table; }
    const print::FigureTable::Row &row(const QModelIndex &index) const;
    /// The row about a record; invalid when there is none.
    QModelIndex indexOf(RecordRef record) const;

    QModelIndex index(int row, int column, const QModelIndex &parent = {}) const override;
    QModelIndex parent(const QModelIndex &index) const override;
    int rowCount(const QModelIndex &parent = {}) const override;
    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    /// A row's place; the first node stands for the table itself, the others for the rows in order.
    struct Node {
        std::size_t parent = 0;
        int row = 0;
        std::vector<std::size_t> below;
    };

    QModelIndex indexAt(std::size_t node, int column) const;

    print::FigureTable m_table;
    std::vector<Node> m_nodes{1};
};

} // namespace lastrivet::ui
