// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/RecordTableModel.h"

#include "core/readiness/Sentences.h"
#include "ui/convert/FieldText.h"

#include <algorithm>

namespace lastrivet::ui {

namespace {

/// Fields that say nothing to a reader of a list.
bool isShown(const Field &field)
{
    return !field.isCollection() && field.type != FieldType::Id &&
           !field.name.starts_with("withdrawn_") && field.name != "sha256";
}

QVariant alignment(const Field &field)
{
    return QVariant((isNumber(field) ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
}

} // namespace

RecordTableModel::RecordTableModel(Snapshot records, RecordType type, QObject *parent)
    : QAbstractTableModel(parent)
    , m_records(std::move(records))
    , m_type(type)
{
    fill();
}

void RecordTableModel::setType(RecordType type)
{
    beginResetModel();
    m_type = type;
    fill();
    endResetModel();
}

void RecordTableModel::fill()
{
    m_columns.clear();
    m_ids.clear();
    const auto &description = describe(m_type);
    for (const Field &field : description.fields) {
        if (isShown(field))
            m_columns.push_back(&field);
    }
    if (m_type == RecordType::Project)
        return;
    const auto &table = m_records->table(m_type);
    for (const void *record = table.nextAny(0); record;) {
        const auto id = idOf(description, record);
        if (!isWithdrawn(description, record))
            m_ids.push_back(id);
        record = table.nextAny(id);
    }
}

void RecordTableModel::apply(const ChangeNotice &notice)
{
    m_records = notice.after;
    for (const RecordRef &record : notice.touched) {
        if (record.type == m_type && m_type != RecordType::Project)
            applyRow(record.id);
    }
}

void RecordTableModel::applyRow(std::int64_t id)
{
    const void *record = m_records->table(m_type).findAny(id);
    const bool isLive = record && !isWithdrawn(describe(m_type), record);
    const auto place = std::ranges::lower_bound(m_ids, id);
    const int row = int(place - m_ids.begin());
    const bool wasLive = place != m_ids.end() && *place == id;
    if (isLive && wasLive) {
        Q_EMIT dataChanged(index(row, 0), index(row, columnCount() - 1));
    } else if (isLive) {
        beginInsertRows({}, row, row);
        m_ids.insert(place, id);
        endInsertRows();
    } else if (wasLive) {
        beginRemoveRows({}, row, row);
        m_ids.erase(place);
        endRemoveRows();
    }
}

RecordRef RecordTableModel::recordAt(int row) const
{
    return {m_type, m_ids[std::size_t(row)]};
}

int RecordTableModel::rowOf(std::int64_t id) const
{
    const auto place = std::ranges::lower_bound(m_ids, id);
    return place != m_ids.end() && *place == id ? int(place - m_ids.begin()) : -1;
}

bool RecordTableModel::isColumnEmpty(int column) const
{
    const Field &field = *m_columns[std::size_t(column)];
    const void *defaults = describe(m_type).defaults;
    return std::ranges::all_of(m_ids, [&](std::int64_t id) {
        return isDefault(field, m_records->table(m_type).findAny(id), defaults);
    });
}

int RecordTableModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(m_ids.size());
}

int RecordTableModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(m_columns.size());
}

QVariant RecordTableModel::data(const QModelIndex &index, int role) const
{
    const Field &field = *m_columns[std::size_t(index.column())];
    if (role == Qt::TextAlignmentRole)
        return alignment(field);
    if (role != Qt::DisplayRole)
        return {};
    return fieldText(*m_records, field,
                     m_records->table(m_type).findAny(m_ids[std::size_t(index.row())]));
}

QVariant RecordTableModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal)
        return {};
    const Field &field = *m_columns[std::size_t(section)];
    if (role == Qt::TextAlignmentRole)
        return alignment(field);
    return role == Qt::DisplayRole ? QVariant(fieldTitle(field)) : QVariant();
}

} // namespace lastrivet::ui
