// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/backup/PlainPapers.h"

#include "core/entry/CreationDays.h"
#include "core/evidence/PictureCache.h"
#include "core/exchange/PlainRecords.h"
#include "core/packet/Logbook.h"
#include "ui/print/LogbookPrinter.h"
#include "ui/prints/PrintTask.h"
#include "ui/shell/Session.h"

#include <stdexcept>

namespace lastrivet::ui {

namespace {

/// Opening a project has more urgent work.
constexpr int minuteMilliseconds = 60 * 1000;
constexpr int hourMilliseconds = 60 * minuteMilliseconds;
constexpr std::size_t rowsAtOnce = 1000;

packet::Logbook wholeLog(const Project &project)
{
    entry::CreationDays created(project);
    while (created.readSome(rowsAtOnce))
        ;
    return packet::logbookOf(*project.records(), project.profile(), {},
                             [&](Id<WorkSession> id) { return created.createdOn(id); });
}

/// Reads the folder like a program of its own, so that it touches nothing of the window's. False
/// when it was cancelled, which leaves the log of before.
bool writePapers(const std::filesystem::path &folder, const print::Choices &choices,
                 Progress &progress)
{
    const auto project = Project::open(folder, {nullptr, {}, true});
    const Snapshot records = project->records();
    // Before the lists take their time: the window may write meanwhile, and the log is older.
    const print::Imprint imprint{project->journalHash(), project->now()};
    exchange::writePlainRecords(*records, folder);
    evidence::PictureCache cache(folder);
    const auto printed = print::printLogbook(
        wholeLog(*project), imprint,
        [&](const packet::Photo &photo) {
            return cache.copy(*records->find(photo.id), evidence::PictureSize::Large);
        },
        choices, exchange::logbookIn(folder),
        [&](int percent) { return progress.report(percent, 100); });
    return printed.has_value();
}

} // namespace

PlainPapers::PlainPapers(Session &session, QObject *parent)
    : QObject(parent)
    , m_session(session)
{
    m_timer.setSingleShot(true);
    connect(&m_timer, &QTimer::timeout, this, &PlainPapers::writeWhenDue);
    m_timer.start(minuteMilliseconds);
}

void PlainPapers::write()
{
    if (m_session.isReadOnly()) {
        m_session.complain(tr("This project is to read only: nothing can be written into it."));
        return;
    }
    m_session.runLong(
        tr("Writing the log and lists into the folder"),
        [folder = m_session.project().folder(), choices = usualChoices(),
         cancelled = tr("Cancelled: all records are there as CSV, the builder's log as it was "
                        "before.")](Progress &progress) {
            if (!writePapers(folder, choices, progress))
                throw std::runtime_error(cancelled.toStdString());
            progress.noteKept();
        },
        &m_session,
        [session = &m_session] {
            session->say(tr("The folder now holds the builder's log as PDF, all records as CSV, "
                            "and a page that explains them."));
        });
}

/// Once on each day of a project that is left open; what failed or was cancelled waits for the
/// next.
void PlainPapers::writeWhenDue()
{
    m_timer.start(hourMilliseconds);
    if (m_triedOn == m_session.today())
        return;
    m_triedOn = m_session.today();
    if (!m_session.isReadOnly() &&
        exchange::arePlainRecordsDue(*m_session.records(), m_session.project().folder(),
                                     m_session.today()))
        write();
}

} // namespace lastrivet::ui
