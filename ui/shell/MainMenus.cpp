// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/MainWindow.h"

#include "ui/backup/PlainPapers.h"
#include "ui/lists/ListDialog.h"
#include "ui/shell/NewProjectForm.h"
#include "ui/shell/Page.h"
#include "ui/shell/ProjectView.h"
#include "ui/shell/ShortcutSheet.h"
#include "ui/shell/StartPage.h"

#include <QAction>
#include <QKeySequence>
#include <QLocale>
#include <QMenu>
#include <QMenuBar>

// The menus of the main window; every command has a name, and most have a key.
namespace lastrivet::ui {

namespace {

/// The sign on the key of a digit on French keyboards, where digits need Shift; empty for other
/// keyboards.
QKeySequence onFrenchKeyboard(QChar digit)
{
    static const QString digits = QStringLiteral("1234567890");
    static const QString signs = QString::fromUtf8("&É\"'(-È_ÇÀ");
    const qsizetype place = digits.indexOf(digit);
    if (place < 0 || QLocale().language() != QLocale::French)
        return {};
    return QKeySequence(Qt::CTRL | Qt::Key(signs[place].unicode()));
}

} // namespace

QAction *MainWindow::add(QMenu &menu, const QString &words, const QKeySequence &keys,
                         const std::function<void()> &act, bool needsProject)
{
    auto *action = menu.addAction(words);
    action->setShortcut(keys);
    connect(action, &QAction::triggered, this, [act] { act(); });
    action->setProperty(menuProperty, menu.title().remove(QLatin1Char('&')));
    m_commands.push_back(action);
    if (needsProject)
        m_projectActions.push_back(action);
    return action;
}

void MainWindow::buildFileMenu()
{
    QMenu &menu = *menuBar()->addMenu(tr("&File"));
    add(
        menu, tr("&New project"), {},
        [this] {
            if (leaveProject())
                m_start->startNew();
        },
        false);
    add(
        menu, tr("&Open a project folder…"), QKeySequence::Open, [this] { browse(); }, false);
    m_recentMenu = menu.addMenu(tr("Open &again"));
    m_recentMenu->setToolTipsVisible(true);
    // On the signal of the outer menu: a submenu that is empty cannot be opened to fill itself.
    connect(&menu, &QMenu::aboutToShow, this, &MainWindow::fillRecent);
    menu.addSeparator();
    add(menu, tr("&Import records…"), {}, [this] { importFile(); });
    add(menu, tr("Bring in a &list…"), {}, [this] { ListDialog(m_view->session(), this).exec(); });
    add(menu, tr("&Export records…"), {}, [this] { exportFile(); });
    add(menu, tr("&Merge another copy…"), {}, [this] { mergeCopy(); });
    add(menu, tr("&Verify records and files"), {}, [this] { verifyProject(); });
    menu.addSeparator();
    add(menu, tr("&Back up now"), Qt::CTRL | Qt::Key_B, [this] { backUpNow(); });
    add(menu, tr("Bac&kups…"), {}, [this] { openBackup(); });
    add(menu, tr("Write log and lists into the &folder"), {},
        [this] { m_view->plainPapers().write(); });
    add(
        menu, tr("&Restore a backup…"), {}, [this] { openRestore(); }, false);
    menu.addSeparator();
    add(menu, tr("&Close the project"), QKeySequence::Close, [this] { leaveProject(); });
    add(
        menu, tr("&Quit"), QKeySequence::Quit, [this] { close(); }, false);
}

void MainWindow::buildEditMenu()
{
    QMenu &menu = *menuBar()->addMenu(tr("&Edit"));
    m_undo = add(menu, tr("&Undo"), QKeySequence::Undo, [this] { m_view->session().askToUndo(); });
    m_redo = add(menu, tr("&Redo"), QKeySequence::Redo, [this] { m_view->session().redo(); });
    menu.addSeparator();
    add(menu, tr("New &squawk"), QKeySequence::New, [this] {
        leaveForms(nullptr);
        m_view->startSquawk();
    });
    add(menu, tr("New on this &page"), Qt::CTRL | Qt::SHIFT | Qt::Key_N,
        [this] { m_view->startNew(); });
    menu.addSeparator();
    add(menu, tr("&Find…"), Qt::CTRL | Qt::Key_K, [this] { openFinder(); });
    menu.addSeparator();
    add(
        menu, tr("&Preferences…"), Qt::CTRL | Qt::Key_Comma, [this] { showPreferences(); }, false);
}

void MainWindow::buildGoMenu()
{
    QMenu &menu = *menuBar()->addMenu(tr("&Go"));
    for (const PageDescription &page : pageList()) {
        const auto keys = QKeySequence(Qt::CTRL | Qt::Key(page.key().unicode()));
        auto *action =
            add(menu, page.name(), keys, [this, id = page.id] { m_view->comeBackTo(id); });
        if (const QKeySequence same = onFrenchKeyboard(page.key()); !same.isEmpty())
            action->setShortcuts({keys, same});
        action->setIcon(m_surroundings.theme.icon(page.icon));
        // The finder lists pages by itself.
        m_commands.pop_back();
    }
}

void MainWindow::buildViewMenu()
{
    QMenu &menu = *menuBar()->addMenu(tr("&View"));
    // Added to the window, too: shortcuts of menus are inactive while the menu bar is hidden.
    addAction(add(menu, tr("&Bench view"), Qt::Key_F11, [this] { toggleBench(); }));
    addAction(m_undo);
    addAction(m_redo);
    add(
        menu, tr("&Full screen"), Qt::CTRL | Qt::Key_F11,
        [this] { setWindowState(windowState() ^ Qt::WindowFullScreen); }, false);
}

void MainWindow::buildHelpMenu()
{
    QMenu &menu = *menuBar()->addMenu(tr("&Help"));
    add(
        menu, tr("&Keys"), QKeySequence::HelpContents,
        [this] { m_sheet->open(actions(), m_view ? &m_view->page(m_view->current()) : nullptr); },
        false);
}

void MainWindow::fillRecent()
{
    m_recentMenu->clear();
    for (const QString &folder : m_recent.folders()) {
        auto *action = m_recentMenu->addAction(m_recent.label(folder));
        action->setToolTip(folder);
        connect(action, &QAction::triggered, this, [this, folder] { openFolder(folder); });
    }
    m_recentMenu->setEnabled(!m_recentMenu->isEmpty());
}

} // namespace lastrivet::ui
