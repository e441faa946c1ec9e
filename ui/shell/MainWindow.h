// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Clock.h"
#include "ui/shell/Executor.h"
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

/// The window: a project, or the start page while none is open; menus, keys, and its own state.
class MainWindow final : public QMainWindow {
    Q_OBJECT

public:
    /// What the window is given; all of it outlives the window.
    struct Surroundings {
        QSettings &settings;
        Executor &executor;
        Theme &theme;
        const Clock &clock;
    };

    /// Of an action, by which it is found too: the menu in which it stands.
    static constexpr const char *menuProperty = "menu";

    explicit MainWindow(const Surroundings &surroundings, QWidget *parent = nullptr);
    ~MainWindow() override;

    /// Opens a project folder; false when it cannot be, which the start page says, or when the open
    /// one is held back.
    bool openFolder(const QString &folder);
    /// Opens the project that is on its way; false as for `openFolder`.
    bool open(ProjectOpening &opening);
    /// Drops what is begun in it and cannot be kept.
    void closeProject();
    /// Closes it, unless something is begun that would be lost: that is shown and told of, and who
    /// asks once more with nothing typed in between is let go.
    bool leaveProject();
    /// Null while no project is open.
    ProjectView *view() const { return m_view; }
    StartPage &startPage() const { return *m_start; }
    Finder &finder() const { return *m_finder; }
    PrintForm &printForm() const { return *m_printForm; }
    BackupForm &backupForm() const { return *m_backupForm; }
    RestoreForm &restoreForm() const { return *m_restoreForm; }
    void openFinder();
    /// Covers the screen with the bench view, or gives it back.
    void toggleBench();
    /// Null while it is not shown.
    BenchView *bench() const { return m_bench; }
    /// The start page offers it.
    void setDemo(const Demo &demo);
    /// The folder of the open project, or empty.
    QString openedFolder() const { return m_view ? m_folder : QString(); }

Q_SIGNALS:
    /// Something was chosen that only a window built anew can show, its language for one.
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
    /// For the closing that is shown; where none is, it says how to come to one.
    void startPacket();
    void startLogbook();
    void showProject(std::unique_ptr<Session> session);
    /// What would be lost; on the page that is shown first.
    std::vector<Unfinished *> begun() const;
    /// Brings it into view; one sentence what to do about it.
    QString showBegun(Unfinished &form);
    QString bringingWords(const Progress &progress) const;
    /// False when something would be lost that the person was not told of yet.
    bool mayLeave();
    /// The same for what is begun on the bench, which goes with it.
    bool mayLeaveBench();
    /// Says it where the person is: in the open project, or on the start page.
    void complain(const QString &sentence);
    void fillRecent();
    void browse();
    /// Opens the same project once more, on the page that is shown.
    void openAnew();
    /// A project's folder, and records or a list for the project that is open.
    bool canTake(const QMimeData &offered) const;
    void showDropped(const QString &list);
    void importFile();
    void exportFile();
    void verifyProject();
    void openBackup();
    void openRestore();
    /// Leaves the forms that lie over the page, but for the one that is about to be shown; null
    /// stands for the line for a squawk, which would forget where the keyboard was.
    void leaveForms(const QWidget *shown);
    void backUpNow();
    void openRestored(const QString &folder, const QString &remark);
    void mergeCopy();
    void updateActions();
    /// The page that prints itself has the key for it.
    void shareKeys();
    void leaveBench();
    /// Those of the menus, and those of the page that is shown.
    std::vector<QAction *> actions() const;
    void restorePlace();
    void showPreferences();

    Surroundings m_surroundings;
    RecentProjects m_recent;
    QStackedWidget *m_stack;
    StartPage *m_start;
    ProjectView *m_view = nullptr;
    BenchView *m_bench = nullptr;
    bool m_wasFullScreen = false;
    /// What was begun when somebody was last told that it would be lost.
    QStringList m_heldBackBy;
    /// Something was chosen that needs a new window, which was held back.
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
