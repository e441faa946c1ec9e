// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/MergeConflict.h"

#include <QWidget>

class QBoxLayout;
class QLabel;
class QListView;
class QPushButton;

namespace lastrivet::ui {

class AccountModel;
class Session;

/// One thing that a merge left to decide: both sides beside each other, and what can be done.
class ConflictPanel final : public QWidget {
    Q_OBJECT

public:
    explicit ConflictPanel(Session &session, QWidget *parent = nullptr);

    /// `seqOfLost` is the journal row of the change that was left out; 0 for none.
    void show(const MergeConflict &conflict, std::int64_t seqOfLost);
    /// What stands stays.
    void keep();
    /// What lost takes its place, where that can be done at a word.
    void take();
    void goToRecord();

protected:
    void resizeEvent(QResizeEvent *event) override;

private:
    struct Side {
        QLabel *head;
        QLabel *value;
        QLabel *author;
    };

    Side addSide();
    void build();
    void buildActs(QLayout &layout);
    void showSides();
    void showButtons();
    /// What was decided, or how to go about it where the buttons do not say it.
    QString hint() const;
    void showLeftOut(std::int64_t seq);
    void decide(ConflictDecision decision);

    Session &m_session;
    MergeConflict m_conflict;
    QLabel *m_record;
    QLabel *m_field;
    QBoxLayout *m_sides;
    Side m_stands;
    Side m_lost;
    QLabel *m_leftOutHead;
    AccountModel *m_leftOut;
    QListView *m_leftOutList;
    QLabel *m_hint;
    QPushButton *m_keep;
    QPushButton *m_take;
    QPushButton *m_go;
};

} // namespace lastrivet::ui
