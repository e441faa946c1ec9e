// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/certificate/TaskPanel.h"

#include "core/base/SortedIds.h"
#include "core/project/acts/CreditActs.h"
#include "ui/certificate/PaidHelpBox.h"
#include "ui/certificate/ScanList.h"
#include "ui/certificate/TenthsEditor.h"
#include "ui/convert/QtText.h"
#include "ui/journal/HistoryButton.h"
#include "ui/shell/Session.h"
#include "ui/widgets/ActLine.h"
#include "ui/widgets/Flow.h"
#include "ui/widgets/PhotoStrip.h"
#include "ui/widgets/PictureLoader.h"
#include "ui/widgets/ProjectFiles.h"
#include "ui/widgets/RecordForm.h"
#include "ui/widgets/RecordNames.h"
#include "ui/widgets/Section.h"
#include "ui/widgets/WithdrawAct.h"
#include "ui/widgets/WrappedText.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <string>

namespace lastrivet::ui {

namespace {

std::vector<RecordForm::Row> formRows()
{
    return {{"section"},
            {"task"},
            {"component_ids", false, TaskPanel::tr("Parts it was done on")},
            {"note", true}};
}

} // namespace

TaskPanel::TaskPanel(Session &session, PictureLoader &loader, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_drafts(session, "task_tenths")
    , m_heading(new QLabel(this))
    , m_tenths(new TenthsEditor(this))
    , m_paidHelp(new PaidHelpBox(session, this))
    , m_form(new RecordForm(session, RecordType::CreditTask, formRows(), this))
    , m_gap(new QLabel(this))
    , m_photos(new PhotoStrip(session, loader, this))
    , m_files(new ScanList(session, tr("Pictures named for it"), this))
    , m_sessions(new Section(session.theme(), tr("Log entries of its parts"),
                             tr("No log entry on its parts."), this))
    , m_ask(new ActLine(session, this))
    , m_withdraw(new QPushButton(tr("Withdraw"), this))
{
    loader.setFrame(m_photos->frame());
    build();
}

void TaskPanel::build()
{
    m_heading->setFont(m_session.theme().font(1));
    m_heading->setWordWrap(true);
    m_gap->setWordWrap(true);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 4, 16, 12);
    layout->setSpacing(12);
    for (QWidget *part :
         std::initializer_list<QWidget *>{m_heading, m_tenths, m_paidHelp, m_form, m_gap, m_photos,
                                          m_files, m_sessions, m_ask, buildActs()})
        layout->addWidget(part);
    layout->addStretch(1);
    connect(m_tenths, &TenthsEditor::kept, this, [this] {
        if (keep(m_tenths->tenths()))
            Q_EMIT settled();
    });
    connect(m_tenths, &TenthsEditor::changed, &m_soon, qOverload<>(&QTimer::start));
    connect(&m_soon, &QTimer::timeout, this, &TaskPanel::keepDraft);
    connect(m_tenths, &TenthsEditor::notApplicable, this, &TaskPanel::setNotApplicable);
    connect(m_paidHelp, &PaidHelpBox::wanted, this, [this] {
        // What is kept is asked about no more: a second press would take the tenths again.
        if (keep(m_paidHelp->tenths()))
            m_paidHelp->clear();
    });
    connect(m_files, &ScanList::filesOffered, this, &TaskPanel::attach);
    connect(m_files, &ScanList::takenOff, this, [this](qint64 id) { takeOff(Id<Media>{id}); });
    connect(m_sessions, &Section::chosen, &m_session, &Session::goTo);
    connect(m_ask, &ActLine::wanted, this, [this] {
        m_session.goTo({RecordType::CreditTask, m_ask->aboutId()});
    });
}

QWidget *TaskPanel::buildActs()
{
    auto *acts = new QWidget(this);
    auto *flow = new Flow(acts);
    m_withdraw->setProperty("flat", true);
    flow->addWidget(m_withdraw);
    flow->addWidget(new HistoryButton(
        [this]() -> std::optional<RecordRef> {
            if (!m_task)
                return std::nullopt;
            return RecordRef{RecordType::CreditTask, m_task.value()};
        },
        acts));
    connect(m_withdraw, &QPushButton::clicked, this, [this] {
        askToWithdraw(m_session, *m_ask, {RecordType::CreditTask, m_task.value()});
    });
    return acts;
}

QString TaskPanel::name() const
{
    const auto records = m_session.records();
    const CreditTask *task = records->find(m_task);
    if (!task)
        return {};
    return task->section.empty()
               ? toQt(task->task)
               : tr("%1: %2", "section: task").arg(toQt(task->section), toQt(task->task));
}

void TaskPanel::show(Id<CreditTask> id, credit::TaskEvidence evidence)
{
    const bool isOther = id != m_task;
    // Keeps what is being typed for the task before, which is a change of the records.
    if (isOther) {
        m_form->settle();
        keepDraft();
    }
    const auto records = m_session.records();
    const CreditTask *task = records->findLive(id);
    if (!task)
        return;
    m_ask->follow({{RecordType::CreditTask, id.value()}});
    m_task = id;
    m_heading->setText(breakable(name()));
    if (isOther || !m_tenths->isBeingTyped() || credit::tenthsOf(*task) == m_tenths->tenths())
        m_tenths->show(credit::tenthsOf(*task), !task->not_applicable);
    if (isOther)
        takeUpDraft();
    m_tenths->setEnabled(!m_session.isReadOnly());
    m_withdraw->setEnabled(!m_session.isReadOnly());
    m_paidHelp->show(id);
    m_form->show(id.value());
    m_files->show(task->media_ids);
    showEvidence(evidence);
}

void TaskPanel::hideEvent(QHideEvent *event)
{
    keepDraft();
    QWidget::hideEvent(event);
}

void TaskPanel::keepDraft()
{
    if (!m_task)
        return;
    const credit::Tenths tenths = m_tenths->tenths();
    const QString typed = m_tenths->isBeingTyped() ? QStringLiteral("%1 %2 %3 %4")
                                                         .arg(tenths.kit)
                                                         .arg(tenths.commercial)
                                                         .arg(tenths.assembly)
                                                         .arg(tenths.fabrication)
                                                   : QString();
    const QString kept = m_drafts.keep(std::to_string(m_task.value()), typed);
    // What could not be read until now.
    if (typed.isEmpty())
        type(kept);
}

void TaskPanel::takeUpDraft()
{
    type(m_drafts.of(std::to_string(m_task.value())));
}

void TaskPanel::type(const QString &draft)
{
    const QStringList words = draft.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    if (words.size() == 4)
        m_tenths->type({words[0].toInt(), words[1].toInt(), words[2].toInt(), words[3].toInt()});
}

void TaskPanel::showEvidence(const credit::TaskEvidence &evidence)
{
    const auto records = m_session.records();
    const CreditTask &task = *records->find(m_task);
    const bool isClaimed = task.assembly_tenths + task.fabrication_tenths > 0;
    m_gap->setVisible(isClaimed && evidence.pictures.empty());
    m_gap->setText(tr("No picture shows the builder at work on it. A photo of the parts named "
                      "above that is marked “builder at work” counts, and so does one attached "
                      "here."));
    m_photos->showFiles(evidence.pictures);
    std::vector<ListRow> rows;
    for (const Id<WorkSession> id : evidence.sessions) {
        const WorkSession &session = *records->find(id);
        ListRow row{{RecordType::WorkSession, id.value()},
                    partName(*records, session.component_id)};
        row.title = session.note.empty() ? row.title : toQt(session.note);
        row.detail = dateText(session.began);
        row.figure = session.minutes ? hoursText(*session.minutes) : QString();
        rows.push_back(std::move(row));
    }
    m_sessions->setRows(std::move(rows));
}

void TaskPanel::apply(const ChangeNotice &notice)
{
    m_form->apply(notice);
    m_photos->apply(notice);
}

bool TaskPanel::keep(const credit::Tenths &tenths)
{
    return m_session.change(tr("%1: tenths").arg(name()),
                            [&](Edit &edit) { acts::setTenths(edit, m_task, tenths); });
}

void TaskPanel::setNotApplicable()
{
    if (m_session.change(tr("%1: does not apply").arg(name()),
                         [&](Edit &edit) { acts::setNotApplicable(edit, m_task); }))
        Q_EMIT settled();
}

void TaskPanel::attach(const QStringList &files)
{
    attachFiles(m_session, name(), files, [this](Edit &edit, Id<Media> file) {
        edit.update(m_task, [&](CreditTask &changed) { insertSorted(changed.media_ids, file); });
    });
}

void TaskPanel::takeOff(Id<Media> file)
{
    m_session.change(tr("%1: picture taken off").arg(name()), [&](Edit &edit) {
        edit.update(m_task, [&](CreditTask &changed) { std::erase(changed.media_ids, file); });
    });
}

} // namespace lastrivet::ui
