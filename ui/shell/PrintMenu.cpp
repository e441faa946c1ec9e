// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/ClosingsPage.h"
#include "ui/prints/PrintForm.h"
#include "ui/shell/MainWindow.h"
#include "ui/shell/ProjectView.h"

#include <QMenu>
#include <QMenuBar>

// The menu of papers; each opens the one form with that paper chosen.
namespace lastrivet::ui {

void MainWindow::buildPrintMenu()
{
    QMenu &menu = *menuBar()->addMenu(tr("&Print"));
    const auto open = [this](PrintKind kind) {
        const auto *closings = qobject_cast<const ClosingsPage *>(&m_view->page(m_view->current()));
        leaveForms(m_printForm);
        m_printForm->open(m_view->session(), kind,
                          closings ? closings->shownClosing() : Id<Closing>{});
    };
    for (int index = 0; index < printKindCount; ++index) {
        const PrintKind kind = PrintKind(index);
        const QString words = tr("%1…", "a paper to make").arg(nameOf(kind));
        QAction *paper = add(menu, words, {}, [open, kind] { open(kind); });
        if (index == 0)
            m_print = paper;
    }
}

} // namespace lastrivet::ui
