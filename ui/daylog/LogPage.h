// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/Page.h"

class QLabel;
class QLineEdit;
class QListView;
class QScrollArea;
class QStackedWidget;

namespace lastrivet::ui {

class ActLine;
class EmptyPlace;
class EntryBar;
class LogModel;
class PhotoStrip;
class PictureLoader;
class RecordForm;
class WorkersEditor;
class YearStrip;

/// The builder's log: a line for the next entry, the clock, and the entries by day.
class LogPage final : public Page {
    Q_OBJECT

public:
    explicit LogPage(Session &session, QWidget *parent = nullptr);

    void showRecord(RecordRef record) override;
    void startNew() override;
    QWidget *firstFocus() override;
    Id<Component> shownPart() const override;

protected:
    void recordsChanged(const ChangeNotice &notice) override;
    void answerChanged() override;

private:
    void build();
    QWidget *buildList();
    QWidget *buildDetail();
    void buildKeys();
    Id<WorkSession> current() const;
    void showCurrent();
    void withdrawCurrent();
    void updateWords();
    void goToDay(QDate day);

    LogModel *m_model;
    PictureLoader *m_loader;
    EntryBar *m_entry;
    QLineEdit *m_filter;
    QLabel *m_total;
    QListView *m_list;
    EmptyPlace *m_empty;
    QStackedWidget *m_stack;
    YearStrip *m_strip;
    QScrollArea *m_detail;
    RecordForm *m_form;
    WorkersEditor *m_workers;
    PhotoStrip *m_photos;
    ActLine *m_ask;
};

} // namespace lastrivet::ui
