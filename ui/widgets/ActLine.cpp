// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/ActLine.h"

#include "core/entry/DayText.h"
#include "core/entry/DurationText.h"
#include "core/records/Description.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/RecordLine.h"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>

#include <algorithm>
#include <utility>

namespace lastrivet::ui {

ActLine::ActLine(Session &session, QWidget *parent)
    : Unfinished(parent)
    , m_session(session)
    , m_words(new QLabel(this))
    , m_textLabel(new QLabel(this))
    , m_text(new QLineEdit(this))
    , m_dayLabel(new QLabel(this))
    , m_day(new QLineEdit(this))
    , m_durationLabel(new QLabel(this))
    , m_duration(new QLineEdit(this))
    , m_personLabel(new QLabel(this))
    , m_person(new RecordLine(session, RecordType::Person, this))
    , m_toolLabel(new QLabel(this))
    , m_tool(new RecordLine(session, RecordType::Tool, this))
    , m_why(new QLabel(this))
    , m_confirm(new QPushButton(this))
    , m_leave(flatButton({}, this))
{
    build();
    for (RecordLine *line : {m_person, m_tool})
        line->keepUnknown();
    hide();
}

void ActLine::build()
{
    setFrameShape(QFrame::StyledPanel);
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::Button);
    m_words->setWordWrap(true);
    m_why->setWordWrap(true);
    m_confirm->setProperty("primary", true);
    auto *form = new QFormLayout;
    form->addRow(m_textLabel, m_text);
    form->addRow(m_dayLabel, m_day);
    form->addRow(m_durationLabel, m_duration);
    form->addRow(m_personLabel, m_person);
    form->addRow(m_toolLabel, m_tool);
    m_textLabel->setBuddy(m_text);
    m_dayLabel->setBuddy(m_day);
    m_durationLabel->setBuddy(m_duration);
    m_personLabel->setBuddy(m_person);
    m_toolLabel->setBuddy(m_tool);
    auto *buttons = new QHBoxLayout;
    buttons->addWidget(m_confirm);
    buttons->addWidget(m_leave);
    buttons->addStretch(1);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(12, 8, 12, 8);
    layout->addWidget(m_words);
    layout->addLayout(form);
    layout->addWidget(m_why);
    layout->addLayout(buttons);
    connect(m_confirm, &QPushButton::clicked, this, &ActLine::confirm);
    connect(m_leave, &QPushButton::clicked, this, &ActLine::leave);
    connect(m_text, &QLineEdit::returnPressed, this, &ActLine::confirm);
    connect(m_day, &QLineEdit::returnPressed, this, &ActLine::confirm);
    connect(m_duration, &QLineEdit::returnPressed, this, &ActLine::confirm);
    connect(m_person, &QLineEdit::returnPressed, this, &ActLine::confirm);
    connect(m_tool, &QLineEdit::returnPressed, this, &ActLine::confirm);
    connect(&m_session, &Session::changed, this, &ActLine::dropIfGone);
}

bool ActLine::isTheSame(const Question &question) const
{
    return !question.of.empty() && question.of == m_question.of &&
           question.words == m_question.words && question.confirm == m_question.confirm;
}

/// What is half answered gets the keyboard in the place of another question, the first time; in
/// the place of itself always: the button that asks often has the words of the one that answers.
bool ActLine::mayAsk(const Question &question)
{
    if (!isBegun())
        return true;
    if (isTheSame(question)) {
        takeKeyboard();
        return false;
    }
    const QStringList held =
        QStringList{question.words, question.confirm, question.textLabel} + contents();
    if (held == m_heldBackBy)
        return true;
    m_heldBackBy = held;
    takeKeyboard();
    m_session.complain(heldBackWords());
    return false;
}

void ActLine::follow(std::vector<RecordRef> records, std::string which)
{
    std::ranges::sort(records);
    m_shown = {std::move(records), std::move(which)};
    if (m_shown == m_about)
        bringBack();
    else if (isBegun() && (m_isActing || !isAboutGone()))
        park();
    else
        drop();
}

QString ActLine::askedWords() const
{
    return isHidden() ? QString() : m_question.words;
}

void ActLine::drop()
{
    if (isAncestorOf(window()->focusWidget()))
        leave();
    else
        putAway();
}

std::int64_t ActLine::aboutId() const
{
    return m_about.records.empty() ? 0 : m_about.records.front().id;
}

bool ActLine::isAboutGone() const
{
    const auto records = m_session.records();
    return std::ranges::any_of(m_about.records, [&](RecordRef record) {
        if (record.id == 0)
            return false;
        const void *found = records->find(record.type, record.id);
        return !found || isWithdrawn(describe(record.type), found);
    });
}

void ActLine::dropIfGone()
{
    if (!isAboutGone())
        return;
    // What is being done here ends with it.
    if (m_isActing)
        putAway();
    else
        drop();
}

void ActLine::ask(const Question &question, Act act)
{
    if (!mayAsk(question))
        return;
    m_heldBackBy.clear();
    m_about = m_shown;
    m_question = question;
    m_act = std::move(act);
    fill();
    show();
    noteFields();
    if (!question.textLabel.isEmpty())
        m_text->setFocus();
    else if (!question.personLabel.isEmpty())
        m_person->setFocus();
    else if (!question.dayLabel.isEmpty()) {
        // Enter confirms from there, too; a day that is typed at once is not lost.
        m_day->setFocus();
        m_day->selectAll();
    } else
        m_confirm->setFocus();
}

void ActLine::fill()
{
    m_words->setText(m_question.words);
    m_confirm->setText(m_question.confirm);
    m_leave->setText(m_question.leave.isEmpty() ? tr("Cancel") : m_question.leave);
    m_textLabel->setText(m_question.textLabel);
    m_text->setText(m_question.text);
    m_text->setAccessibleName(m_question.textLabel);
    m_dayLabel->setText(m_question.dayLabel);
    m_day->setText(dayText(m_session.today()));
    m_day->setAccessibleName(m_question.dayLabel);
    m_durationLabel->setText(m_question.durationLabel);
    m_duration->setText(m_question.duration ? hoursText(*m_question.duration) : QString());
    m_duration->setAccessibleName(m_question.durationLabel);
    m_personLabel->setText(m_question.personLabel);
    m_person->setChosen(m_question.person.value());
    m_person->setAccessibleName(m_question.personLabel);
    m_toolLabel->setText(m_question.toolLabel);
    m_tool->setChosen(m_question.tool.value());
    m_tool->setAccessibleName(m_question.toolLabel);
    for (const auto &[label, field] : {std::pair<QLabel *, QWidget *>{m_textLabel, m_text},
                                       {m_dayLabel, m_day},
                                       {m_durationLabel, m_duration},
                                       {m_personLabel, m_person},
                                       {m_toolLabel, m_tool}}) {
        label->setVisible(!label->text().isEmpty());
        field->setVisible(!label->text().isEmpty());
    }
    m_why->hide();
}

void ActLine::explain(const QString &why, QWidget *field)
{
    m_why->setText(why);
    m_why->show();
    field->setFocus();
}

/// What was answered; empty when something is missing, which is then said.
std::optional<ActLine::Answer> ActLine::answer()
{
    for (RecordLine *line : {m_person, m_tool}) {
        if (!line->settle()) {
            explain(line->unknownWords(), line);
            return std::nullopt;
        }
    }
    Answer given{m_text->text().trimmed(), std::nullopt, Id<Person>{m_person->chosen()},
                 entry::parseDuration(toStd(m_duration->text())), Id<Tool>{m_tool->chosen()}};
    given.day = entry::parseDayText(toStd(m_day->text()), m_session.today());
    if (!given.day)
        given.day = parseDay(m_day->text());
    if (given.text.isEmpty() && !m_question.textMissing.isEmpty())
        explain(m_question.textMissing, m_text);
    else if (!m_question.dayLabel.isEmpty() && !given.day)
        explain(tr("“%1” is no day.").arg(m_day->text()), m_day);
    else if (!m_question.dayLabel.isEmpty() && after(*given.day, m_session.now()))
        explain(tr("%1 lies ahead: only what has happened is recorded.").arg(dateText(given.day)),
                m_day);
    else if (!m_question.durationLabel.isEmpty() && !given.duration)
        explain(tr("How long did it take? Write it as 2h15 or 90m."), m_duration);
    else if (!m_question.personLabel.isEmpty() && !given.person)
        explain(tr("Somebody has to be named."), m_person);
    else
        return given;
    return std::nullopt;
}

void ActLine::confirm()
{
    const auto given = answer();
    if (!given)
        return;
    m_isActing = true;
    const bool isDone = m_act(*given);
    m_isActing = false;
    if (isDone)
        leave();
}

void ActLine::putAway()
{
    m_about = {};
    hide();
    noteLeft();
}

void ActLine::leave()
{
    putAway();
    Q_EMIT ended();
}

void ActLine::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape)
        leave();
    else
        Unfinished::keyPressEvent(event);
}

} // namespace lastrivet::ui
