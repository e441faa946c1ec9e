// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/backup/BackupKeeper.h"

#include "core/base/Error.h"
#include "core/calendar/UtcTime.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"

#include <QStringList>

#include <optional>
#include <stdexcept>

namespace lastrivet::ui {

namespace {

constexpr int pollMilliseconds = 20000;
constexpr std::uint64_t megabyte = 1000 * 1000;

backup::Time timeOf(const Session &session)
{
    const auto utc = calendar::inUtc(session.now(), session.records()->project.time_zone)
                         .value_or(session.now());
    return backup::Time(utc.day().time_since_epoch() + std::chrono::minutes(utc.minuteOfDay()));
}

/// What `body` answers; nothing when the project's own disk is gone, which is told elsewhere.
template <class Body> auto unlessUnplugged(const Body &body) -> decltype(body())
{
    try {
        return body();
    } catch (const Fault &) {
        return {};
    }
}

/// What was wrong with the earlier backup, in sentences.
QStringList wordsOnEarlier(const backup::Report &report)
{
    QStringList words;
    if (!report.damaged.empty())
        words << BackupKeeper::tr("%n files of the earlier backup were damaged there; its disk may "
                                  "be failing.",
                                  nullptr, int(report.damaged.size()));
    if (!report.damaged_database.empty())
        words << BackupKeeper::tr("The database of the earlier backup was damaged; it is kept "
                                  "there as %1.")
                     .arg(toQt(report.damaged_database));
    if (!report.set_aside.empty())
        words << BackupKeeper::tr("%n files beside it that are not the project's are kept there "
                                  "under names with “set-aside” in them.",
                                  nullptr, int(report.set_aside.size()));
    return words;
}

/// Says that the work is over, however it ends.
class Running {
public:
    explicit Running(std::atomic<bool> &flag)
        : m_flag(flag)
    {
    }
    ~Running() { m_flag = false; }
    Running(const Running &) = delete;
    Running &operator=(const Running &) = delete;

private:
    std::atomic<bool> &m_flag;
};

} // namespace

BackupKeeper::BackupKeeper(Session &session, QObject *parent)
    : QObject(parent)
    , m_session(session)
{
    connect(&m_timer, &QTimer::timeout, this, &BackupKeeper::look);
    m_timer.start(pollMilliseconds);
    takeNote();
}

std::optional<backup::BackupChoice> BackupKeeper::choice() const
{
    return m_session.read([this] { return backup::choiceOf(m_session.project()); },
                          Session::Telling::EachTime);
}

void BackupKeeper::choose(const backup::BackupChoice &choice)
{
    if (choice == backup::choiceOf(m_session.project()))
        return;
    if (m_session.isReadOnly()) {
        m_session.complain(tr("This project is to read only: what was chosen for its backups is "
                              "not kept."));
        return;
    }
    backup::choose(m_session.project(), choice);
    m_tried.reset();
    Q_EMIT changed();
}

QString BackupKeeper::lastWords() const
{
    const auto read = m_session.read([this] { return backup::lastBackup(m_session.project()); });
    if (!read)
        return tr("It could not be read when the last backup was made.");
    const auto &last = *read;
    if (!last)
        return tr("No backup elsewhere was made yet.");
    const auto days = backup::daysSince(*last, m_session.project());
    const QString place = toQt(last->place);
    if (days == 0)
        return tr("The last backup was made today and read back: %1").arg(place);
    return tr("The last backup was made %n days ago and read back: %1", nullptr, int(days))
        .arg(place);
}

QString BackupKeeper::reminder() const
{
    if (m_session.records()->components.isEmpty() && m_session.records()->work_sessions.isEmpty())
        return {};
    return unlessUnplugged([this] { return standingWords(); });
}

QString BackupKeeper::standingWords() const
{
    const Project &project = m_session.project();
    switch (backup::standing(project)) {
    case backup::Standing::Fresh:
        return {};
    case backup::Standing::Never:
        return tr("There is no backup elsewhere yet: if this disk fails, these records and "
                  "photographs are gone.");
    case backup::Standing::Old:
        break;
    }
    const auto last = backup::lastBackup(project);
    return last ? tr("The last backup elsewhere is %n days old, and work was recorded since.",
                     nullptr, int(backup::daysSince(*last, project)))
                : QString();
}

void BackupKeeper::backUp(const QString &shelf, backup::Reading reading)
{
    if (m_isRunning->exchange(true)) {
        m_session.say(tr("A backup is running already."));
        return;
    }
    const auto report = std::make_shared<std::optional<backup::Report>>();
    const auto now = timeOf(m_session);
    m_session.runLong(
        tr("Backing up, in megabytes"),
        [=, running = m_isRunning, project = m_session.project().folder(),
         cancelled = tr("The backup was cancelled. The one before is as it was, and what was "
                        "copied so far is not copied again.")](Progress &progress) {
            const Running end(*running);
            *report = backup::backUp(
                project, toPath(shelf), now, reading, [&](const backup::CopyProgress &copied) {
                    return progress.report(qint64(copied.bytes_done / megabyte),
                                           qint64(copied.bytes_in_all / megabyte));
                });
            if (!*report)
                throw std::runtime_error(cancelled.toStdString());
            progress.noteKept();
        },
        this, [this, report, now] { finish(**report, now); });
}

void BackupKeeper::finish(const backup::Report &report, backup::Time now)
{
    const bool isNoted = m_session.isReadOnly() || unlessUnplugged([&] {
                             backup::noteBackup(m_session.project(),
                                                {now, report.place.string(), report.journal_hash});
                             return true;
                         });
    Q_EMIT changed();
    QStringList words{
        tr("Backed up and read back: %n new files.", nullptr, int(report.files_copied))};
    const QStringList earlier = wordsOnEarlier(report);
    words << earlier;
    if (report.is_same_disk)
        words << tr("The backup lies on the disk of the project, and would be lost with it.");
    if (!isNoted)
        words << tr("The project could not be told of it, and may remind you of an older backup.");
    const auto lost = report.missing.size() + report.unreadable.size() + report.altered.size();
    if (lost > 0)
        words << tr("%n files are missing or no longer what was taken in; “Verify records "
                    "and files” names them.",
                    nullptr, int(lost));
    const QString said = words.join(QLatin1Char(' '));
    if (isNoted && lost == 0 && earlier.isEmpty())
        m_session.say(said);
    else
        m_session.complain(said);
}

bool BackupKeeper::isDue(const backup::BackupChoice &choice)
{
    std::error_code none;
    const Project &project = m_session.project();
    // A mount point without its disk is a folder, too; the first backup there is asked for.
    if (!std::filesystem::is_directory(backup::placeOf(project.folder(), choice.shelf), none)) {
        m_tried.reset();
        return false;
    }
    const auto last = backup::lastBackup(project);
    return m_tried != m_session.today() && !(last && last->journal_hash == project.journalHash());
}

void BackupKeeper::lookAt(const backup::BackupChoice &choice)
{
    if (choice.shelf.empty() || !choice.is_automatic || isRunning() || !isDue(choice))
        return;
    m_tried = m_session.today();
    backUp(pathText(choice.shelf), backup::Reading::NewFiles);
}

void BackupKeeper::takeNote()
{
    if (unlessUnplugged([this] { return backup::takeNote(m_session.project()); }))
        Q_EMIT changed();
}

void BackupKeeper::look()
{
    takeNote();
    unlessUnplugged([this] {
        lookAt(backup::choiceOf(m_session.project()));
        return true;
    });
}

} // namespace lastrivet::ui
