// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/prints/PrintTask.h"

#include "core/base/Error.h"
#include "ui/convert/QtText.h"
#include "ui/print/NewFile.h"
#include "ui/print/Type.h"
#include "ui/shell/PersonalSettings.h"
#include "ui/shell/Session.h"
#include "ui/widgets/PictureLoader.h"

#include <QCoreApplication>
#include <QDesktopServices>
#include <QFileInfo>
#include <QSettings>
#include <QUrl>

#include <memory>
#include <utility>

namespace lastrivet::ui {

namespace {

QString tr(const char *text, int count = -1)
{
    return QCoreApplication::translate("Print", text, nullptr, count);
}

/// Everything the worker needs, so that it touches nothing of the window's.
struct Job {
    PrintOrder order;
    print::Imprint imprint;
    Snapshot records;
    evidence::PictureCache cache;
    print::Printed printed{};

    void run(Progress &progress)
    {
        const auto picture = [this](const packet::Photo &photo) {
            return cache.copy(*records->find(photo.id), evidence::PictureSize::Large);
        };
        const auto done = order.print(
            imprint, picture, [&progress](int percent) { return progress.report(percent, 100); });
        if (!done)
            return;
        printed = *done;
        progress.noteKept();
    }
};

void tell(Session &session, const Job &job)
{
    const QString name = QFileInfo(job.order.file).fileName();
    const print::Printed &printed = job.printed;
    const QString remark = job.order.remark ? job.order.remark() : QString();
    QStringList said{tr("%1 is written: %n pages.", printed.pages).arg(name)};
    if (printed.pictures > 0)
        said.append(tr("%n photographs are in it.", printed.pictures));
    if (printed.missing_pictures > 0)
        said.append(tr("%n photographs could not be printed.", printed.missing_pictures));
    if (!printed.unshown.empty())
        said.append(tr("No typeface on this computer has %1: boxes stand in their place.")
                        .arg(toQt(printed.unshown)));
    if (!remark.isEmpty())
        said.append(remark);
    session.say(said.join(QLatin1Char(' ')));
}

} // namespace

void carryOut(Session &session, PrintOrder order)
{
    const QString title = order.title;
    std::shared_ptr<Job> job;
    try {
        print::requireFonts();
        order.is_folder ? print::requireRoomForFolder(toPath(order.file))
                        : print::requireRoomFor(toPath(order.file));
        const bool isNoted = order.is_noted && !session.isReadOnly();
        const auto hash =
            isNoted ? session.project().notePrinted(toStd(title)) : session.project().journalHash();
        job = std::make_shared<Job>(Job{std::move(order),
                                        {hash, session.now()},
                                        session.records(),
                                        pictureCacheOf(session.project())});
    } catch (const Fault &fault) {
        session.complain(fault);
        return;
    }
    session.runLong(
        title, [job](Progress &progress) { job->run(progress); }, &session,
        [&session, job] {
            tell(session, *job);
            QDesktopServices::openUrl(QUrl::fromLocalFile(job->order.file));
        });
}

QString printFileName(const QString &title, const std::string &day, const QString &ending)
{
    QString name = title + QLatin1Char(' ') + toQt(day);
    for (QChar &letter : name) {
        if (letter == QChar::Nbsp)
            letter = QLatin1Char(' ');
        else if (QStringLiteral("/\\:*?\"<>|").contains(letter))
            letter = QLatin1Char('-');
    }
    return name + ending;
}

print::Choices usualChoices()
{
    QSettings kept = settingsOfUser();
    const PersonalSettings chosen(kept);
    return {.paper = chosen.paper(), .wording = print::wordingIn(chosen.printLanguage())};
}

} // namespace lastrivet::ui
