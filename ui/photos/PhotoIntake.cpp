// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/PhotoIntake.h"

#include "core/evidence/IntakeRun.h"
#include "core/evidence/MediaFile.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"

#include <QFile>

namespace lastrivet::ui {

namespace {

constexpr unsigned workers = 2;
constexpr qsizetype failuresNamed = 3;

struct Work {
    std::vector<evidence::IncomingFile> files;
    std::vector<evidence::Batch> batches;
    std::filesystem::path folder;
    Snapshot records;
    Moment now;
};

/// Copies all files, or leaves nothing behind when the person cancels.
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
    if (!progress.isCancelled())
        return;
    for (const evidence::Batch &batch : work.batches)
        evidence::discard(work.folder, batch);
    work.batches.clear();
}

} // namespace

PhotoIntake::PhotoIntake(Session &session, QObject *parent)
    : QObject(parent)
    , m_session(session)
{
}

std::vector<evidence::IncomingFile>
PhotoIntake::incoming(const QStringList &files, const std::vector<Media::Link> &links) const
{
    std::string partName;
    for (const Media::Link &link : links) {
        if (link.subject == RecordType::Component)
            partName = m_session.records()->find(Id<Component>{link.id})->name;
    }
    std::vector<evidence::IncomingFile> incoming;
    for (const QString &file : files) {
        evidence::IncomingFile one;
        one.path = std::filesystem::path(QFile::encodeName(file).toStdString());
        one.part_name = partName;
        one.links = links;
        incoming.push_back(std::move(one));
    }
    return incoming;
}

void PhotoIntake::takeIn(const QStringList &files, const std::vector<Media::Link> &links)
{
    if (files.isEmpty() || m_session.isReadOnly())
        return;
    const auto work = std::make_shared<Work>(Work{incoming(files, links),
                                                  {},
                                                  m_session.project().folder(),
                                                  m_session.records(),
                                                  m_session.now()});
    m_session.runLong(
        tr("Taking in photos"), [work](Progress &progress) { copyAll(*work, progress); }, this,
        [this, work] { store(work->batches); });
}

void PhotoIntake::store(std::vector<evidence::Batch> &batches)
{
    evidence::IntakeReport report;
    for (evidence::Batch &batch : batches) {
        try {
            report.append(evidence::store(m_session.project(), std::move(batch)));
        } catch (const std::exception &fault) {
            m_session.complain(toQt(fault.what()));
            break;
        }
    }
    tell(report);
    std::vector<qint64> media;
    for (const auto id : report.taken)
        media.push_back(id.value());
    Q_EMIT takenIn(media);
}

void PhotoIntake::tell(const evidence::IntakeReport &report)
{
    QStringList words{tr("%n taken in", nullptr, int(report.taken.size()))};
    if (!report.already_there.empty())
        words.append(tr("%n were there already", nullptr, int(report.already_there.size())));
    if (report.failures.empty()) {
        m_session.say(words.join(QStringLiteral("; ")));
        return;
    }
    words.append(tr("%n not taken in:", nullptr, int(report.failures.size())));
    QStringList why;
    for (const auto &failure : report.failures) {
        if (why.size() < failuresNamed)
            why.append(QStringLiteral("%1: %2").arg(toQt(evidence::shownName(failure.source)),
                                                    inWords(failure.why)));
    }
    m_session.complain(words.join(QStringLiteral("; ")) + QLatin1Char(' ') +
                       why.join(QStringLiteral(" ")));
}

} // namespace lastrivet::ui
