// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/journal/MergeTask.h"

#include "core/base/Error.h"
#include "core/merge/FilesAhead.h"
#include "core/project/SecondDatabases.h"
#include "ui/convert/QtText.h"
#include "ui/convert/RefusalText.h"
#include "ui/journal/JournalCall.h"
#include "ui/shell/Session.h"

#include <QCoreApplication>
#include <QCursor>
#include <QGuiApplication>
#include <QStringList>
#include <QWidget>

#include <functional>
#include <memory>

namespace lastrivet::ui {

namespace {

QString tr(const char *text, int count = -1)
{
    return QCoreApplication::translate("Merge", text, nullptr, count);
}

QString inOneSentence(const MergeReport &report, std::size_t copied)
{
    const int toDecide = int(report.conflicts.size());
    if (report.changes == 0)
        return toDecide == 0 ? tr("Nothing new: this project has every change of the other copy.")
                             : tr("Nothing new: this project has every change of the other copy; "
                                  "%n things are still to decide.",
                                  toDecide);
    QStringList said{tr("%n changes of another copy are brought in", int(report.changes))};
    if (copied > 0)
        said << tr("%n files copied", int(copied));
    if (!report.missing_files.empty())
        said << tr("%n files are in neither copy", int(report.missing_files.size()));
    said << (toDecide > 0 ? tr("%n things to decide", toDecide) : tr("nothing to decide"));
    return tr("%1.").arg(said.join(QStringLiteral(", ")));
}

void refuse(Session &session, const QString &why)
{
    session.complain(tr("Nothing was merged. %1").arg(why));
}

void tell(Session &session, const MergeReport &report, std::size_t copied, QWidget *view)
{
    session.say(inOneSentence(report, copied + report.files));
    if (!report.conflicts.empty())
        callDecisions(*view);
}

using Afterwards = std::function<void()>;

void finish(Session &session, merge::FilesAhead &files, const QString &place, QWidget *view,
            const Afterwards &afterwards)
{
    QGuiApplication::setOverrideCursor(Qt::WaitCursor);
    bool isMerged = false;
    try {
        const std::size_t copied = files.copied();
        const auto report = session.project().merge(toPath(place));
        isMerged = bool(report);
        if (isMerged) {
            files.stay();
            tell(session, *report, copied, view);
        } else {
            refuse(session, inWords(report.reason()));
        }
    } catch (const Fault &fault) {
        refuse(session, inWords(fault.message()));
    }
    try {
        if (isMerged)
            afterwards();
    } catch (const Fault &fault) {
        session.complain(inWords(fault.message()));
    }
    QGuiApplication::restoreOverrideCursor();
}

void start(Session &session, const QString &place, QWidget *view, const Afterwards &afterwards)
{
    if (session.isReadOnly()) {
        refuse(session, inWords(session.project().readOnlyMessage()));
        return;
    }
    const auto files =
        std::make_shared<merge::FilesAhead>(session.project().folder(), toPath(place));
    const auto why = std::make_shared<QString>();
    session.runLong(
        tr("Merging another copy"),
        [files, why](Progress &progress) {
            try {
                files->bring([&](std::size_t done, std::size_t total) {
                    return progress.report(qint64(done), qint64(total));
                });
            } catch (const Fault &fault) {
                *why = inWords(fault.message());
            }
        },
        view,
        [&session, files, why, place, view, afterwards] {
            if (why->isEmpty())
                finish(session, *files, place, view, afterwards);
            else
                refuse(session, *why);
        });
}

} // namespace

void mergeInto(Session &session, const QString &place, QWidget *view)
{
    start(session, place, view, [] {});
}

void mergeSecond(Session &session, const QString &database, QWidget *view)
{
    start(session, database, view,
          [&session, database] { putAway(session.project(), toPath(database)); });
}

} // namespace lastrivet::ui
