// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/FileTasks.h"

#include "core/base/Clock.h"
#include "core/base/Error.h"
#include "core/exchange/Archive.h"
#include "core/exchange/DocumentWriter.h"
#include "core/exchange/Import.h"
#include "core/records/Description.h"
#include "core/records/RecordType.h"
#include "core/verify/Verification.h"
#include "ui/convert/FieldText.h"
#include "ui/convert/MoneyText.h"
#include "ui/convert/NumberText.h"
#include "ui/convert/QtText.h"
#include "ui/convert/RefusalText.h"
#include "ui/convert/UsualFolders.h"
#include "ui/prints/PrintTask.h"
#include "ui/shell/FindingsDialog.h"
#include "ui/shell/Session.h"

#include <QCoreApplication>
#include <QCursor>
#include <QDir>
#include <QFileInfo>
#include <QGuiApplication>
#include <QStringList>

#include <cstddef>
#include <memory>
#include <optional>
#include <stdexcept>
#include <string>

namespace lastrivet::ui::tasks {

namespace {

QString tr(const char *text, int count = -1)
{
    return QCoreApplication::translate("Tasks", text, nullptr, count);
}

void tellImport(Session &session, const exchange::ImportReport &report)
{
    QString words = tr("Imported: %1 new records, %2 known before, %3 files.")
                        .arg(report.addedInAll())
                        .arg(report.skipped)
                        .arg(report.files_copied);
    if (!report.files_missing.empty())
        words += QLatin1Char(' ') +
                 tr("%n files were not found; the first: %1.", int(report.files_missing.size()))
                     .arg(toQt(report.files_missing.front()));
    if (!report.far_ahead.empty())
        words +=
            QLatin1Char(' ') + tr("%n records speak of days more than a year ahead; the first: %1.",
                                  int(report.far_ahead.size()))
                                   .arg(toQt(report.far_ahead.front()));
    const QString unknown = unknownCurrencyText(report.unknown_currencies);
    session.say(unknown.isEmpty() ? words : words + QLatin1Char(' ') + unknown);
}

std::optional<RecordType> listCalled(const QString &name)
{
    for (std::size_t i = 0; i < recordTypeCount; ++i) {
        if (toQt(plural(RecordType(i))) == name)
            return RecordType(i);
    }
    return std::nullopt;
}

/// The place in the document with its records counted from 1; a place in no list of records as it
/// is.
QString placeInWords(const std::string &pointer)
{
    const QStringList steps = toQt(pointer).split(QLatin1Char('/'), Qt::SkipEmptyParts);
    const auto type = listCalled(steps.value(0));
    bool isCounted = false;
    const qlonglong before = steps.value(1).toLongLong(&isCounted);
    if (!type || !isCounted)
        return toQt(pointer);
    const QString words =
        tr("%1, number %2 in the file").arg(recordsTitle(*type), countText(before + 1));
    const Field *field = describe(*type).find(toStd(steps.value(2)));
    return field ? words + QStringLiteral(", ") + fieldWords(*field) : words;
}

/// File, place, record and what is wrong, as far as they are known.
QString whereAndWhat(const exchange::InputError &error, const QString &file)
{
    QStringList pieces{file, placeInWords(error.place), toQt(error.record), inWords(error.what)};
    pieces.removeAll(QString());
    QString told = pieces.value(0);
    for (const QString &piece : pieces.mid(1))
        told = withColon(told, piece);
    return told;
}

void tellErrors(Session &session, const exchange::InputErrors &errors, const QString &file)
{
    const QString first = whereAndWhat(errors.front(), QFileInfo(file).fileName());
    session.complain(
        errors.size() == 1
            ? tr("Nothing was imported. %1").arg(first)
            : tr("Nothing was imported; %1 errors. The first: %2").arg(errors.size()).arg(first));
}

void tellVerification(Session &session, const Verification &found, QWidget *window)
{
    if (found.isFaultless()) {
        QString words =
            tr("Verified: %1 records, %2 journal rows and %3 files are as they should be.")
                .arg(found.records)
                .arg(found.journal_rows)
                .arg(found.files - found.files_without_sha256);
        if (found.files_without_sha256 > 0)
            words += QLatin1Char(' ') +
                     tr("%n files have no SHA-256 on record, so that nothing can be said of them.",
                        int(found.files_without_sha256));
        session.say(words);
        return;
    }
    session.complain(tr("Looked over: not everything is as it should be."));
    (new FindingsDialog(session, found, window))->open();
}

void tellArchive(Session &session, const exchange::ArchiveReport &report, const QString &name)
{
    if (!report.missing.empty())
        session.complain(tr("%1 was written without %n files that are not in the project; “Verify "
                            "records and files” names them.",
                            int(report.missing.size()))
                             .arg(name));
    else if (!report.altered.empty())
        session.complain(
            tr("%1 was written; %n files in it are no longer what was taken in; “Verify "
               "records and files” names them.",
               int(report.altered.size()))
                .arg(name));
    else
        session.say(
            tr("The whole project with %n files was written to %1.", int(report.files)).arg(name));
}

void archiveTo(Session &session, const QString &file)
{
    const auto report = std::make_shared<std::optional<exchange::ArchiveReport>>();
    const auto folder = session.project().folder();
    session.runLong(
        tr("Writing the whole project into one file"),
        [=, cancelled = tr("The export was cancelled.")](Progress &progress) {
            *report =
                exchange::writeArchive(folder, toPath(file), SystemClock{}.now(), [&](double part) {
                    return progress.report(qint64(part * 100), 100);
                });
            if (!*report)
                throw std::runtime_error(cancelled.toStdString());
            progress.noteKept();
        },
        &session,
        [&session, report, name = QFileInfo(file).fileName()] {
            tellArchive(session, **report, name);
        });
}

} // namespace

void importInto(Session &session, const QString &file)
{
    QGuiApplication::setOverrideCursor(Qt::WaitCursor);
    try {
        const auto result = exchange::importDocument(session.project(), toPath(file));
        if (result)
            tellImport(session, *result);
        else
            tellErrors(session, result.reason(), file);
    } catch (const Fault &fault) {
        session.complain(tr("Nothing was imported. %1").arg(inWords(fault.message())));
    }
    QGuiApplication::restoreOverrideCursor();
}

QString exportName(const Session &session)
{
    QString name = toQt(session.records()->project.name);
    // What stands behind a point would give way to the ending of the kind that is chosen.
    name.replace(QLatin1Char('.'), QLatin1Char(' '));
    const QString file = printFileName(name.simplified(), session.today().text(), QString());
    return QDir(documentsFolder()).filePath(file.trimmed());
}

void exportTo(Session &session, const QString &file)
{
    if (file.endsWith(QLatin1String(".zip"), Qt::CaseInsensitive)) {
        archiveTo(session, file);
        return;
    }
    const auto records = session.records();
    session.runLong(
        tr("Exporting records"),
        [records, file](Progress &progress) {
            exchange::writeDocumentFile(*records, toPath(file));
            progress.noteKept();
        },
        &session,
        [&session, file] {
            session.say(tr("All records were written to %1.").arg(QFileInfo(file).fileName()));
        });
}

void verify(Session &session, QWidget *window)
{
    const auto found = std::make_shared<Verification>();
    const auto folder = session.project().folder();
    session.runLong(
        tr("Verifying records and files"),
        [found, folder](Progress &progress) {
            *found = lastrivet::verify(folder, progress.stopToken());
        },
        window, [&session, found, window] { tellVerification(session, *found, window); });
}

} // namespace lastrivet::ui::tasks
