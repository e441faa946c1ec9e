// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/RowListModel.h"

#include "ui/widgets/Marks.h"

#include <algorithm>

namespace lastrivet::ui {

namespace {

bool holds(const std::vector<ListRow> &rows, const RecordRef &record)
{
    return std::ranges::find(rows, record, &ListRow::record) != rows.end();
}

/// All that a row shows, its shapes in words.
QString wholeText(const ListRow &row)
{
    QStringList words{row.title,
                      row.state ? stateWords(*row.state) : QString(),
                      row.severity ? severityWord(*row.severity) : QString(),
                      row.detail,
                      row.figure,
                      row.action};
    words.removeAll(QString());
    return words.join(QLatin1String(", "));
}

} // namespace

void RowListModel::setRows(std::vector<ListRow> rows)
{
    for (int i = int(m_rows.size()) - 1; i >= 0; --i) {
        if (holds(rows, m_rows[std::size_t(i)].record))
            continue;
        beginRemoveRows({}, i, i);
        m_rows.erase(m_rows.begin() + i);
        endRemoveRows();
    }
    for (int i = 0; i < int(rows.size()); ++i) {
        // Rows before i are settled.
        const auto place = m_rows.begin() + i;
        const auto old =
            std::ranges::find(place, m_rows.end(), rows[std::size_t(i)].record, &ListRow::record);
        const int from = int(old - m_rows.begin());
        if (old == m_rows.end()) {
            beginInsertRows({}, i, i);
            m_rows.insert(place, rows[std::size_t(i)]);
            endInsertRows();
        } else if (from != i) {
            beginMoveRows({}, from, from, {}, i);
            std::rotate(place, old, old + 1);
            endMoveRows();
        }
        if (m_rows[std::size_t(i)] != rows[std::size_t(i)]) {
            m_rows[std::size_t(i)] = rows[std::size_t(i)];
            Q_EMIT dataChanged(index(i), index(i));
        }
    }
    // Of rows that speak of one record, some may be left over.
    const int count = int(rows.size());
    if (rowCount() > count) {
        beginRemoveRows({}, count, rowCount() - 1);
        m_rows.erase(m_rows.begin() + count, m_rows.end());
        endRemoveRows();
    }
}

int RowListModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(m_rows.size());
}

QVariant RowListModel::data(const QModelIndex &index, int role) const
{
    const ListRow &shown = row(index.row());
    if (role == Qt::DisplayRole)
        return shown.title;
    if (role == Qt::ToolTipRole)
        return shown.detail.isEmpty() ? shown.title
                                      : shown.title + QLatin1Char('\n') + shown.detail;
    if (role == Qt::AccessibleTextRole)
        return wholeText(shown);
    return {};
}

} // namespace lastrivet::ui
