// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/csv/CsvImport.h"

#include <QAbstractTableModel>

namespace lastrivet::ui {

/// What taking a list in does with each of its rows.
class ListRows final : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { RowColumn, FateColumn, WhatColumn, columns };

    using QAbstractTableModel::QAbstractTableModel;

    /// `headings` says how many rows of the list come before the first.
    void show(exchange::CsvPlan plan, int headings);
    const exchange::CsvPlan &plan() const { return m_plan; }
    int countOf(exchange::CsvRow::Fate fate) const;
    /// The first row of that fate; invalid when there is none.
    QModelIndex firstOf(exchange::CsvRow::Fate fate) const;
    /// "Row 12: …", with all of what stands behind it in the list.
    QString sentenceOf(const QModelIndex &index) const;

    int rowCount(const QModelIndex &parent = {}) const override;
    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    exchange::CsvPlan m_plan;
    int m_headings = 1;
};

} // namespace lastrivet::ui
