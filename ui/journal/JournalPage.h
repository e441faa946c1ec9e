// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/JournalReport.h"
#include "ui/shell/Page.h"

#include <functional>
#include <optional>

class QCheckBox;
class QLabel;
class QListView;
class QPushButton;
class QStackedWidget;

namespace lastrivet::ui {

class ConflictsView;
class EmptyPlace;
class JournalDetail;
class JournalFilterBar;
class JournalModel;

/// Who changed what, field by field, and when; and what merges left to decide.
class JournalPage final : public Page {
    Q_OBJECT

public:
    using ChooseFile = std::function<QString(const QString &suggested)>;

    explicit JournalPage(Session &session, QWidget *parent = nullptr);

    /// A record's own history.
    void showRecord(RecordRef record) override;
    bool printsItself() const override { return true; }
    QWidget *firstFocus() override;
    Id<Component> shownPart() const override;
    void showDecisions();
    /// In place of the dialog that asks for a file.
    void setChooseFile(ChooseFile chooseFile) { m_chooseFile = std::move(chooseFile); }

    JournalModel &model() const { return *m_model; }
    QListView &list() const { return *m_list; }
    JournalDetail &detail() const { return *m_detail; }
    ConflictsView &conflicts() const { return *m_conflicts; }

protected:
    void recordsChanged(const ChangeNotice &notice) override;
    void showEvent(QShowEvent *event) override;

private:
    void build();
    QWidget *buildHead();
    QWidget *buildChanges();
    QWidget *buildList();
    QWidget *buildAbout();
    void buildKeys();
    /// Reads the journal again when it has grown. What could not be read stays as it was and is
    /// tried again the next time.
    void refresh();
    bool refreshList();
    /// What is chosen stays so, as long as it is listed; at the top, what came last is chosen.
    void listAnew(const std::function<void()> &list);
    void filter();
    /// Lists what touched the record, or all of it again.
    void lookAbout();
    void showEverything();
    void choose(int row);
    void showChosen();
    void showChanges();
    void updateWords();
    void print();
    packet::JournalReport::Filter listedFilter() const;

    ChooseFile m_chooseFile;
    JournalModel *m_model;
    QPushButton *m_toChanges;
    QPushButton *m_toDecisions;
    QPushButton *m_print;
    JournalFilterBar *m_filter;
    QWidget *m_about;
    QLabel *m_aboutWords;
    QCheckBox *m_withBranch;
    QLabel *m_count;
    QListView *m_list;
    EmptyPlace *m_noMatch;
    QStackedWidget *m_listOrNone;
    JournalDetail *m_detail;
    ConflictsView *m_conflicts;
    QStackedWidget *m_stack;
    QWidget *m_changes;
    std::optional<RecordRef> m_record;
    /// Of several lookups that are on their way the last one counts.
    int m_lookup = 0;
    std::string m_hash;
};

} // namespace lastrivet::ui
