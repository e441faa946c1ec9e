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
    // An open dialog is about the project that would be closed.
    if (QApplication::activeModalWidget())
        return false;
    if (!projectIn(offered).isEmpty())
        return true;
    if (!m_view || m_view->session().isReadOnly())
        return false;
    // The question about a document is shown above the pages, where the bench would cover it.
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
    // Later, because the program that it was dragged from waits for this event to end.
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
