// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"
#include "core/records/Description.h"

#include <QAbstractTableModel>

#include <vector>

namespace lastrivet::ui {

/// The live records of one type as a table: a row per record by id, a column per scalar field.
class RecordTableModel final : public QAbstractTableModel {
    Q_OBJECT

public:
    RecordTableModel(Snapshot records, RecordType type, QObject *parent = nullptr);

    void setType(RecordType type);
    void apply(const ChangeNotice &notice);

    RecordRef recordAt(int row) const;
    /// The row of a record, or -1.
    int rowOf(std::int64_t id) const;
    /// True when no record has anything in the column.
    bool isColumnEmpty(int column) const;

    int rowCount(const QModelIndex &parent = {}) const override;
    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    void fill();
    void applyRow(std::int64_t id);

    Snapshot m_records;
    RecordType m_type;
    std::vector<const Field *> m_columns;
    std::vector<std::int64_t> m_ids;
};

} // namespace lastrivet::ui
