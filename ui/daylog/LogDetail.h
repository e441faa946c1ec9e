// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"

#include <QScrollArea>

#include <vector>

class QLabel;
class QPushButton;

namespace lastrivet::ui {

class ActLine;
class EntryPictures;
class PictureLoader;
class RecordForm;
class Session;
class WorkersEditor;

/// The chosen entries of the log: one with all its fields, several with what is done to all at
/// once.
class LogDetail final : public QScrollArea {
    Q_OBJECT

public:
    LogDetail(Session &session, PictureLoader &loader, QWidget *parent = nullptr);

    void show(const std::vector<Id<WorkSession>> &entries);
    void apply(const ChangeNotice &notice);
    /// The field to type in.
    void edit();
    void withdraw();
    void split();
    void moveElsewhere();
    /// The buttons for what can be done with what is chosen.
    QWidget &acts() const { return *m_acts; }

Q_SIGNALS:
    /// An act was done or left.
    void ended();
    /// What is half answered about these is to be shown.
    void begunWanted(const std::vector<lastrivet::RecordRef> &entries);

private:
    void build();
    std::vector<RecordRef> shown() const;
    void showSeveral();

    Session &m_session;
    std::vector<Id<WorkSession>> m_entries;
    ActLine *m_ask;
    QLabel *m_several;
    RecordForm *m_form;
    QLabel *m_who;
    WorkersEditor *m_workers;
    EntryPictures *m_photos;
    QWidget *m_acts;
    QPushButton *m_split;
    QPushButton *m_move;
    QPushButton *m_withdraw;
    QPushButton *m_history;
};

} // namespace lastrivet::ui
