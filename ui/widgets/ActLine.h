// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Id.h"
#include "core/base/Minutes.h"
#include "core/base/Moment.h"
#include "core/records/Person.h"
#include "core/records/RecordType.h"
#include "core/records/Tool.h"
#include "ui/widgets/Unfinished.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

class QLabel;
class QLineEdit;
class QPushButton;

namespace lastrivet::ui {

class RecordLine;
class Session;

/// Asks what an act needs to know, in place: a text, a day, a person; Enter does it, Escape leaves.
///
/// What is half answered holds another question back once. In a place that shows one record after
/// the other it waits with its record, and goes when that does.
class ActLine final : public Unfinished {
    Q_OBJECT

public:
    /// What is asked. A field is shown when its label is not empty; a day is one of what happened.
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
        /// The records that it is asked of, where that matters: asked the same of the same once
        /// more, it goes on with what is typed.
        std::vector<RecordRef> of{};
        /// The button that leaves, where what is asked about has happened already.
        QString leave{};
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
    /// What it asks was settled in another way; the keyboard does not stay in it.
    void drop();
    /// The words of the question that is shown; empty when none is.
    QString askedWords() const;
    /// The place shows these records now, and is asked about them from now on; id 0 stands for none
    /// of the type. `which` tells them apart where there is no record yet.
    void follow(std::vector<RecordRef> records, std::string which = {});
    /// What was shown when the question was asked, until it is done or left.
    const std::vector<RecordRef> &about() const { return m_about.records; }
    const std::string &aboutWhich() const { return m_about.which; }
    /// Of the one record that was shown then; 0 when there was none.
    std::int64_t aboutId() const;

Q_SIGNALS:
    /// Done or left: where focus should go is the page's business.
    void ended();

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    struct Subject {
        std::vector<RecordRef> records;
        std::string which;

        bool operator==(const Subject &) const = default;
    };

    void build();
    bool mayAsk(const Question &question);
    bool isTheSame(const Question &question) const;
    bool isAboutGone() const;
    void dropIfGone();
    void putAway();
    void fill();
    void confirm();
    std::optional<Answer> answer();
    void explain(const QString &why, QWidget *field);

    Session &m_session;
    Question m_question;
    Act m_act;
    /// While the act is done, which may take away what it is about.
    bool m_isActing = false;
    Subject m_shown;
    Subject m_about;
    /// The question that was held back last, and what was half answered then.
    QStringList m_heldBackBy;
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
    QPushButton *m_leave;
};

} // namespace lastrivet::ui
