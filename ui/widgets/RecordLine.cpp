// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/RecordLine.h"

#include "ui/shell/Session.h"
#include "ui/widgets/RecordNames.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QKeyEvent>
#include <QStringListModel>

#include <algorithm>

namespace lastrivet::ui {

namespace {

constexpr std::size_t offeredAtOnce = 12;
constexpr std::size_t comparedAtMost = 1000;

} // namespace

RecordLine::RecordLine(Session &session, RecordType type, QWidget *parent)
    : QLineEdit(parent)
    , m_session(session)
    , m_type(type)
    , m_names(new QStringListModel(this))
    , m_completer(new QCompleter(m_names, this))
{
    m_completer->setCompletionMode(QCompleter::UnfilteredPopupCompletion);
    m_completer->setWidget(this);
    connect(m_completer, qOverload<const QModelIndex &>(&QCompleter::activated), this,
            [this](const QModelIndex &index) { take(index.row()); });
    connect(this, &QLineEdit::textEdited, this, &RecordLine::offer);
    connect(this, &QLineEdit::editingFinished, this, &RecordLine::settle);
}

void RecordLine::setChosen(std::int64_t id)
{
    m_chosen = id;
    setText(id ? shortName(*m_session.records(), {m_type, id}) : QString());
    setCursorPosition(0);
    setModified(false);
}

void RecordLine::typeAgain(const QString &words)
{
    setText(words);
    setModified(true);
}

void RecordLine::offer()
{
    const auto records = m_session.records();
    m_offered = candidates(*records, m_session.partFinder(), m_type, text(), offeredAtOnce);
    QStringList names;
    for (const std::int64_t id : m_offered)
        names.append(shortName(*records, {m_type, id}));
    m_names->setStringList(names);
    if (names.isEmpty())
        m_completer->popup()->hide();
    else
        m_completer->complete();
}

void RecordLine::take(int row)
{
    if (row < 0 || row >= int(m_offered.size()))
        return;
    setChosen(m_offered[std::size_t(row)]);
    Q_EMIT chosenByPerson(m_chosen);
}

bool RecordLine::settle()
{
    if (!isModified() || m_completer->popup()->isVisible())
        return true;
    if (text().trimmed().isEmpty()) {
        setChosen(0);
        Q_EMIT chosenByPerson(0);
        return true;
    }
    const auto records = m_session.records();
    m_offered = candidates(*records, m_session.partFinder(), m_type, text(), comparedAtMost);
    if (!m_offered.empty()) {
        // "Jo" is Jo, also where Joan came on record before.
        const QString typed = text().trimmed();
        const auto called = std::ranges::find_if(m_offered, [&](std::int64_t id) {
            return shortName(*records, {m_type, id}).compare(typed, Qt::CaseInsensitive) == 0;
        });
        take(called == m_offered.end() ? 0 : int(called - m_offered.begin()));
        return true;
    }
    if (m_keepsUnknown)
        return false;
    m_session.complain(tr("Nothing on record is called “%1”; the line is as it was before.")
                           .arg(text().trimmed()));
    setChosen(m_chosen);
    return false;
}

QString RecordLine::unknownWords() const
{
    return tr("Nothing on record is called “%1”.").arg(text().trimmed());
}

void RecordLine::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Down && !m_completer->popup()->isVisible()) {
        offer();
        return;
    }
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (isEnter && m_completer->popup()->isVisible()) {
        const QModelIndex current = m_completer->popup()->currentIndex();
        m_completer->popup()->hide();
        if (current.isValid())
            take(current.row());
        else
            settle();
        return;
    }
    if (event->key() == Qt::Key_Escape && isModified()) {
        m_completer->popup()->hide();
        setChosen(m_chosen);
        return;
    }
    QLineEdit::keyPressEvent(event);
}

} // namespace lastrivet::ui
