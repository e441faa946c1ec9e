// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/Answer.h"
#include "core/records/Squawk.h"

#include <QAbstractListModel>
#include <QString>

#include <optional>
#include <vector>

namespace lastrivet::ui {

/// A row of a short list: a mark, a line, a second line in quiet text, a figure at the right.
struct ListRow {
    RecordRef record;
    QString title;
    QString detail;
    QString figure;
    /// The shape at the left: an icon of resources/icons.
    QString icon;
    /// The words of a button at the right of the row; none when empty.
    QString action;
    /// What the button is about, when that is another record than the row's.
    std::optional<RecordRef> acts_on{};
    std::optional<readiness::State> state{};
    std::optional<Severity> severity{};
    /// The record that is shown beside the list.
    bool is_shown = false;

    friend bool operator==(const ListRow &, const ListRow &) = default;
};

/// Rows that were worked out elsewhere; a new set of rows is told as removals, insertions and
/// changes.
class RowListModel final : public QAbstractListModel {
    Q_OBJECT

public:
    using QAbstractListModel::QAbstractListModel;

    void setRows(std::vector<ListRow> rows);
    const ListRow &row(int row) const { return m_rows[std::size_t(row)]; }

    int rowCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;

private:
    std::vector<ListRow> m_rows;
};

} // namespace lastrivet::ui
