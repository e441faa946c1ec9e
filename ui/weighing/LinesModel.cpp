// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/weighing/LinesModel.h"

#include <algorithm>

namespace lastrivet::ui {

namespace {

LinesModel::Cells cellsOf(const QStringList &line)
{
    LinesModel::Cells cells;
    for (int column = 0; column < int(line.size()); ++column) {
        if (!line.at(column).isEmpty())
            cells[column] = line.at(column);
    }
    return cells;
}

} // namespace

LinesModel::LinesModel(std::vector<LinesColumn> columns, QObject *parent)
    : QAbstractTableModel(parent)
    , m_columns(std::move(columns))
{
}

QString LinesModel::typeAll(const Cells &cells, const Type &type)
{
    for (const auto &[column, text] : cells) {
        const QString why = type(column, text);
        if (!why.isEmpty())
            return why;
    }
    return {};
}

void LinesModel::setLines(std::int64_t record, std::vector<QStringList> lines)
{
    const bool isTaken =
        m_isHandingOver && record == m_record && lines.size() == m_lines.size() + 1;
    const int before = int(m_lines.size() + begunCount(m_record));
    const int now = int(lines.size() + begunCount(record)) - (isTaken ? 1 : 0);
    const auto replace = [&] {
        if (isTaken)
            takeFirstBegun();
        m_record = record;
        m_lines = std::move(lines);
    };
    // Rows stay where they are, so that the cursor does: what was the empty line becomes the first
    // of the new ones, and the next empty line comes at the end.
    if (now < before) {
        beginRemoveRows({}, now, before - 1);
        replace();
        endRemoveRows();
    } else if (now > before) {
        const int end = rowCount();
        beginInsertRows({}, end, end + now - before - 1);
        replace();
        endInsertRows();
    } else {
        replace();
    }
    dropOutdated();
    if (rowCount() > 0)
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
}

/// It is on record now, behind all lines in which something waits.
void LinesModel::takeFirstBegun()
{
    Unkept &unkept = m_unkept[m_record];
    unkept.begun.erase(unkept.begun.begin());
    for (auto &[cell, waiting] : unkept.waiting)
        ++waiting.lines;
}

/// What stands in a cell now was written after what waited for it.
void LinesModel::dropOutdated()
{
    const auto known = m_unkept.find(m_record);
    if (known == m_unkept.end())
        return;
    std::erase_if(known->second.waiting, [this](const auto &cell) {
        const auto &[place, waiting] = cell;
        return waiting.lines != m_lines.size() ||
               waiting.shown != textAt(place.first, place.second);
    });
    if (known->second.begun.empty() && known->second.waiting.empty())
        m_unkept.erase(known);
}

void LinesModel::setHeads(const QStringList &heads)
{
    for (std::size_t i = 0; i < m_columns.size(); ++i)
        m_columns[i].head = heads.value(int(i));
    Q_EMIT headerDataChanged(Qt::Horizontal, 0, columnCount() - 1);
}

void LinesModel::setEditable(bool isEditable)
{
    if (isEditable == m_isEditable)
        return;
    beginResetModel();
    m_isEditable = isEditable;
    endResetModel();
}

std::size_t LinesModel::begunCount(std::int64_t record) const
{
    const auto known = m_unkept.find(record);
    return known == m_unkept.end() ? 0 : known->second.begun.size();
}

int LinesModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0
                            : int(m_lines.size() + begunCount(m_record)) + (m_isEditable ? 1 : 0);
}

int LinesModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(m_columns.size());
}

QString LinesModel::textAt(int row, int column) const
{
    const auto line = std::size_t(row);
    if (line < m_lines.size())
        return m_lines[line].value(column);
    const std::size_t begun = line - m_lines.size();
    return begun < begunCount(m_record) ? m_unkept.at(m_record).begun[begun].value(column)
                                        : QString();
}

QVariant LinesModel::data(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    const LinesColumn &column = m_columns[std::size_t(index.column())];
    switch (role) {
    case Qt::EditRole:
        if (const auto known = m_unkept.find(m_record); known != m_unkept.end()) {
            const auto typed = known->second.waiting.find({index.row(), index.column()});
            if (typed != known->second.waiting.end())
                return typed->second.typed;
        }
        [[fallthrough]];
    case Qt::DisplayRole:
        return textAt(index.row(), index.column());
    case Qt::TextAlignmentRole:
        return int((column.isNumber ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    default:
        return {};
    }
}

QVariant LinesModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || section < 0 || section >= columnCount())
        return {};
    const LinesColumn &column = m_columns[std::size_t(section)];
    if (role == Qt::TextAlignmentRole)
        return int((column.isNumber ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    return role == Qt::DisplayRole ? QVariant(column.head) : QVariant();
}

Qt::ItemFlags LinesModel::flags(const QModelIndex &index) const
{
    const auto flags = QAbstractTableModel::flags(index);
    const bool isOpen =
        m_isEditable && index.isValid() && !m_columns[std::size_t(index.column())].isComputed;
    return isOpen ? flags | Qt::ItemIsEditable : flags;
}

bool LinesModel::setData(const QModelIndex &index, const QVariant &value, int role)
{
    if (!index.isValid() || role != Qt::EditRole)
        return false;
    const QString text = value.toString().trimmed();
    if (std::size_t(index.row()) < m_lines.size())
        typeOver(index.row(), index.column(), text);
    else
        typeOn(index.row(), index.column(), text);
    return true;
}

void LinesModel::typeOver(int row, int column, const QString &text)
{
    const std::pair cell{row, column};
    const std::int64_t record = m_record;
    const QString shown = textAt(row, column);
    m_unkept[record].waiting.erase(cell);
    dropOutdated();
    if (text == shown || !m_keep)
        return;
    const std::size_t lines = m_lines.size();
    if (m_keep(row, Cells{{column, text}}, true) == Session::Outcome::NotSaved)
        m_unkept[record].waiting[cell] = {text, shown, lines};
}

void LinesModel::typeOn(int row, int column, const QString &text)
{
    const std::size_t line = std::size_t(row) - m_lines.size();
    // A line that could not be saved is tried again.
    const bool isAgain = line < begunCount(m_record) && isWhole(m_unkept.at(m_record).begun[line]);
    if (text == textAt(row, column) && !isAgain)
        return;
    if (line == begunCount(m_record)) {
        beginInsertRows({}, row + 1, row + 1);
        m_unkept[m_record].begun.push_back(QStringList(columnCount()));
        endInsertRows();
    }
    m_unkept[m_record].begun[line][column] = text;
    Q_EMIT dataChanged(index(row, 0), index(row, columnCount() - 1));
    if (!takeOutIfEmpty(row))
        look(row);
}

bool LinesModel::isWhole(const QStringList &line) const
{
    for (std::size_t i = 0; i < m_columns.size(); ++i) {
        if (m_columns[i].isNeeded && line.value(int(i)).isEmpty())
            return false;
    }
    return true;
}

/// A line that is whole goes on record, before those that are not.
void LinesModel::look(int row)
{
    if (!m_keep)
        return;
    const int first = int(m_lines.size());
    const QStringList line = m_unkept[m_record].begun[std::size_t(row - first)];
    if (!isWhole(line)) {
        m_keep(row, cellsOf(line), false);
        return;
    }
    if (row > first) {
        auto &begun = m_unkept[m_record].begun;
        beginMoveRows({}, row, row, {}, first);
        std::rotate(begun.begin(), begun.begin() + (row - first),
                    begun.begin() + (row - first) + 1);
        endMoveRows();
    }
    m_isHandingOver = true;
    m_keep(first, cellsOf(line), true);
    m_isHandingOver = false;
}

std::vector<LinesModel::Begun> LinesModel::begunLines() const
{
    std::vector<Begun> all;
    for (std::size_t i = 0; i < begunCount(m_record); ++i) {
        const QStringList &line = m_unkept.at(m_record).begun[i];
        Begun begun;
        begun.name = m_columns.front().isNumber ? QString() : line.value(0);
        for (std::size_t column = 0; column < m_columns.size(); ++column) {
            if (m_columns[column].isNeeded && line.value(int(column)).isEmpty())
                begun.missing.append(m_columns[column].head);
        }
        all.push_back(std::move(begun));
    }
    return all;
}

bool LinesModel::takeOutIfEmpty(int row)
{
    const QStringList &line = m_unkept[m_record].begun[std::size_t(row) - m_lines.size()];
    return cellsOf(line).empty() && takeOutBegun(row);
}

bool LinesModel::takeOutBegun(int row)
{
    const int line = row - int(m_lines.size());
    if (line < 0 || line >= int(begunCount(m_record)))
        return false;
    beginRemoveRows({}, row, row);
    auto &begun = m_unkept[m_record].begun;
    begun.erase(begun.begin() + line);
    endRemoveRows();
    dropOutdated();
    return true;
}

std::int64_t LinesModel::unkeptRecord() const
{
    if (m_unkept.contains(m_record))
        return m_record;
    return m_unkept.empty() ? 0 : m_unkept.begin()->first;
}

QStringList LinesModel::unkept() const
{
    QStringList all;
    for (const auto &[record, unkept] : m_unkept) {
        all.append(QString::number(record));
        for (const QStringList &line : unkept.begun)
            all += line;
        for (const auto &[cell, waiting] : unkept.waiting)
            all.append(waiting.typed);
    }
    return all;
}

QModelIndex LinesModel::unkeptCell() const
{
    const auto known = m_unkept.find(m_record);
    if (known == m_unkept.end())
        return {};
    if (known->second.begun.empty()) {
        const auto [row, column] = known->second.waiting.rbegin()->first;
        return index(row, column);
    }
    const QStringList &line = known->second.begun.back();
    const int row = int(m_lines.size() + known->second.begun.size()) - 1;
    for (std::size_t column = 0; column < m_columns.size(); ++column) {
        if (m_columns[column].isNeeded && line.value(int(column)).isEmpty())
            return index(row, int(column));
    }
    return index(row, 0);
}

void LinesModel::forgetUnless(const std::function<bool(std::int64_t record)> &isThere)
{
    if (m_record != 0 && !isThere(m_record))
        setLines(0, {});
    std::erase_if(m_unkept, [&](const auto &known) { return !isThere(known.first); });
}

} // namespace lastrivet::ui
