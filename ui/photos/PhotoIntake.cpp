// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/PhotoIntake.h"

#include "core/evidence/CameraClock.h"
#include "core/evidence/IntakeRun.h"
#include "core/evidence/MediaFile.h"
#include "core/evidence/PictureCache.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"

#include <QFile>
#include <QMetaMethod>
#include <QTimer>

#include <map>
#include <memory>
#include <system_error>
#include <utility>

namespace lastrivet::ui {

namespace {

constexpr unsigned workers = 2;
/// So many reasons fit into the line at the foot of the window.
constexpr qsizetype sentencesTold = 3;

/// Copies that are not fetched from here by its end are removed: whoever cancels at the last moment
/// has nothing kept, either.
struct Work {
    Work(std::vector<evidence::IncomingFile> incoming, const Session &session)
        : files(std::move(incoming))
        , folder(session.project().folder())
        , records(session.records())
        , now(session.now())
    {
    }
    Work(const Work &) = delete;
    Work &operator=(const Work &) = delete;
    ~Work()
    {
        for (const evidence::Batch &batch : batches)
            evidence::discard(folder, batch);
    }

    std::vector<evidence::IncomingFile> files;
    std::vector<evidence::Batch> batches;
    std::filesystem::path folder;
    Snapshot records;
    Moment now;
};

std::vector<evidence::IncomingFile> incoming(const Records &records, const QStringList &files,
                                             const std::vector<Media::Link> &links,
                                             const WordSet<Shows> &shows)
{
    std::string partName;
    for (const Media::Link &link : links) {
        if (link.subject == RecordType::Component)
            partName = records.find(Id<Component>{link.id})->name;
    }
    std::vector<evidence::IncomingFile> incoming;
    for (const QString &file : files) {
        evidence::IncomingFile one;
        one.path = std::filesystem::path(QFile::encodeName(file).toStdString());
        one.part_name = partName;
        one.links = links;
        one.shows = shows;
        incoming.push_back(std::move(one));
    }
    return incoming;
}

/// Copies all files, as far as the person lets it.
void copyAll(Work &work, Progress &progress)
{
    evidence::Intake intake(work.folder, *work.records, work.now);
    std::stop_source stop;
    const evidence::IntakeListener listener{
        [&](const evidence::IntakeProgress &done) {
            if (!progress.report(qint64(done.files_done), qint64(done.files_in_all)))
                stop.request_stop();
        },
        [&](evidence::Batch batch) { work.batches.push_back(std::move(batch)); }};
    prepareAll(intake, work.files, workers, listener, stop.get_token());
}

bool isGone(const std::filesystem::path &folder)
{
    std::error_code error;
    return !folder.empty() && !std::filesystem::is_directory(folder, error);
}

} // namespace

QStringList intakeTroubles(const evidence::IntakeReport &report)
{
    QStringList sentences;
    std::map<std::filesystem::path, int> gone;
    for (const evidence::IntakeFailure &failure : report.failures) {
        const auto folder = failure.source.parent_path();
        if (isGone(folder))
            ++gone[folder];
        else
            sentences.append(inWords(failure.why));
    }
    for (const auto &[folder, count] : gone)
        sentences.append(PhotoIntake::tr("%n files were not taken in, because the folder %1 is "
                                         "not there any more.",
                                         nullptr, count)
                             .arg(pathText(folder)));
    return sentences;
}

QStringList putBackWords(const evidence::IntakeReport &report)
{
    if (qsizetype(report.put_back.size()) > sentencesTold)
        return {PhotoIntake::tr("%n files on record were missing or damaged and are there again; "
                                "damaged ones are kept in backups/damaged.",
                                nullptr, int(report.put_back.size()))};
    QStringList sentences;
    for (const Message &told : report.put_back)
        sentences.append(inWords(told));
    return sentences;
}

PhotoIntake::PhotoIntake(Session &session, QObject *parent)
    : QObject(parent)
    , m_session(session)
    , m_rows(new RowStore(session, ChangeKind::Change, this))
{
    connect(m_rows, &RowStore::ended, this, &PhotoIntake::tell);
}

void PhotoIntake::takeIn(const QStringList &files, const std::vector<Media::Link> &links,
                         const WordSet<Shows> &shows, const BegunAct &begun)
{
    if (files.isEmpty() || m_session.isReadOnly())
        return;
    const auto work =
        std::make_shared<Work>(incoming(*m_session.records(), files, links, shows), m_session);
    const auto running = m_session.runLong(
        tr("Taking in photos"), [work](Progress &progress) { copyAll(*work, progress); }, this,
        [this, work, begun] {
            if (!work->batches.empty())
                m_rows->add(std::exchange(work->batches, {}), begun);
        });
    running->markAsBringing();
}

void PhotoIntake::finish()
{
    m_rows->finish();
}

/// Where somebody lists the reasons, the sentence points there; else it has room for a few.
QString PhotoIntake::whyNot(int files, const QStringList &troubles) const
{
    if (troubles.size() > 1 && isSignalConnected(QMetaMethod::fromSignal(&PhotoIntake::notTakenIn)))
        return tr("%n were not; the list says why.", nullptr, files);
    QStringList sentences = troubles.mid(0, sentencesTold);
    if (troubles.size() > sentencesTold)
        sentences.append(
            tr("%n more were not taken in.", nullptr, int(troubles.size() - sentencesTold)));
    return sentences.join(QLatin1Char(' '));
}

void PhotoIntake::tell(const evidence::IntakeReport &report, const QString &fault)
{
    const QStringList troubles = intakeTroubles(report);
    QStringList words{tr("%n taken in.", nullptr, int(report.taken.size()))};
    if (!report.already_there.empty())
        words.append(tr("%n were there already.", nullptr, int(report.already_there.size())));
    words.append(putBackWords(report));
    const auto wrong =
        evidence::datedWrongly(*m_session.records(), report.taken, m_session.today());
    if (wrong > 0)
        words.append(tr("%n are dated ahead or years before the project; was the camera's clock "
                        "right?",
                        nullptr, int(wrong)));
    if (!troubles.isEmpty())
        words.append(whyNot(int(report.failures.size()), troubles));
    if (!fault.isEmpty())
        words.append(tr("The rest was not taken in: %1").arg(fault));
    const QString sentences = words.join(QLatin1Char(' '));
    if (!troubles.isEmpty() || !fault.isEmpty())
        m_session.complain(sentences);
    else
        sayTaken(sentences);
    std::vector<qint64> media;
    for (const auto id : report.taken)
        media.push_back(id.value());
    Q_EMIT takenIn(media);
    Q_EMIT notTakenIn(troubles);
    m_withoutCopies.insert(m_withoutCopies.end(), report.taken.begin(), report.taken.end());
    if (!m_isMakingCopies)
        makeCopies();
}

/// What the photos belong to was said before them, with an offer to undo it: both stay.
void PhotoIntake::sayTaken(const QString &sentences)
{
    if (!m_rows->isUndoable())
        m_session.say(sentences);
    else if (const QString begun = toQt(m_rows->begun()); begun.isEmpty())
        m_session.sayUndoable(sentences);
    else
        m_session.sayUndoable(QStringLiteral("%1. %2").arg(begun, sentences));
}

/// Makes the copies that screens and packets show, one at a time: other work goes between.
void PhotoIntake::makeCopies()
{
    m_isMakingCopies = !m_withoutCopies.empty();
    if (!m_isMakingCopies)
        return;
    const Media *media = m_session.records()->find(m_withoutCopies.back());
    m_withoutCopies.pop_back();
    const evidence::PictureCache cache(m_session.project().folder());
    m_session.executor().run(
        this,
        [cache, media = media ? *media : Media()] {
            if (media.kind == MediaKind::Photo && !cache.path(media, evidence::PictureSize::Small))
                cache.make(media);
        },
        [this] { QTimer::singleShot(0, this, &PhotoIntake::makeCopies); });
}

} // namespace lastrivet::ui
