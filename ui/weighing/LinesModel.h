// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>
#include <QString>
#include <QStringList>

#include <map>
#include <utility>
#include <vector>

namespace lastrivet::ui {

/// A column of lines that are typed in place.
struct LinesColumn {
    QString head;
    bool isNumber = false;
    /// Worked out from the others; it cannot be typed in.
    bool isComputed = false;
};

/// Lines of a record as texts, with an empty one at the end to go on in. What is typed is handed
/// out and shown again only when the record has it; until then, it is there for whoever edits the
/// cell again.
class LinesModel final : public QAbstractTableModel {
    Q_OBJECT

public:
    LinesModel(std::vector<LinesColumn> columns, QObject *parent = nullptr);

    void setLines(std::vector<QStringList> lines);
    void setHeads(const QStringList &heads);
    void setEditable(bool isEditable);
    const std::vector<QStringList> &lines() const { return m_lines; }

    int rowCount(const QModelIndex &parent = {}) const override;
    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex &index) const override;
    bool setData(const QModelIndex &index, const QVariant &value, int role) override;

Q_SIGNALS:
    /// Row `row` is a new line when it is behind the last.
    void typed(int row, int column, const QString &text);

private:
    std::vector<LinesColumn> m_columns;
    std::vector<QStringList> m_lines;
    /// By row and column.
    std::map<std::pair<int, int>, QString> m_handedOut;
    bool m_isEditable = true;
};

} // namespace lastrivet::ui
