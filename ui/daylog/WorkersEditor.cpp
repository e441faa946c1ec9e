// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/daylog/WorkersEditor.h"

#include "core/entry/DurationText.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/RecordLine.h"
#include "ui/widgets/RecordNames.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace lastrivet::ui {

WorkersEditor::WorkersEditor(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_rows(new QVBoxLayout)
    , m_add(new RecordLine(session, RecordType::Person, this))
{
    m_add->setPlaceholderText(tr("somebody else who worked"));
    m_add->setAccessibleName(tr("Add somebody who worked"));
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(2);
    layout->addLayout(m_rows);
    layout->addWidget(m_add);
    connect(m_add, &RecordLine::chosenByPerson, this, [this](qint64 id) {
        m_add->setChosen(0);
        if (id)
            change([id](Workers &workers) { workers.push_back({Id<Person>{id}}); });
    });
}

void WorkersEditor::show(Id<WorkSession> session)
{
    const WorkSession *found = m_session.records()->find(session);
    const Workers workers = found ? found->workers : Workers();
    setEnabled(found && !m_session.isReadOnly());
    if (session == m_shown && workers == m_workers)
        return;
    m_shown = session;
    m_workers = workers;
    fill();
}

void WorkersEditor::fill()
{
    while (QLayoutItem *item = m_rows->takeAt(0)) {
        item->widget()->hide();
        item->widget()->deleteLater();
        delete item;
    }
    for (std::size_t i = 0; i < m_workers.size(); ++i)
        m_rows->addWidget(makeRow(i));
}

QWidget *WorkersEditor::makeRow(std::size_t place)
{
    const WorkSession::Worker &worker = m_workers[place];
    auto *row = new QWidget(this);
    const QString name = personName(*m_session.records(), worker.person_id);
    auto *minutes = new QLineEdit(worker.minutes ? hoursText(*worker.minutes) : QString(), row);
    minutes->setPlaceholderText(tr("all of it"));
    minutes->setAccessibleName(tr("How long %1 worked").arg(name));
    minutes->setMaximumWidth(130);
    auto *paid = new QCheckBox(tr("paid"), row);
    paid->setChecked(worker.paid);
    auto *removal = flatButton(tr("Remove"), row);
    removal->setAccessibleName(tr("Remove %1").arg(name));
    auto *layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(new QLabel(name, row), 1);
    layout->addWidget(minutes);
    layout->addWidget(paid);
    layout->addWidget(removal);
    const Place here{m_shown, place, worker.person_id};
    connect(minutes, &QLineEdit::editingFinished, this, [this, here, minutes] {
        // Before the line goes, which finishes its editing once more.
        const bool isTyped = minutes->isModified();
        minutes->setModified(false);
        if (isTyped && !setMinutes(here, minutes->text()))
            minutes->setModified(true);
    });
    connect(paid, &QCheckBox::clicked, this, [this, here](bool isPaid) {
        const auto outcome =
            changeAt(here, [&](WorkSession::Worker &known) { known.paid = isPaid; });
        if (outcome != Session::Outcome::Made)
            fill();
    });
    connect(removal, &QPushButton::clicked, this, [this, place] {
        change([&](Workers &workers) { workers.erase(workers.begin() + std::ptrdiff_t(place)); });
    });
    return row;
}

bool WorkersEditor::setMinutes(const Place &place, const QString &text)
{
    const auto minutes = entry::parseDuration(toStd(text));
    if (!minutes && !text.trimmed().isEmpty()) {
        m_session.complain(tr("“%1” is no duration; write it as 2h15 or 90m.").arg(text));
        fill();
        return true;
    }
    const auto outcome =
        changeAt(place, [&](WorkSession::Worker &worker) { worker.minutes = minutes; });
    if (outcome == Session::Outcome::AgainstRules)
        fill();
    return outcome != Session::Outcome::NotSaved;
}

void WorkersEditor::change(const std::function<void(Workers &)> &body)
{
    if (m_shown)
        changeOf(m_shown, body);
}

Session::Outcome WorkersEditor::changeAt(const Place &place,
                                         const std::function<void(WorkSession::Worker &)> &body)
{
    return changeOf(place.session, [&](Workers &workers) {
        if (place.row < workers.size() && workers[place.row].person_id == place.person)
            body(workers[place.row]);
    });
}

Session::Outcome WorkersEditor::changeOf(Id<WorkSession> session,
                                         const std::function<void(Workers &)> &body)
{
    return m_session.attempt(tr("Log entry: who worked"), [&](Edit &edit) {
        edit.update(session, [&](WorkSession &changed) { body(changed.workers); });
    });
}

} // namespace lastrivet::ui
