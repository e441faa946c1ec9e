// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/acts/BranchCopy.h"

#include <QAbstractTableModel>

namespace lastrivet::ui {

class Session;

/// The parts of a copy before it is made: names and codes are changed in place.
class BranchModel final : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { NameColumn, CodeColumn, OriginalColumn, columns };

    explicit BranchModel(Session &session, QObject *parent = nullptr);

    void show(acts::BranchCopy copy);
    const acts::BranchCopy &copy() const { return m_copy; }

    int rowCount(const QModelIndex &parent = {}) const override;
    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    bool setData(const QModelIndex &index, const QVariant &value, int role) override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex &index) const override;

private:
    Session &m_session;
    acts::BranchCopy m_copy;
};

} // namespace lastrivet::ui
