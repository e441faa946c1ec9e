// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/journal/JournalFilter.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace lastrivet::ui {

class Session;

/// What the journal is searched for: words or a hash, a person, a kind, a period.
class JournalFilterBar final : public QWidget {
    Q_OBJECT

public:
    explicit JournalFilterBar(Session &session, QWidget *parent = nullptr);

    JournalFilter filter() const;
    void clear();
    void focusWords();
    /// What is typed for a day and is none; empty when every day is one.
    QString objection() const;
    /// Offers everybody who wrote something.
    void offerPeople(const QStringList &people);

Q_SIGNALS:
    void changed();

private:
    void build();
    void sayDays();
    /// A day as it was typed; the field's tip says which, or that it is none.
    std::optional<Moment> dayIn(QLineEdit &field) const;

    Session &m_session;
    QLineEdit *m_words;
    QComboBox *m_who;
    QComboBox *m_kind;
    QLineEdit *m_from;
    QLineEdit *m_until;
    QPushButton *m_clear;
    QLabel *m_wrong;
};

} // namespace lastrivet::ui
