// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/Answer.h"
#include "ui/widgets/RowListModel.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace lastrivet::ui {

class RowListView;
class Theme;

/// The closings in one state, under its shape and word: the first ones, the rest on request.
class StateColumn final : public QWidget {
    Q_OBJECT

public:
    /// Not begun when `state` is empty.
    StateColumn(const Theme &theme, std::optional<readiness::State> state,
                QWidget *parent = nullptr);

    void setRows(std::vector<ListRow> rows);
    RowListView &list() const { return *m_list; }
    int count() const { return int(m_rows.size()); }
    void setTheme();
    /// What the head needs in the width it has.
    int headHeight() const;
    void setHeadHeight(int height);

Q_SIGNALS:
    void chosen(lastrivet::RecordRef record);

private:
    void showRows();

    const Theme &m_theme;
    std::optional<readiness::State> m_state;
    QLabel *m_mark;
    QLabel *m_count;
    QLabel *m_words;
    RowListView *m_list;
    QPushButton *m_more;
    std::vector<ListRow> m_rows;
    bool m_isWhole = false;
};

} // namespace lastrivet::ui
