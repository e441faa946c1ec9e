// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/RecordType.h"

#include <QAbstractTableModel>

#include <map>
#include <vector>

namespace lastrivet::ui {

/// Records in an order, one a row; a new order is told as what was removed, moved and inserted.
class RecordRowsModel : public QAbstractTableModel {
    Q_OBJECT

public:
    using QAbstractTableModel::QAbstractTableModel;

    RecordRef recordAt(int row) const { return m_rows[std::size_t(row)]; }
    const std::vector<RecordRef> &rows() const { return m_rows; }
    /// The row of a record, or -1.
    int rowOf(RecordRef record) const;
    int rowCount(const QModelIndex &parent = {}) const override;

protected:
    void setRows(const std::vector<RecordRef> &rows);
    /// Says that these records look different now; one signal per run of rows.
    void touch(const std::vector<RecordRef> &records);
    void touchAll();
    /// Between beginResetModel and endResetModel: there is no row.
    void dropRows();

private:
    void removeMissing(const std::map<RecordRef, int> &wanted);
    void reorder(const std::map<RecordRef, int> &wanted);
    void insertNew(const std::vector<RecordRef> &rows);
    void noteRows();

    std::vector<RecordRef> m_rows;
    std::map<RecordRef, int> m_rowOf;
};

} // namespace lastrivet::ui
