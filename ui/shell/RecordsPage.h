// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/Page.h"

#include <vector>

class QButtonGroup;
class QLabel;
class QStackedWidget;
class QTableView;

namespace lastrivet::ui {

class EmptyPlace;
class RecordTableModel;

/// Lists the records of a few types as they are, to read: for records that have no page of their
/// own yet.
class RecordsPage final : public Page {
    Q_OBJECT

public:
    RecordsPage(Session &session, std::vector<RecordType> types, QWidget *parent = nullptr);

    void showRecord(RecordRef record) override;
    QWidget *firstFocus() override;

protected:
    void recordsChanged(const ChangeNotice &notice) override;

private:
    void build();
    void choose(RecordType type);
    void updateWords();
    void hideEmptyColumns();
    void fitColumns();

    std::vector<RecordType> m_types;
    RecordType m_type;
    QButtonGroup *m_buttons;
    QLabel *m_count;
    QStackedWidget *m_stack;
    QTableView *m_table;
    EmptyPlace *m_empty;
    RecordTableModel *m_model;
};

} // namespace lastrivet::ui
