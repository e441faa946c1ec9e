// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Check.h"

#include <QWidget>

class QLabel;
class QListView;
class QPushButton;

namespace lastrivet::ui {

class CheckListModel;
class Session;

/// The inspector's list, ticked line by line or all but the chosen ones at once.
class CheckPanel final : public QWidget {
    Q_OBJECT

public:
    explicit CheckPanel(Session &session, QWidget *parent = nullptr);

    void show(Id<Closing> closing);
    void tick(Id<Check> check, bool isTicked);

private:
    void build();
    void tickAllButChosen();
    void toggleNotApplicable();
    void updateWords();
    std::vector<int> chosenRows() const;

    Session &m_session;
    CheckListModel *m_model;
    QLabel *m_title;
    QListView *m_list;
    QPushButton *m_tickAll;
    QPushButton *m_notApplicable;
};

} // namespace lastrivet::ui
