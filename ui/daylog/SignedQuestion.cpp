// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/daylog/SignedQuestion.h"

#include "core/entry/SignedRegion.h"
#include "ui/shell/Session.h"
#include "ui/widgets/RecordNames.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>

#include <algorithm>

namespace lastrivet::ui {

namespace {

enum Answer { NotSaid, No, Yes, IsClosing };

} // namespace

SignedQuestion::SignedQuestion(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_words(new QLabel(this))
    , m_answer(new QComboBox(this))
{
    m_words->setWordWrap(true);
    m_answer->setAccessibleName(tr("Did this change what was inspected?"));
    auto *layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_words, 1);
    layout->addWidget(m_answer);
    hide();
}

void SignedQuestion::forget()
{
    if (m_answer->count() > 0)
        m_answer->setCurrentIndex(NotSaid);
}

void SignedQuestion::askAbout(const IdSet<Component> &parts)
{
    const auto records = m_session.records();
    IdSet<Closing> closings;
    for (const Id<Component> part : parts) {
        if (closings.empty())
            closings = entry::signedAndOpen(*records, *m_session.answer(), part);
    }
    setVisible(!closings.empty());
    const auto closing = closings.empty() ? Id<Closing>{} : closings.front();
    const auto step = entry::closingStep(*records, closings);
    if (closing == m_closing && step == m_closingStep)
        return;
    m_closing = closing;
    m_closingStep = step;
    m_answer->clear();
    if (!closing)
        return;
    m_words->setText(tr("“%1” is signed for and still open. Did this change what was inspected?")
                         .arg(shortName(*records, {RecordType::Closing, closing.value()})));
    m_answer->addItems({tr("not said"), tr("no"), tr("yes")});
    if (step)
        m_answer->addItem(tr("this is the closing itself"));
}

void SignedQuestion::apply(entry::EntryReading &reading) const
{
    const int answer = m_answer->currentIndex();
    for (WorkSession &session : reading.sessions) {
        if (answer == No || answer == Yes)
            session.changed_inspected = answer == Yes;
        if (answer == IsClosing)
            session.step_id = m_closingStep;
    }
}

} // namespace lastrivet::ui
