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
#include <QMimeData>
#include <QTimer>

// What is dropped on the window where no page takes it: a project, records, a list.
namespace lastrivet::ui {

bool MainWindow::canTake(const QMimeData &offered) const
{
    // A dialog that is open is about the project that another one would put away.
    if (QApplication::activeModalWidget())
        return false;
    if (!projectIn(offered).isEmpty())
        return true;
    if (!m_view || m_view->session().isReadOnly())
        return false;
    // What asks about a document stands above the pages, and the bench covers it.
    return !listIn(offered).isEmpty() || (!documentIn(offered).isEmpty() && m_view->isVisible());
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
    // The program from which it was dragged waits until this is over.
    QTimer::singleShot(0, this,
                       [this, project = projectIn(dropped), document = documentIn(dropped),
                        list = listIn(dropped)] {
                           if (!project.isEmpty())
                               openFolder(project);
                           else if (m_view && !document.isEmpty())
                               m_view->notices().askToImport(document);
                           else if (m_view)
                               showDropped(list);
                       });
}

void MainWindow::showDropped(const QString &list)
{
    ListDialog dialog(m_view->session(), this);
    dialog.openFile(list);
    dialog.exec();
}

} // namespace lastrivet::ui
