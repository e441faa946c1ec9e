// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/daylog/Understood.h"

#include "ui/convert/FieldText.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Flow.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/RecordNames.h"

#include <QLabel>
#include <QVBoxLayout>

namespace lastrivet::ui {

namespace {

constexpr qsizetype longestNote = 60;

QString shortened(const QString &text)
{
    return text.size() > longestNote ? text.left(longestNote - 1) + QStringLiteral("…") : text;
}

} // namespace

Understood::Understood(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_facts(new QWidget(this))
    , m_told(new QLabel(this))
{
    m_told->setWordWrap(true);
    m_told->setTextFormat(Qt::PlainText);
    auto *flow = new Flow(m_facts);
    flow->setContentsMargins(0, 0, 0, 0);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(Theme::space);
    layout->addWidget(m_facts);
    layout->addWidget(m_told);
}

void Understood::add(const QString &text)
{
    auto *label = new QLabel(text, m_facts);
    label->setTextFormat(Qt::PlainText);
    label->setProperty("chip", true);
    m_facts->layout()->addWidget(label);
}

QStringList Understood::texts() const
{
    QStringList texts;
    for (int i = 0; i < m_facts->layout()->count(); ++i) {
        if (const auto *label = qobject_cast<QLabel *>(m_facts->layout()->itemAt(i)->widget()))
            texts.append(label->text());
    }
    if (!m_told->text().isEmpty())
        texts.append(m_told->text().split(QLatin1Char('\n')));
    return texts;
}

void Understood::nameIt()
{
    m_facts->setVisible(m_facts->layout()->count() > 0);
    m_told->setVisible(!m_told->text().isEmpty());
    setAccessibleName(texts().join(QStringLiteral(", ")));
}

void Understood::show(const entry::EntryReading &reading)
{
    clearLayout(*m_facts->layout());
    addFacts(reading);
    QStringList told;
    for (const Message &error : reading.errors)
        told.append(QStringLiteral("! ") + inWords(error));
    for (const Message &problem : reading.problems)
        told.append(QStringLiteral("? ") + inWords(problem));
    m_told->setText(told.join(QLatin1Char('\n')));
    nameIt();
}

void Understood::say(const QString &sentence)
{
    const QString told = m_told->text();
    m_told->setText(told.isEmpty() ? sentence : told + QLatin1Char('\n') + sentence);
    nameIt();
}

QString Understood::whenText(const WorkSession &session) const
{
    const bool isToday = session.began->dayOnly() == m_session.today();
    return isToday && !session.began->hasTime() ? tr("today") : dateText(*session.began);
}

QString Understood::whereText(const WorkSession &session) const
{
    const QString part = partName(*m_session.records(), session.component_id);
    const QString time = session.minutes ? hoursText(*session.minutes) : tr("no time");
    return tr("%1 on %2").arg(time, part.isEmpty() ? tr("no part") : part);
}

void Understood::addPeople(const WorkSession &session)
{
    const auto records = m_session.records();
    for (const auto &worker : session.workers) {
        QString text = personName(*records, worker.person_id);
        if (worker.minutes)
            text = tr("%1, %2").arg(text, hoursText(*worker.minutes));
        add(worker.paid ? tr("%1, paid").arg(text) : text);
    }
}

void Understood::addFacts(const entry::EntryReading &reading)
{
    if (reading.sessions.empty())
        return;
    const auto records = m_session.records();
    const WorkSession &first = reading.sessions.front();
    add(whenText(first));
    for (const WorkSession &session : reading.sessions)
        add(whereText(session));
    const QString kind = plainWord(word(first.kind));
    add(reading.kind_is_guessed ? tr("%1, by the words").arg(kind) : kind);
    if (const Squawk *squawk = records->find(first.squawk_id))
        add(tr("squawk %1").arg(toQt(squawk->number)));
    if (reading.sessions.size() == 1)
        addPeople(first);
    else if (first.workers.size() > 1)
        add(tr("%n people, their time shared too", nullptr, int(first.workers.size())));
    for (const auto step : reading.steps_done)
        add(tr("ticks “%1”").arg(shortName(*records, {RecordType::Step, step.value()})));
    if (!first.note.empty())
        add(tr("“%1”").arg(shortened(toQt(first.note))));
}

} // namespace lastrivet::ui
