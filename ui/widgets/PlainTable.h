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
    /// Where the wide column would get less than its least, these give way in turn, down to `least`
    /// of their own.
    void setYielding(std::vector<int> columns, int least);
    /// Gives every other column the width of its content, up to `widest`; beyond that where the
    /// wide one has all it needs.
    void fitColumns(int widest = 220);
    /// What a column has no room for goes on in the next line, instead of being cut.
    void wrapLines();
    int currentRow() const { return currentIndex().row(); }

Q_SIGNALS:
    void rowChosen(int row);

protected:
    void resizeEvent(QResizeEvent *event) override;
    void currentChanged(const QModelIndex &current, const QModelIndex &previous) override;

private:
    /// Of a column besides the wide one, also while it is hidden.
    struct Width {
        /// As `fitColumns` found it.
        int usual = 0;
        /// With all its content.
        int wanted = 0;
        int given = 0;
        /// What it gives up for the wide one.
        int taken = 0;
    };

    void makeRoom();
    int takeFromYielding(int lacking);
    void giveRest(int rest);

    int m_wideColumn = -1;
    int m_leastWide = 0;
    std::vector<int> m_sparable;
    std::vector<int> m_yielding;
    int m_leastYielding = 0;
    std::vector<Width> m_widths;
    /// What the content of the wide column asks for.
    int m_wideWanted = 0;
};

} // namespace lastrivet::ui
