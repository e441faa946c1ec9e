// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/airframe/Airframe.h"

#include <QAbstractListModel>
#include <QString>

#include <vector>

namespace lastrivet::ui {

/// A zone of the picture, and what is said about it.
struct ZoneRow {
    airframe::ZoneStanding standing;
    QString name;
    /// Its state, its part and the nearest thing to do, a line each.
    QString why;

    friend bool operator==(const ZoneRow &, const ZoneRow &) = default;
};

/// The zones of one drawing, in order; the rows of a picture.
class ZoneModel final : public QAbstractListModel {
    Q_OBJECT

public:
    using QAbstractListModel::QAbstractListModel;

    void setRows(std::vector<ZoneRow> rows);
    const ZoneRow &row(int row) const { return m_rows[std::size_t(row)]; }
    /// -1 when the picture has no such zone.
    int rowOf(airframe::Zone zone) const;

    int rowCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;

private:
    std::vector<ZoneRow> m_rows;
};

} // namespace lastrivet::ui
