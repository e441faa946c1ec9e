// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/PacketTask.h"

#include "core/base/Error.h"
#include "core/packet/Packet.h"
#include "ui/convert/QtText.h"
#include "ui/print/PacketPrinter.h"
#include "ui/shell/Session.h"

#include <QCoreApplication>
#include <QDesktopServices>
#include <QDir>
#include <QFileInfo>
#include <QLocale>
#include <QStandardPaths>
#include <QUrl>

#include <memory>

namespace lastrivet::ui {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("Packet", text);
}

/// Letter paper where people use it.
print::Choices choicesHere()
{
    print::Choices choices;
    const auto country = QLocale().territory();
    const bool isLetter = country == QLocale::UnitedStates || country == QLocale::Canada;
    choices.paper = isLetter ? print::Paper::Letter : print::Paper::A4;
    return choices;
}

/// The copies for print beside the photographs, or elsewhere when the project is read-only.
evidence::PictureCache cacheFor(const Session &session)
{
    const auto folder = session.project().folder();
    if (!session.isReadOnly())
        return evidence::PictureCache(folder);
    const QString elsewhere = QStandardPaths::writableLocation(QStandardPaths::CacheLocation);
    return {folder, toPath(QDir(elsewhere).filePath(QStringLiteral("copies")))};
}

/// Everything the worker needs, so that it touches nothing of the window's.
struct Job {
    Snapshot records;
    Session::AnswerPointer answer;
    Profile profile;
    IdSet<Closing> closings;
    print::Imprint imprint;
    evidence::PictureCache cache;
    std::filesystem::path place;
    print::Printed printed{};

    void run(Progress &progress)
    {
        const auto packet = packet::packetFor(*records, profile, *answer, closings);
        const auto picture = [this](const packet::Photo &photo) {
            return cache.copy(*records->find(photo.id), evidence::PictureSize::Large);
        };
        const auto done =
            print::printPacket(packet, imprint, picture, choicesHere(), place,
                               [&progress](int percent) { return progress.report(percent, 100); });
        if (done)
            printed = *done;
    }
};

QString titleOf(const Session &session, const IdSet<Closing> &closings)
{
    if (closings.size() != 1)
        return tr("%1 closings").arg(closings.size());
    return toQt(session.records()->find(closings.front())->title);
}

} // namespace

QString packetFileName(const Session &session, const IdSet<Closing> &closings)
{
    QString name = tr("Packet %1 %2").arg(titleOf(session, closings), toQt(session.today().text()));
    for (QChar &letter : name) {
        if (QStringLiteral("/\\:*?\"<>|").contains(letter))
            letter = QLatin1Char('-');
    }
    return name + QStringLiteral(".pdf");
}

void makePacket(Session &session, const IdSet<Closing> &closings, const QString &file)
{
    const QString title = tr("Packet for %1").arg(titleOf(session, closings));
    std::shared_ptr<Job> job;
    try {
        const auto hash = session.isReadOnly() ? session.project().journalHash()
                                               : session.project().notePrinted(toStd(title));
        job = std::make_shared<Job>(Job{session.records(),
                                        session.answer(),
                                        session.project().profile(),
                                        closings,
                                        {hash, session.now()},
                                        cacheFor(session),
                                        toPath(file)});
    } catch (const Fault &fault) {
        session.complain(toQt(fault.what()));
        return;
    }
    session.runLong(
        title, [job](Progress &progress) { job->run(progress); }, &session,
        [&session, job, file] {
            session.say(tr("The packet is written: %1, %2 pages, %3 photographs.")
                            .arg(QFileInfo(file).fileName())
                            .arg(job->printed.pages)
                            .arg(job->printed.pictures));
            QDesktopServices::openUrl(QUrl::fromLocalFile(file));
        });
}

} // namespace lastrivet::ui
