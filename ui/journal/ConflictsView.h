// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/MergeConflict.h"
#include "ui/journal/JournalModel.h"

#include <QWidget>

#include <vector>

class QCheckBox;
class QLabel;
class QListView;

namespace lastrivet::ui {

class ConflictPanel;
class RowListModel;
class Session;

/// What merges left for a person to decide: a list, and beside it the chosen one.
class ConflictsView final : public QWidget {
    Q_OBJECT

public:
    /// `journal` outlives it.
    ConflictsView(Session &session, const JournalModel &journal, QWidget *parent = nullptr);

    /// Reads again what there is; false when it could not be read, and what was there before stays.
    bool refresh();
    int undecided() const { return m_undecided; }
    bool isAny() const { return !m_all.empty(); }
    QListView &list() const { return *m_list; }
    ConflictPanel &panel() const { return *m_panel; }

private:
    void build();
    void buildKeys();
    void fill();
    void showChosen();
    std::int64_t seqOf(const std::string &change) const;

    Session &m_session;
    const JournalModel &m_journal;
    std::vector<MergeConflict> m_all;
    std::vector<MergeConflict> m_listed;
    int m_undecided = 0;
    RowListModel *m_model;
    QListView *m_list;
    QCheckBox *m_decidedToo;
    QLabel *m_nothing;
    ConflictPanel *m_panel;
};

} // namespace lastrivet::ui
