// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/FileTasks.h"

#include "core/verify/Verification.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"

#include <QCoreApplication>

#include <memory>

namespace lastrivet::ui::tasks {

namespace {

QString tr(const char *text, int count = -1)
{
    return QCoreApplication::translate("Tasks", text, nullptr, count);
}

void tellVerification(Session &session, const Verification &found)
{
    if (found.isFaultless()) {
        session.say(tr("Verified: %1 records, %2 journal rows and %3 files are as they should be.")
                        .arg(found.records)
                        .arg(found.journal_rows)
                        .arg(found.files));
        return;
    }
    const QString first = toQt(found.findings.front().text);
    session.complain(found.findings.size() == 1
                         ? tr("Verified, 1 fault found: %1").arg(first)
                         : tr("Verified, %1 faults found; the first: %2")
                               .arg(found.findings.size())
                               .arg(first));
}

} // namespace

void importInto(Session &session, const QString &)
{
    session.complain(tr("Nothing was imported."));
}

void exportTo(Session &session, const QString &)
{
    session.complain(tr("Nothing was exported."));
}

void verify(Session &session)
{
    const auto found = std::make_shared<Verification>();
    const auto folder = session.project().folder();
    session.runLong(
        tr("Verifying records and files"),
        [found, folder](Progress &) { *found = lastrivet::verify(folder); }, &session,
        [&session, found] { tellVerification(session, *found); });
}

} // namespace lastrivet::ui::tasks
