// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/JournalEntry.h"

#include <QWidget>

#include <cstdint>
#include <optional>

class QLabel;
class QListView;
class QPushButton;

namespace lastrivet::ui {

class AccountModel;
class JournalModel;
class Session;

/// One row of the journal: when, who, what it is, its hash, and every record that it touched.
class JournalDetail final : public QWidget {
    Q_OBJECT

public:
    /// `model` outlives it.
    JournalDetail(Session &session, const JournalModel &model, QWidget *parent = nullptr);

    /// Null shows nothing.
    void show(const JournalEntry *entry);
    /// The record whose history is read stands before all others.
    void setAbout(std::optional<RecordRef> about) { m_about = about; }
    QListView &records() const { return *m_list; }
    const AccountModel &account() const { return *m_account; }
    QString facts() const;

private:
    void build();
    void fill(const JournalEntry &entry);
    void goToRecord(int row);
    void copyHash();
    void takeBack();

    Session &m_session;
    const JournalModel &m_model;
    AccountModel *m_account;
    QLabel *m_title;
    QLabel *m_facts;
    QPushButton *m_takeBack;
    QLabel *m_hash;
    QPushButton *m_copy;
    QListView *m_list;
    QString m_hashText;
    /// Of the row that is shown.
    std::int64_t m_seq = 0;
    QString m_label;
    std::optional<RecordRef> m_about;
};

} // namespace lastrivet::ui
