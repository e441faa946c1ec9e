// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/widgets/Unfinished.h"

class QLabel;
class QPushButton;

namespace lastrivet::ui {

class FormRows;
class PersonBox;

/// A few fields in place for something a person does, with a button that does it.
///
/// Ctrl+Enter does it, Esc leaves it; nothing that is typed is lost when the page is left. A form
/// for something that goes on record calls `noteFields` when it is started.
class ActForm : public Unfinished {
    Q_OBJECT

public:
    ActForm(const QString &doWords, QWidget *parent = nullptr);

    void setTitle(const QString &title);
    void setDoWords(const QString &words);
    /// Whether there is somewhere to go without doing it.
    void setLeavable(bool isLeavable);
    /// Says below the fields what is missing; empty takes it back.
    void hint(const QString &sentence);

Q_SIGNALS:
    void left();

protected:
    /// Adds a field with its label, which also names it for screen readers. Below a choice of
    /// people it is said when the name in it becomes a new one.
    void addField(const QString &label, QWidget *field);
    /// Hides a field with its label, or shows it again.
    void setFieldVisible(QWidget *field, bool isVisible);
    void addWide(QWidget *widget);
    /// Where the form is longer than its page, the page goes to the form's beginning.
    void goToTop();
    /// Does what the form is for; true when it was done and the form can go.
    virtual bool perform() = 0;
    /// Performs, and goes when that was done.
    void tryToPerform();
    void keyPressEvent(QKeyEvent *event) override;
    bool eventFilter(QObject *watched, QEvent *event) override;
    void showEvent(QShowEvent *event) override;
    bool focusNextPrevChild(bool next) override;

private:
    /// The Tab key comes to the fields as they stand, and to the buttons, made before, behind them.
    void putButtonsLast();
    int rowOf(QWidget *field) const;
    void followNames(PersonBox &who);
    void tellNewcomer();

    QLabel *m_title;
    FormRows *m_fields;
    /// Null where nobody is asked for.
    PersonBox *m_who = nullptr;
    bool m_isWhoAsked = true;
    QLabel *m_newcomer = nullptr;
    QLabel *m_hint;
    QPushButton *m_leave;
    QPushButton *m_do;
};

} // namespace lastrivet::ui
