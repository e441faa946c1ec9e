// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/RecordRowsModel.h"

#include <algorithm>

namespace lastrivet::ui {

namespace {

/// Above this many changed rows one reset is quicker than many signals.
constexpr std::size_t mostSignals = 1000;

std::map<RecordRef, int> placesOf(const std::vector<RecordRef> &rows)
{
    std::map<RecordRef, int> places;
    for (std::size_t i = 0; i < rows.size(); ++i)
        places.emplace(rows[i], int(i));
    return places;
}

} // namespace

int RecordRowsModel::rowOf(RecordRef record) const
{
    const auto place = m_rowOf.find(record);
    return place == m_rowOf.end() ? -1 : place->second;
}

int RecordRowsModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(m_rows.size());
}

void RecordRowsModel::setRows(const std::vector<RecordRef> &rows)
{
    if (rows == m_rows)
        return;
    const auto wanted = placesOf(rows);
    const auto isGone = [&](RecordRef row) { return !wanted.contains(row); };
    const auto isNew = [&](RecordRef row) { return !m_rowOf.contains(row); };
    const auto changes = std::ranges::count_if(m_rows, isGone) + std::ranges::count_if(rows, isNew);
    if (std::size_t(changes) > mostSignals) {
        beginResetModel();
        m_rows = rows;
        noteRows();
        endResetModel();
        return;
    }
    removeMissing(wanted);
    reorder(wanted);
    insertNew(rows);
}

void RecordRowsModel::removeMissing(const std::map<RecordRef, int> &wanted)
{
    for (int last = int(m_rows.size()) - 1; last >= 0; --last) {
        if (wanted.contains(m_rows[std::size_t(last)]))
            continue;
        int first = last;
        while (first > 0 && !wanted.contains(m_rows[std::size_t(first) - 1]))
            --first;
        beginRemoveRows({}, first, last);
        m_rows.erase(m_rows.begin() + first, m_rows.begin() + last + 1);
        endRemoveRows();
        last = first;
    }
    noteRows();
}

void RecordRowsModel::reorder(const std::map<RecordRef, int> &wanted)
{
    const auto inOrder = [&](RecordRef a, RecordRef b) { return wanted.at(a) < wanted.at(b); };
    if (std::ranges::is_sorted(m_rows, inOrder))
        return;
    Q_EMIT layoutAboutToBeChanged();
    const QModelIndexList before = persistentIndexList();
    std::vector<RecordRef> records;
    for (const QModelIndex &place : before)
        records.push_back(recordAt(place.row()));
    std::ranges::sort(m_rows, inOrder);
    noteRows();
    QModelIndexList after;
    for (qsizetype i = 0; i < before.size(); ++i)
        after.append(index(rowOf(records[std::size_t(i)]), before[i].column()));
    changePersistentIndexList(before, after);
    Q_EMIT layoutChanged();
}

void RecordRowsModel::insertNew(const std::vector<RecordRef> &rows)
{
    for (std::size_t first = 0; first < rows.size(); ++first) {
        if (m_rowOf.contains(rows[first]))
            continue;
        std::size_t end = first;
        while (end < rows.size() && !m_rowOf.contains(rows[end]))
            ++end;
        beginInsertRows({}, int(first), int(end) - 1);
        m_rows.insert(m_rows.begin() + std::ptrdiff_t(first), rows.begin() + std::ptrdiff_t(first),
                      rows.begin() + std::ptrdiff_t(end));
        endInsertRows();
        first = end;
    }
    noteRows();
}

void RecordRowsModel::noteRows()
{
    m_rowOf = placesOf(m_rows);
}

void RecordRowsModel::touch(const std::vector<RecordRef> &records)
{
    std::vector<int> rows;
    for (const RecordRef &record : records) {
        if (const int row = rowOf(record); row >= 0)
            rows.push_back(row);
    }
    std::ranges::sort(rows);
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const int first = rows[i];
        while (i + 1 < rows.size() && rows[i + 1] <= rows[i] + 1)
            ++i;
        Q_EMIT dataChanged(index(first, 0), index(rows[i], columnCount() - 1));
    }
}

void RecordRowsModel::dropRows()
{
    m_rows.clear();
    m_rowOf.clear();
}

void RecordRowsModel::touchAll()
{
    if (!m_rows.empty())
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
}

} // namespace lastrivet::ui
