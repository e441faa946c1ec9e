// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Id.h"
#include "core/base/Minutes.h"
#include "core/base/Moment.h"
#include "core/records/Person.h"
#include "core/records/Tool.h"
#include "ui/widgets/Unfinished.h"

#include <functional>
#include <optional>

class QLabel;
class QLineEdit;
class QPushButton;

namespace lastrivet::ui {

class RecordLine;
class Session;

/// Asks what an act needs to know, in place: a text, a day, a person; Enter does it, Escape leaves.
class ActLine final : public Unfinished {
    Q_OBJECT

public:
    /// What is asked. A field is shown when its label is not empty.
    struct Question {
        QString words;
        QString confirm;
        QString textLabel;
        QString text;
        QString dayLabel;
        QString durationLabel;
        std::optional<Minutes> duration;
        QString personLabel;
        Id<Person> person;
        /// May stay open.
        QString toolLabel{};
        Id<Tool> tool{};
        /// What the text is completed with when it must not stay empty.
        QString textMissing;
    };
    /// What was answered.
    struct Answer {
        QString text;
        std::optional<Moment> day;
        Id<Person> person;
        std::optional<Minutes> duration;
        Id<Tool> tool{};
    };
    /// True when it was done; else the question stays.
    using Act = std::function<bool(const Answer &)>;

    explicit ActLine(Session &session, QWidget *parent = nullptr);

    void ask(const Question &question, Act act);
    void leave();

Q_SIGNALS:
    /// Done or left: where focus should go is the page's business.
    void ended();

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    void build();
    void confirm();
    std::optional<Answer> answer();
    void explain(const QString &why, QWidget *field);

    Session &m_session;
    Question m_question;
    Act m_act;
    QLabel *m_words;
    QLabel *m_textLabel;
    QLineEdit *m_text;
    QLabel *m_dayLabel;
    QLineEdit *m_day;
    QLabel *m_durationLabel;
    QLineEdit *m_duration;
    QLabel *m_personLabel;
    RecordLine *m_person;
    QLabel *m_toolLabel;
    RecordLine *m_tool;
    QLabel *m_why;
    QPushButton *m_confirm;
};

} // namespace lastrivet::ui
