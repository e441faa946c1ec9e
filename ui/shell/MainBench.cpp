// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/MainWindow.h"

#include "ui/bench/BenchView.h"
#include "ui/shell/Page.h"
#include "ui/shell/ProjectView.h"

#include <QMenuBar>
#include <QStackedWidget>

// Shows the bench view on the whole screen, and the window again as it was.
namespace lastrivet::ui {

void MainWindow::toggleBench()
{
    if (m_bench) {
        if (mayLeaveBench())
            leaveBench();
        return;
    }
    m_heldBackBy.clear();
    m_bench = new BenchView(m_view->session(), m_stack);
    connect(m_bench, &BenchView::left, this, &MainWindow::toggleBench);
    m_stack->addWidget(m_bench);
    m_stack->setCurrentWidget(m_bench);
    // A part that is shown on the page is the one to work on.
    if (m_view->current() == PageId::Parts) {
        if (const auto part = m_view->page(PageId::Parts).shownPart())
            m_bench->showPart(part);
    }
    m_wasFullScreen = isFullScreen();
    menuBar()->hide();
    setWindowState(windowState() | Qt::WindowFullScreen);
}

void MainWindow::leaveBench()
{
    if (!m_bench)
        return;
    m_stack->removeWidget(m_bench);
    m_bench->hide();
    // Deleted later, because one of its own buttons may be asking for this.
    m_bench->deleteLater();
    m_bench = nullptr;
    menuBar()->show();
    if (!m_wasFullScreen)
        setWindowState(windowState() & ~Qt::WindowFullScreen);
    m_stack->setCurrentWidget(m_view);
    m_view->focusPage();
}

} // namespace lastrivet::ui
