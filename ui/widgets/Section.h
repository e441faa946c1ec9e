// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/widgets/RowListModel.h"

#include <QWidget>

#include <cstddef>
#include <optional>

class QLabel;
class QPushButton;

namespace lastrivet::ui {

class RowListView;
class Theme;

/// A heading with a short list below it: the first few rows, the rest on request, or one sentence
/// when there is nothing.
class Section final : public QWidget {
    Q_OBJECT

public:
    Section(const Theme &theme, const QString &title, const QString &whenEmpty,
            QWidget *parent = nullptr);

    /// The first rows of a list that may be longer: `total` rows, of which these are all when it is
    /// left out.
    void setRows(std::vector<ListRow> rows, std::optional<std::size_t> total = std::nullopt);
    void setWhenEmpty(const QString &sentence);
    void setShortLength(int rows) { m_shortLength = rows; }
    RowListView &list() const { return *m_list; }

Q_SIGNALS:
    void chosen(lastrivet::RecordRef record);
    void acted(lastrivet::RecordRef record);

private:
    void showRows();

    QString m_titleWords;
    QLabel *m_title;
    QLabel *m_empty;
    RowListView *m_list;
    QPushButton *m_more;
    QLabel *m_rest;
    std::size_t m_total = 0;
    std::vector<ListRow> m_rows;
    int m_shortLength = 5;
    bool m_isWhole = false;
};

} // namespace lastrivet::ui
