// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Clock.h"
#include "ui/shell/Executor.h"
#include "ui/shell/PageList.h"
#include "ui/shell/RecentProjects.h"
#include "ui/shell/Theme.h"

#include <QMainWindow>
#include <QStringList>
#include <QTimer>

#include <functional>
#include <memory>

#include <vector>

class QAction;
class QDragEnterEvent;
class QDropEvent;
class QMenu;
class QMimeData;
class QSettings;
class QStackedWidget;

namespace lastrivet::ui {

class BackupForm;
class BenchView;
class Demo;
class Finder;
class PrintForm;
class Progress;
class ProjectOpening;
class ProjectView;
class RestoreForm;
class Session;
class ShortcutSheet;
class StartPage;
class Unfinished;

/// The main window: shows a project, or the start page while none is open; has the menus and keys.
class MainWindow final : public QMainWindow {
    Q_OBJECT

public:
    /// What the window works with; all of it must outlive the window.
    struct Surroundings {
        QSettings &settings;
        Executor &executor;
        Theme &theme;
        const Clock &clock;
    };

    /// The property of an action that holds its menu's name; the finder finds it by that, too.
    static constexpr const char *menuProperty = "menu";

    explicit MainWindow(const Surroundings &surroundings, QWidget *parent = nullptr);
    ~MainWindow() override;

    /// Opens a project folder. False when it cannot be opened, which is said, or when the project
    /// that is open must not be left yet (see `leaveProject`).
    bool openFolder(const QString &folder);
    /// The same for a project that is being read already, shown on a page.
    bool open(ProjectOpening &opening, PageId page = PageId::Today);
    /// Closes the project at once; what is begun in it and cannot be kept is lost.
    void closeProject();
    /// Closes the project unless something is begun that would be lost: that is shown first, and
    /// lost only when this is asked for a second time with nothing typed in between.
    bool leaveProject();
    /// Null while no project is open.
    ProjectView *view() const { return m_view; }
    StartPage &startPage() const { return *m_start; }
    Finder &finder() const { return *m_finder; }
    PrintForm &printForm() const { return *m_printForm; }
    BackupForm &backupForm() const { return *m_backupForm; }
    RestoreForm &restoreForm() const { return *m_restoreForm; }
    void openFinder();
    /// Shows the bench view on the whole screen, or closes it.
    void toggleBench();
    /// Null while it is not shown.
    BenchView *bench() const { return m_bench; }
    /// Lets the start page offer the demo.
    void setDemo(const Demo &demo);
    /// The folder of the open project, or empty.
    QString openedFolder() const { return m_view ? m_folder : QString(); }

Q_SIGNALS:
    /// Something was chosen, as the language, that only a newly built window can show.
    void renewalWanted();

protected:
    void closeEvent(QCloseEvent *event) override;
    void dragEnterEvent(QDragEnterEvent *event) override;
    void dropEvent(QDropEvent *event) override;

private:
    void buildFileMenu();
    void buildEditMenu();
    void buildGoMenu();
    void buildPrintMenu();
    void buildViewMenu();
    void buildHelpMenu();
    QAction *add(QMenu &menu, const QString &words, const QKeySequence &keys,
                 const std::function<void()> &act, bool needsProject = true);
    /// For the closing that is shown; says how to come to one when none is.
    void startPacket();
    void startLogbook();
    void showProject(std::unique_ptr<Session> session);
    /// The forms whose content would be lost; those of the page that is shown come first.
    std::vector<Unfinished *> begun() const;
    /// Brings the form into view; returns one sentence what to do about it.
    QString showBegun(Unfinished &form);
    QString bringingWords(const Progress &progress) const;
    /// False when something would be lost that the person has not been warned of yet; warns then.
    bool mayLeave();
    /// The same for what is begun in the bench view.
    bool mayLeaveBench();
    /// Shows a complaint in the open project, or on the start page.
    void complain(const QString &sentence);
    void fillRecent();
    void browse();
    /// Opens the same project once more, on the page that is shown.
    void openAnew();
    /// True for a project's folder, and for records or a list that the open project can import.
    bool canTake(const QMimeData &offered) const;
    void showDropped(const QString &list);
    void importFile();
    void exportFile();
    void verifyProject();
    void openBackup();
    void openRestore();
    /// Closes the forms that lie over the page, except `shown`, which is about to open. Null stands
    /// for the line for a new squawk: it stays, since it remembers where the focus was.
    void leaveForms(const QWidget *shown);
    void backUpNow();
    void openRestored(const QString &folder, const QString &remark);
    void mergeCopy();
    void updateActions();
    /// Gives the print key to the page when that prints itself, else to the menu.
    void shareKeys();
    void leaveBench();
    /// The actions of the menus, and those of the page that is shown.
    std::vector<QAction *> actions() const;
    void keepPlace();
    void restorePlace();
    void showPreferences();

    Surroundings m_surroundings;
    RecentProjects m_recent;
    QStackedWidget *m_stack;
    StartPage *m_start;
    ProjectView *m_view = nullptr;
    BenchView *m_bench = nullptr;
    bool m_wasFullScreen = false;
    /// The forms that the person was last warned of; see `leaveProject`.
    QStringList m_heldBackBy;
    /// A new window is wanted, but something begun held it back.
    bool m_isRenewalDue = false;
    QString m_folder;
    Finder *m_finder;
    PrintForm *m_printForm;
    BackupForm *m_backupForm;
    RestoreForm *m_restoreForm;
    ShortcutSheet *m_sheet;
    QMenu *m_recentMenu = nullptr;
    QAction *m_undo = nullptr;
    QAction *m_redo = nullptr;
    QAction *m_print = nullptr;
    std::vector<QAction *> m_commands;
    std::vector<QAction *> m_projectActions;
    QTimer m_clockTimer;
};

} // namespace lastrivet::ui
