// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/workshop/FigureModel.h"

#include "ui/shell/Colours.h"
#include "ui/widgets/SvgIcon.h"

#include <QFont>
#include <QGuiApplication>
#include <QIcon>
#include <QPalette>

#include <algorithm>

namespace lastrivet::ui {

namespace {

constexpr int valueColumn = 1;

/// Drawn anew with each palette, which says whether the theme is a dark one.
QIcon alertMark()
{
    const bool isDark = QGuiApplication::palette().color(QPalette::Window).lightnessF() < 0.5F;
    const Colours &colours = isDark ? Colours::dark() : Colours::light();
    return svgIcon(QStringLiteral("marks/alert"), colours.closedEarly);
}

} // namespace

void FigureModel::setTable(FigureTable table)
{
    beginResetModel();
    m_table = std::move(table);
    m_heads = m_table.heads;
    endResetModel();
}

void FigureModel::showHeads(const QStringList &heads)
{
    if (heads == m_heads)
        return;
    m_heads = heads;
    Q_EMIT headerDataChanged(Qt::Horizontal, 0, columnCount() - 1);
}

bool FigureModel::isColumnEmpty(int column) const
{
    return std::ranges::all_of(
        m_table.rows, [&](const FigureRow &row) { return row.cells.value(column).isEmpty(); });
}

int FigureModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(m_table.rows.size());
}

int FigureModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(m_table.heads.size());
}

QVariant FigureModel::data(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    const FigureRow &row = m_table.rows[std::size_t(index.row())];
    switch (role) {
    case Qt::DisplayRole:
    case Qt::ToolTipRole:
        return row.cells.value(index.column());
    case Qt::DecorationRole:
        if (row.isExceeded && index.column() == valueColumn)
            return alertMark();
        return {};
    case Qt::TextAlignmentRole:
        return int(Qt::AlignLeft | Qt::AlignTop);
    case Qt::FontRole: {
        QFont font = QGuiApplication::font();
        font.setBold(row.isMain || row.isOwn);
        font.setItalic(row.isFromMemory);
        // The last column says why the others are struck out.
        font.setStrikeOut(row.isAside && index.column() + 1 < columnCount());
        return font;
    }
    case Qt::ForegroundRole:
        if (row.isAside)
            return QGuiApplication::palette().brush(QPalette::PlaceholderText);
        return {};
    default:
        return {};
    }
}

QVariant FigureModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal)
        return {};
    if (role == Qt::TextAlignmentRole)
        return int(Qt::AlignLeft | Qt::AlignVCenter);
    if (role == Qt::ToolTipRole)
        return m_table.heads.value(section);
    return role == Qt::DisplayRole ? QVariant(m_heads.value(section)) : QVariant();
}

} // namespace lastrivet::ui
