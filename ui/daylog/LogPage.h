// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/Page.h"

#include <vector>

class QLabel;
class QLineEdit;
class QListView;
class QStackedWidget;

namespace lastrivet::ui {

class EmptyPlace;
class EntryBar;
class LogDetail;
class LogModel;
class LogbookForm;
class PictureLoader;
class YearStrip;

/// The builder's log: a line for the next entry, the clock, and the entries by day.
class LogPage final : public Page {
    Q_OBJECT

public:
    explicit LogPage(Session &session, QWidget *parent = nullptr);

    void showRecord(RecordRef record) override;
    void startNew() override;
    bool printsItself() const override { return true; }
    void startPrinting() override;
    QWidget *firstFocus() override;
    Id<Component> shownPart() const override;

protected:
    void recordsChanged(const ChangeNotice &notice) override;
    void answerChanged() override;

private:
    void build();
    QWidget *buildYear();
    QWidget *buildList();
    void buildListHead(QLayout &layout);
    void buildKeys();
    /// The entries chosen in the list, from top to bottom.
    std::vector<Id<WorkSession>> chosen() const;
    void showChosen();
    void choose(const std::vector<RecordRef> &entries);
    void updateWords();
    void goToDay(QDate day);

    LogModel *m_model;
    PictureLoader *m_loader;
    EntryBar *m_entry;
    LogbookForm *m_print;
    QLineEdit *m_filter;
    QLabel *m_total;
    QListView *m_list;
    EmptyPlace *m_empty;
    QStackedWidget *m_stack;
    YearStrip *m_strip;
    QWidget *m_year = nullptr;
    LogDetail *m_detail;
};

} // namespace lastrivet::ui
