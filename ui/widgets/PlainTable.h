// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTableView>

#include <vector>

namespace lastrivet::ui {

/// A table to read row by row: whole rows are chosen, no grid, and Tab leaves it.
class PlainTable final : public QTableView {
    Q_OBJECT

public:
    explicit PlainTable(const QString &name, QWidget *parent = nullptr);

    /// The column that takes what the others leave; where that is less than `least` it takes so
    /// much, and one scrolls sideways.
    void setWideColumn(int column, int least = 0);
    /// These columns go, the first of them first, where the wide one would get less than its least.
    void setSparable(std::vector<int> columns);
    /// Gives every other column the width of its content, up to `widest`.
    void fitColumns(int widest = 220);
    int currentRow() const { return currentIndex().row(); }

Q_SIGNALS:
    void rowChosen(int row);

protected:
    void resizeEvent(QResizeEvent *event) override;
    void currentChanged(const QModelIndex &current, const QModelIndex &previous) override;

private:
    void makeRoom();

    int m_wideColumn = -1;
    int m_leastWide = 0;
    std::vector<int> m_sparable;
    /// As `fitColumns` found them; also of those that are hidden.
    std::vector<int> m_widths;
};

} // namespace lastrivet::ui
