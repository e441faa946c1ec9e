// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/lists/ListRows.h"

#include "ui/convert/QtText.h"

#include <QLocale>

#include <algorithm>

namespace lastrivet::ui {

namespace {

QString fateWords(exchange::CsvRow::Fate fate)
{
    using enum exchange::CsvRow::Fate;
    switch (fate) {
    case Added:
        return ListRows::tr("+ new");
    case AlreadyThere:
        return ListRows::tr("= there already");
    case Blank:
        return ListRows::tr("· blank");
    case Wrong:
        return ListRows::tr("× wrong");
    }
    return {};
}

QString whatWords(const exchange::CsvRow &row)
{
    QStringList sentences;
    for (const exchange::InputError &error : row.errors)
        sentences.append(asSentence(error.what));
    return sentences.isEmpty() ? inWords(row.record) : sentences.join(QLatin1Char(' '));
}

} // namespace

void ListRows::show(exchange::CsvPlan plan, int headings)
{
    beginResetModel();
    m_plan = std::move(plan);
    m_headings = headings;
    endResetModel();
}

int ListRows::countOf(exchange::CsvRow::Fate fate) const
{
    return int(std::ranges::count(m_plan.rows, fate, &exchange::CsvRow::fate));
}

QModelIndex ListRows::firstOf(exchange::CsvRow::Fate fate) const
{
    const auto &rows = m_plan.rows;
    const auto found = std::ranges::find(rows, fate, &exchange::CsvRow::fate);
    return found == rows.end() ? QModelIndex() : index(int(found - rows.begin()), WhatColumn);
}

QString ListRows::sentenceOf(const QModelIndex &index) const
{
    return tr("Row %1: %2")
        .arg(index.siblingAtColumn(RowColumn).data().toString(),
             index.siblingAtColumn(WhatColumn).data().toString());
}

int ListRows::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(m_plan.rows.size());
}

int ListRows::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(columns);
}

QVariant ListRows::data(const QModelIndex &index, int role) const
{
    if (role == Qt::TextAlignmentRole && index.column() == RowColumn)
        return int(Qt::AlignRight | Qt::AlignVCenter);
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole)
        return {};
    const exchange::CsvRow &row = m_plan.rows[std::size_t(index.row())];
    switch (index.column()) {
    case RowColumn:
        return QLocale().toString(index.row() + 1 + m_headings);
    case FateColumn:
        return fateWords(row.fate);
    default:
        return whatWords(row);
    }
}

QVariant ListRows::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
    case RowColumn:
        return tr("Row");
    case FateColumn:
        return tr("Becomes");
    default:
        return tr("What");
    }
}

} // namespace lastrivet::ui
