// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/WatchedFolder.h"

#include "ui/convert/QtText.h"
#include "ui/photos/ArrivedFiles.h"
#include "ui/photos/PhotoIntake.h"
#include "ui/photos/RowStore.h"
#include "ui/shell/PersonalSettings.h"
#include "ui/shell/Session.h"

#include <algorithm>
#include <memory>
#include <set>
#include <system_error>
#include <utility>

namespace lastrivet::ui {

namespace {

constexpr auto folderKey = "watched_folder";
constexpr auto pausedKey = "watched_folder_paused";
constexpr auto marksKey = "watched_folder_marks";
/// The system has only so many watches; the rescan finds what lies deeper.
constexpr qsizetype mostFoldersWatched = 64;

/// A project may come from somebody else, and with it the name of a folder to be copied from: it is
/// watched only where somebody at this computer has said so.
bool isChosenHere(const Session &session, const QString &watched)
{
    QSettings kept = settingsOfUser();
    return PersonalSettings(kept).watchedFolder(pathText(session.project().folder())) == watched;
}

void noteChoice(const Session &session, const QString &watched)
{
    QSettings kept = settingsOfUser();
    PersonalSettings(kept).setWatchedFolder(pathText(session.project().folder()), watched);
}

} // namespace

struct WatchedFolder::Look {
    std::filesystem::path folder;
    std::shared_ptr<evidence::ArrivingFiles> arriving;
    bool isPassingOver = false;
    bool isThere = false;
    std::vector<evidence::SeenFile> files;
    std::vector<evidence::SeenFile> whole;

    /// Away from the window: each file has a mark to be worked out.
    void run();
};

void WatchedFolder::Look::run()
{
    std::error_code error;
    isThere = std::filesystem::is_directory(folder, error);
    if (!isThere)
        return;
    files = evidence::filesIn(folder);
    const auto arrived = arriving->look(files, evidence::ArrivingFiles::Clock::now());
    if (isPassingOver) {
        arriving->settleWith(files);
        return;
    }
    const std::set<std::filesystem::path> wanted(arrived.begin(), arrived.end());
    std::ranges::copy_if(files, std::back_inserter(whole),
                         [&](const auto &file) { return wanted.contains(file.path); });
}

WatchedFolder::WatchedFolder(Session &session, QObject *parent)
    : WatchedFolder(session, Pace(), parent)
{
}

WatchedFolder::WatchedFolder(Session &session, Pace pace, QObject *parent)
    : QObject(parent)
    , m_session(session)
    , m_pace(pace)
    , m_rows(new RowStore(session, ChangeKind::Automatic, this))
{
    connect(m_rows, &RowStore::ended, this, &WatchedFolder::finishStoring);
    m_settle.setSingleShot(true);
    connect(&m_settle, &QTimer::timeout, this, &WatchedFolder::look);
    connect(&m_rescan, &QTimer::timeout, this, &WatchedFolder::look);
    connect(&m_watcher, &QFileSystemWatcher::directoryChanged, this, [this] {
        if (!m_settle.isActive())
            m_settle.start(200);
    });
    const auto folder = session.localState(folderKey).value;
    if (!folder || session.isReadOnly())
        return;
    m_folder = toQt(*folder);
    const LocalState paused = session.localState(pausedKey);
    if (!paused.isRead || paused.value || !isChosenHere(session, m_folder))
        m_state = State::Paused;
    else
        begin();
}

void WatchedFolder::begin()
{
    const LocalState marks = m_session.localState(marksKey);
    if (!marks.isRead) {
        // Without them all that lies there would come in again, and what was withdrawn with it.
        m_session.complain(tr("Watching the folder %1 is paused, because it could not be read what "
                              "came from it before.")
                               .arg(m_folder));
        setState(State::Paused);
        return;
    }
    m_arriving = std::make_shared<evidence::ArrivingFiles>(toPath(m_folder), m_pace.settling);
    m_arriving->readMarks(marks.value.value_or(""));
    m_rescan.start(m_pace.rescan);
    setState(State::Watching);
    QTimer::singleShot(0, this, &WatchedFolder::look);
}

void WatchedFolder::setState(State state)
{
    if (state == m_state)
        return;
    const State before = std::exchange(m_state, state);
    if (state == State::NotThere)
        m_session.say(tr("The watched folder %1 is not there; photos are taken in again when it "
                         "is back.")
                          .arg(m_folder));
    else if (state == State::Watching && before == State::NotThere)
        m_session.say(tr("The watched folder %1 is back.").arg(m_folder));
    Q_EMIT changed();
}

void WatchedFolder::watch(const QString &folder, Begin how)
{
    stop();
    m_folder = folder;
    m_session.keepLocalState(folderKey, toStd(folder));
    noteChoice(m_session, folder);
    m_isPassingOver = how == Begin::FromNowOn;
    begin();
}

void WatchedFolder::pause()
{
    m_session.keepLocalState(pausedKey, "1");
    m_rescan.stop();
    m_settle.stop();
    setState(State::Paused);
}

void WatchedFolder::goOn()
{
    m_session.keepLocalState(pausedKey, std::nullopt);
    noteChoice(m_session, m_folder);
    begin();
}

void WatchedFolder::stop()
{
    for (const char *key : {folderKey, pausedKey, marksKey})
        m_session.keepLocalState(key, std::nullopt);
    noteChoice(m_session, {});
    m_rescan.stop();
    m_settle.stop();
    if (const QStringList watched = m_watcher.directories(); !watched.isEmpty())
        m_watcher.removePaths(watched);
    m_arriving.reset();
    m_folder.clear();
    m_lastTaken.clear();
    setState(State::Off);
}

void WatchedFolder::look()
{
    if (m_isLooking || m_isCopying || !m_arriving || m_state == State::Paused)
        return;
    m_isLooking = true;
    const auto look = std::make_shared<Look>();
    look->folder = toPath(m_folder);
    look->arriving = m_arriving;
    look->isPassingOver = m_isPassingOver;
    m_session.executor().run(
        this, [look] { look->run(); },
        [this, look] {
            m_isLooking = false;
            if (m_arriving == look->arriving && m_state != State::Paused)
                finishLook(*look);
            else if (m_arriving && m_state != State::Paused)
                this->look();
        });
}

void WatchedFolder::finishLook(const Look &look)
{
    setState(look.isThere ? State::Watching : State::NotThere);
    if (!look.isThere)
        return;
    watchFolders(look);
    if (look.isPassingOver) {
        m_isPassingOver = false;
        keepMarks();
    } else if (!look.whole.empty()) {
        copy(look.whole);
    } else if (m_arriving->isWaiting()) {
        m_settle.start(m_pace.settling);
    }
}

void WatchedFolder::watchFolders(const Look &look)
{
    QStringList folders{m_folder};
    for (const evidence::SeenFile &file : look.files) {
        const QString folder = pathText(file.path.parent_path());
        if (!folders.contains(folder) && folders.size() < mostFoldersWatched)
            folders.append(folder);
    }
    const QStringList watched = m_watcher.directories();
    folders.removeIf([&](const QString &folder) { return watched.contains(folder); });
    if (!folders.isEmpty())
        m_watcher.addPaths(folders);
}

void WatchedFolder::copy(std::vector<evidence::SeenFile> files)
{
    m_isCopying = true;
    const auto copying = std::make_shared<ArrivedFiles>(std::move(files), m_session.project());
    m_copied = copying->files;
    m_session.executor().run(
        this, [copying] { copying->copy(); },
        [this, copying] { m_rows->add(std::exchange(copying->batches, {})); });
}

/// A fault is one of the project or its disk, not of these files: it would only come again, and the
/// files shall come in when it is over.
void WatchedFolder::finishStoring(const evidence::IntakeReport &report, const QString &thrown)
{
    const auto again =
        std::ranges::find_if(report.failures, &evidence::IntakeFailure::may_come_again);
    const QString fault =
        thrown.isEmpty() && again != report.failures.end() ? inWords(again->why) : thrown;
    m_isCopying = false;
    if (!m_arriving)
        return;
    if (fault.isEmpty())
        settleWithCopied();
    tell(report);
    if (!fault.isEmpty()) {
        m_session.complain(tr("Watching the folder %1 is paused, because photos from it could not "
                              "be stored: %2")
                               .arg(m_folder, fault));
        pause();
    }
    Q_EMIT changed();
    QTimer::singleShot(0, this, &WatchedFolder::look);
}

void WatchedFolder::settleWithCopied()
{
    std::vector<evidence::SeenFile> dealtWith;
    std::ranges::copy_if(m_copied, std::back_inserter(dealtWith), [](const auto &file) {
        std::error_code error;
        return std::filesystem::exists(file.path, error);
    });
    m_arriving->settleWith(dealtWith);
    keepMarks();
}

void WatchedFolder::tell(const evidence::IntakeReport &report)
{
    QStringList words = putBackWords(report);
    if (!report.taken.empty()) {
        m_lastTaken.clear();
        for (const Id<Media> media : report.taken)
            m_lastTaken.push_back(media.value());
        words.prepend(tr("%n came in from the watched folder.", nullptr, int(m_lastTaken.size())));
    }
    if (!words.isEmpty())
        m_session.say(words.join(QLatin1Char(' ')));
    if (const QStringList troubles = intakeTroubles(report); !troubles.isEmpty()) {
        m_session.complain(troubles.size() == 1
                               ? troubles.front()
                               : tr("%n files from the watched folder were not taken in; the "
                                    "page Photos says why.",
                                    nullptr, int(troubles.size())));
        Q_EMIT notTakenIn(troubles);
    }
}

void WatchedFolder::keepMarks()
{
    m_session.keepLocalState(marksKey, m_arriving->marks());
}

} // namespace lastrivet::ui
