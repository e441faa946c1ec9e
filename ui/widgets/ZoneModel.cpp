// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/ZoneModel.h"

#include <algorithm>

namespace lastrivet::ui {

void ZoneModel::setRows(std::vector<ZoneRow> rows)
{
    const auto zoneOf = [](const ZoneRow &row) { return row.standing.zone; };
    if (!std::ranges::equal(rows, m_rows, {}, zoneOf, zoneOf)) {
        beginResetModel();
        m_rows = std::move(rows);
        endResetModel();
        return;
    }
    for (int i = 0; i < int(rows.size()); ++i) {
        if (m_rows[std::size_t(i)] == rows[std::size_t(i)])
            continue;
        m_rows[std::size_t(i)] = rows[std::size_t(i)];
        Q_EMIT dataChanged(index(i), index(i));
    }
}

int ZoneModel::rowOf(airframe::Zone zone) const
{
    const auto found =
        std::ranges::find(m_rows, zone, [](const ZoneRow &row) { return row.standing.zone; });
    return found == m_rows.end() ? -1 : int(found - m_rows.begin());
}

int ZoneModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(m_rows.size());
}

QVariant ZoneModel::data(const QModelIndex &index, int role) const
{
    const ZoneRow &shown = row(index.row());
    if (role == Qt::DisplayRole)
        return shown.name;
    if (role == Qt::ToolTipRole)
        return QString(shown.name + QLatin1Char('\n') + shown.why);
    if (role == Qt::AccessibleTextRole)
        return QString(shown.name + QStringLiteral(", ") +
                       QString(shown.why).replace(QLatin1Char('\n'), QStringLiteral(", ")));
    return {};
}

} // namespace lastrivet::ui
