// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/TodayActs.h"

#include "ui/convert/QtText.h"
#include "ui/convert/UsualFolders.h"
#include "ui/photos/PhotoIntake.h"
#include "ui/shell/Session.h"

#include <QFileDialog>

namespace lastrivet::ui {

TodayActs::TodayActs(Session &session, QWidget *parent)
    : QObject(parent)
    , m_session(session)
    , m_parent(parent)
    , m_intake(new PhotoIntake(session, this))
{
}

TodayActs::~TodayActs()
{
    // Files that are copied already must be stored, even when the page is gone.
    m_intake->finish();
}

void TodayActs::startWork(RecordRef record)
{
    const Step *step = m_session.records()->find(Id<Step>{record.id});
    const auto running = m_session.timer();
    if (!step || (running && running->step_id == step->id)) {
        m_session.goTo({RecordType::WorkSession, 0});
        return;
    }
    if (running) {
        m_session.complain(tr("The clock runs already, since %1. Stop it on the Log page first, so "
                              "that its time is not lost.")
                               .arg(dateText(running->began)));
        return;
    }
    if (!m_session.mayChange())
        return;
    if (m_session.setTimer(RunningTimer{m_session.now(), step->component_id, step->id, {}}))
        m_session.say(tr("The clock runs: %1").arg(toQt(step->title)));
}

void TodayActs::mend(RecordRef record)
{
    if (record.type == RecordType::Step)
        startWork(record);
    else if (record.type == RecordType::Closing)
        askForPhotos(Id<Closing>{record.id});
    else
        m_session.goTo(record);
}

void TodayActs::askForPhotos(Id<Closing> closing)
{
    takeIn(QFileDialog::getOpenFileNames(m_parent, tr("Take in photos"), picturesFolder(),
                                         tr("Photos (*.jpg *.jpeg *.png *.heic);;All files (*)")),
           closing);
}

void TodayActs::takeIn(const QStringList &files, Id<Closing> closing)
{
    const Closing *record = m_session.records()->find(closing);
    if (!record)
        return;
    m_intake->takeIn(files,
                     {{RecordType::Closing, closing.value()},
                      {RecordType::Component, record->component_id.value()}},
                     {Shows::Interior});
}

} // namespace lastrivet::ui
