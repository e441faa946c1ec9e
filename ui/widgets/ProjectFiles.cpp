// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/ProjectFiles.h"

#include "core/base/Error.h"
#include "core/evidence/IntakeStore.h"
#include "core/evidence/MediaFile.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"

#include <QCoreApplication>
#include <QDesktopServices>
#include <QDir>
#include <QFileInfo>
#include <QMimeData>
#include <QUrl>

#include <utility>
#include <vector>

namespace lastrivet::ui {

namespace {

QString tr(const char *text, int count = -1)
{
    return QCoreApplication::translate("ProjectFiles", text, nullptr, count);
}

/// Of several nobody knows which is meant.
QString onlyFileEnding(const QMimeData &offered, const QStringList &endings)
{
    const QStringList files = filesIn(offered);
    const bool isOne = files.size() == 1 &&
                       endings.contains(QFileInfo(files.front()).suffix(), Qt::CaseInsensitive) &&
                       !QFileInfo(files.front()).isDir();
    return isOne ? files.front() : QString();
}

/// As many as one change takes in.
bool attachSome(Session &session, const QString &name,
                const std::vector<evidence::IncomingFile> &files,
                const std::function<void(Edit &, Id<Media>)> &attach)
{
    try {
        const evidence::CopiedFiles copied(session.project(), files);
        const int count = int(files.size() - copied.failures().size());
        auto outcome = Session::Outcome::NotSaved;
        if (!copied.isEmpty())
            outcome =
                session.attempt(tr("%1: %n files attached", count).arg(name), [&](Edit &edit) {
                    for (const Id<Media> file : copied.put(edit))
                        attach(edit, file);
                });
        if (outcome != Session::Outcome::Made)
            copied.discard();
        if (!copied.failures().empty())
            session.complain(inWords(copied.failures().front().why));
        return outcome == Session::Outcome::Made;
    } catch (const Fault &fault) {
        session.complain(fault);
        return false;
    }
}

} // namespace

bool attachFiles(Session &session, const QString &name, const QStringList &files,
                 const std::function<void(Edit &, Id<Media>)> &attach)
{
    bool isAny = false;
    for (qsizetype first = 0; first < files.size(); first += qsizetype(evidence::largestBatch)) {
        std::vector<evidence::IncomingFile> incoming;
        for (const QString &file : files.mid(first, qsizetype(evidence::largestBatch))) {
            evidence::IncomingFile one;
            one.path = toPath(file);
            incoming.push_back(std::move(one));
        }
        isAny = attachSome(session, name, incoming, attach) || isAny;
    }
    return isAny;
}

void openFile(Session &session, Id<Media> id)
{
    const Media *media = session.records()->find(id);
    if (!media)
        return;
    const auto file = evidence::locateToOpen(session.project().folder(), *media);
    if (!file)
        session.complain(tr("%1 is not opened: it is not there, or is no picture, video or PDF as "
                            "its name says.")
                             .arg(toQt(media->file)));
    else if (!QDesktopServices::openUrl(QUrl::fromLocalFile(pathText(*file))))
        session.complain(tr("This computer has no program that opens %1.").arg(toQt(media->file)));
}

QStringList filesIn(const QMimeData &offered)
{
    QStringList files;
    for (const QUrl &url : offered.urls()) {
        if (url.isLocalFile())
            files << url.toLocalFile();
    }
    return files;
}

QString projectIn(const QMimeData &offered)
{
    const QStringList files = filesIn(offered);
    const QString folder = files.size() == 1 ? files.front() : QString();
    const bool isProject = !folder.isEmpty() && QFileInfo(folder).isDir() &&
                           QFileInfo(QDir(folder).filePath(QStringLiteral("records.db"))).isFile();
    return isProject ? folder : QString();
}

QString documentIn(const QMimeData &offered)
{
    return onlyFileEnding(offered, {QStringLiteral("json")});
}

QString listIn(const QMimeData &offered)
{
    return onlyFileEnding(offered, {QStringLiteral("csv"), QStringLiteral("tsv")});
}

} // namespace lastrivet::ui
