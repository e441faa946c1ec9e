// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/MainWindow.h"

#include "ui/lists/ListDialog.h"
#include "ui/shell/NoticeBars.h"
#include "ui/shell/ProjectView.h"
#include "ui/shell/Session.h"
#include "ui/widgets/ProjectFiles.h"

#include <QApplication>
#include <QDragEnterEvent>
#include <QDropEvent>
#include <QFileInfo>
#include <QMimeData>
#include <QStringList>
#include <QTimer>

// What is dropped on the window where no page takes it: a project, records, a list.
namespace lastrivet::ui {

namespace {

bool endsWith(const QString &file, const QStringList &endings)
{
    return endings.contains(QFileInfo(file).suffix(), Qt::CaseInsensitive);
}

bool isDocument(const QString &file)
{
    return endsWith(file, {QStringLiteral("json")});
}

bool isList(const QString &file)
{
    return endsWith(file, {QStringLiteral("csv"), QStringLiteral("tsv")});
}

/// The one file that is dropped; of several nobody knows which is meant.
QString onlyFile(const QMimeData &offered)
{
    const QStringList files = filesIn(offered);
    return files.size() == 1 ? files.front() : QString();
}

} // namespace

bool MainWindow::canTake(const QMimeData &offered) const
{
    // A dialog that is open is about the project that another one would put away.
    if (QApplication::activeModalWidget())
        return false;
    if (!projectIn(offered).isEmpty())
        return true;
    const QString file = onlyFile(offered);
    if (!m_view || m_view->session().isReadOnly())
        return false;
    // What asks about a document stands above the pages, and the bench covers it.
    return isList(file) || (isDocument(file) && m_view->isVisible());
}

void MainWindow::dragEnterEvent(QDragEnterEvent *event)
{
    if (canTake(*event->mimeData()))
        event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent *event)
{
    const QMimeData &dropped = *event->mimeData();
    if (!canTake(dropped))
        return;
    event->acceptProposedAction();
    const QString project = projectIn(dropped);
    const QString file = project.isEmpty() ? onlyFile(dropped) : project;
    // The program from which it was dragged waits until this is over.
    QTimer::singleShot(0, this, [this, file, isProject = !project.isEmpty()] {
        if (isProject)
            openFolder(file);
        else
            takeDropped(file);
    });
}

void MainWindow::takeDropped(const QString &file)
{
    if (!m_view)
        return;
    if (isDocument(file)) {
        m_view->notices().askToImport(file);
        return;
    }
    ListDialog dialog(m_view->session(), this);
    dialog.openFile(file);
    dialog.exec();
}

} // namespace lastrivet::ui
