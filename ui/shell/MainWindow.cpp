// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/MainWindow.h"

#include "core/base/Error.h"
#include "ui/backup/BackupForm.h"
#include "ui/backup/BackupKeeper.h"
#include "ui/backup/RestoreForm.h"
#include "ui/bench/BenchView.h"
#include "ui/convert/QtText.h"
#include "ui/journal/MergeTask.h"
#include "ui/prints/PrintForm.h"
#include "ui/shell/FileTasks.h"
#include "ui/shell/Finder.h"
#include "ui/shell/NoticeBars.h"
#include "ui/shell/Page.h"
#include "ui/shell/Preferences.h"
#include "ui/shell/ProjectOpening.h"
#include "ui/shell/ProjectView.h"
#include "ui/shell/ShortcutSheet.h"
#include "ui/shell/StartPage.h"
#include "ui/widgets/NewFileName.h"

#include <QAction>
#include <QApplication>
#include <QCloseEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QFocusEvent>
#include <QPointer>
#include <QPushButton>
#include <QRegularExpression>
#include <QSettings>
#include <QStackedWidget>

#include <algorithm>

namespace lastrivet::ui {

namespace {

constexpr int minuteMilliseconds = 60000;

/// Everything that can be done where the person is: the actions, and the buttons of the page.
std::vector<Finder::Command> commandsNow(const std::vector<QAction *> &actions, const Page &page)
{
    static const QRegularExpression keyMark(QStringLiteral("&(.)"));
    std::vector<Finder::Command> commands;
    for (const QPointer<QAction> action : actions) {
        if (action->isEnabled())
            commands.push_back({action->iconText(),
                                action->shortcut().toString(QKeySequence::NativeText),
                                action->property(MainWindow::menuProperty).toString(), [action] {
                                    if (action)
                                        action->trigger();
                                }});
    }
    for (const QPointer<QPushButton> button : page.findChildren<QPushButton *>()) {
        if (!button->isVisible() || !button->isEnabled() || button->text().isEmpty())
            continue;
        commands.push_back({button->text().replace(keyMark, QStringLiteral("\\1")),
                            button->shortcut().toString(QKeySequence::NativeText), QString(),
                            [button] {
                                if (button)
                                    button->click();
                            }});
    }
    return commands;
}

/// Makes the field with the focus keep what is typed, as when the focus goes elsewhere.
void endEditing(const QWidget &view)
{
    QWidget *edited = view.focusWidget();
    if (!edited)
        return;
    // A field of a window that is not active has lost its focus for a while only.
    QFocusEvent leaving(QEvent::FocusOut, Qt::OtherFocusReason);
    if (edited->hasFocus())
        edited->clearFocus();
    else
        QApplication::sendEvent(edited, &leaving);
}

} // namespace

MainWindow::MainWindow(const Surroundings &surroundings, QWidget *parent)
    : QMainWindow(parent)
    , m_surroundings(surroundings)
    , m_recent(surroundings.settings)
    , m_stack(new QStackedWidget(this))
    , m_start(new StartPage(surroundings.theme, surroundings.clock, this))
    , m_finder(new Finder(surroundings.theme, this))
    , m_printForm(new PrintForm(this))
    , m_backupForm(new BackupForm(this))
    , m_restoreForm(new RestoreForm(surroundings.executor, surroundings.clock, this))
    , m_sheet(new ShortcutSheet(this))
{
    setWindowTitle(tr("Lastrivet"));
    setWindowIcon(QIcon(QStringLiteral(":/icons/lastrivet.svg")));
    setCentralWidget(m_stack);
    setMinimumSize(480, 320);
    setAcceptDrops(true);
    m_stack->addWidget(m_start);
    // The style sheet gives what lies over a page an edge.
    for (QWidget *over : std::initializer_list<QWidget *>{m_finder, m_printForm, m_backupForm,
                                                          m_restoreForm, m_sheet})
        over->setProperty("afloat", true);
    buildFileMenu();
    buildEditMenu();
    buildGoMenu();
    buildPrintMenu();
    buildViewMenu();
    buildHelpMenu();
    connect(m_start, &StartPage::folderWanted, this, &MainWindow::openFolder);
    connect(m_start, &StartPage::browseWanted, this, &MainWindow::browse);
    connect(m_start, &StartPage::restoreWanted, this, &MainWindow::openRestore);
    connect(m_restoreForm, &RestoreForm::restored, this, &MainWindow::openRestored);
    connect(&m_clockTimer, &QTimer::timeout, this, [this] {
        if (m_view)
            m_view->session().lookAtClock();
    });
    m_clockTimer.start(minuteMilliseconds);
    restorePlace();
    closeProject();
}

MainWindow::~MainWindow()
{
    delete m_bench;
    delete m_view;
}

void MainWindow::closeEvent(QCloseEvent *event)
{
    if (!mayLeave()) {
        event->ignore();
        return;
    }
    closeProject();
    // After the bench is closed: its full screen is not the geometry to come back to.
    keepPlace();
    event->accept();
}

bool MainWindow::openFolder(const QString &folder)
{
    if (m_view && ProjectOpening::placeOf(folder) == m_folder)
        return true;
    if (m_view && !mayLeave())
        return false;
    ProjectOpening opening(folder, m_surroundings.settings, m_surroundings.clock);
    return open(opening);
}

bool MainWindow::open(ProjectOpening &opening, PageId page)
{
    std::unique_ptr<Session> session;
    try {
        session = std::make_unique<Session>(opening.project(), m_surroundings.executor,
                                            m_surroundings.theme);
    } catch (const Fault &fault) {
        complain(inWords(fault.message()));
        return false;
    }
    closeProject();
    m_folder = opening.place();
    m_recent.add(m_folder, toQt(session->records()->project.name));
    showProject(std::move(session));
    if (page != PageId::Today)
        m_view->open(page);
    return true;
}

void MainWindow::openAnew()
{
    if (!m_view || !mayLeave())
        return;
    ProjectOpening opening(m_folder, m_surroundings.settings, m_surroundings.clock);
    open(opening, m_view->current());
}

void MainWindow::showProject(std::unique_ptr<Session> session)
{
    m_view = new ProjectView(std::move(session), m_stack);
    m_stack->addWidget(m_view);
    m_stack->setCurrentWidget(m_view);
    const Session &opened = m_view->session();
    setWindowTitle(tr("%1 – Lastrivet").arg(toQt(opened.records()->project.name)));
    connect(&opened, &Session::changed, this, [this] {
        m_heldBackBy.clear();
        updateActions();
    });
    connect(m_view, &ProjectView::backupWanted, this, &MainWindow::openBackup);
    connect(m_view, &ProjectView::opened, this, [this] {
        m_heldBackBy.clear();
        shareKeys();
    });
    connect(&m_view->notices(), &NoticeBars::placeWanted, this, &MainWindow::browse);
    // Queued, because the button that asks for it is deleted with the view.
    connect(&m_view->notices(), &NoticeBars::reopeningWanted, this, &MainWindow::openAnew,
            Qt::QueuedConnection);
    connect(&m_view->notices(), &NoticeBars::mergeWanted, m_view,
            [this](const QString &file) { mergeSecond(m_view->session(), file, m_view); });
    connect(&m_view->notices(), &NoticeBars::verifyWanted, this, &MainWindow::verifyProject);
    updateActions();
    m_view->focusPage();
}

void MainWindow::complain(const QString &sentence)
{
    if (m_view)
        m_view->session().complain(sentence);
    else
        m_start->complain(sentence);
}

void MainWindow::closeProject()
{
    m_heldBackBy.clear();
    m_finder->hide();
    m_printForm->hide();
    m_backupForm->hide();
    // The bench uses the session of the view and must not outlive it.
    BenchView *bench = m_bench;
    leaveBench();
    delete bench;
    if (m_view) {
        endEditing(*m_view);
        m_recent.add(m_folder, toQt(m_view->session().records()->project.name));
    }
    // Forms keep what is typed when they are hidden, and while the project is still there.
    m_stack->setCurrentWidget(m_start);
    delete m_view;
    m_view = nullptr;
    setWindowTitle(tr("Lastrivet"));
    m_start->complain({});
    m_start->setRecent(m_recent);
    m_start->takeKeyboard();
    updateActions();
    shareKeys();
}

void MainWindow::browse()
{
    const QString folder = QFileDialog::getExistingDirectory(this, tr("Open a project folder"));
    if (!folder.isEmpty())
        openFolder(folder);
}

void MainWindow::setDemo(const Demo &demo)
{
    m_start->setDemo(demo);
}

void MainWindow::openFinder()
{
    if (m_view)
        m_finder->open(*m_view, commandsNow(actions(), m_view->page(m_view->current())));
}

std::vector<QAction *> MainWindow::actions() const
{
    std::vector<QAction *> all = m_commands;
    if (!m_view)
        return all;
    for (QAction *action : m_view->page(m_view->current()).findChildren<QAction *>()) {
        // Leaves out the actions that Qt's own widgets bring.
        if (!action->text().isEmpty() && !action->shortcut().isEmpty())
            all.push_back(action);
    }
    return all;
}

void MainWindow::showPreferences()
{
    Preferences preferences(PersonalSettings(m_surroundings.settings), m_surroundings.theme,
                            m_view ? &m_view->session() : nullptr, m_folder, this);
    preferences.exec();
    m_isRenewalDue = m_isRenewalDue || preferences.needsNewWindow();
    if (m_isRenewalDue && mayLeave())
        Q_EMIT renewalWanted();
}

void MainWindow::updateActions()
{
    for (QAction *action : m_projectActions)
        action->setEnabled(m_view != nullptr);
    const bool isWritable = m_view && !m_view->session().isReadOnly();
    const auto undo = isWritable ? m_view->session().project().undoLabel() : std::nullopt;
    const auto redo = isWritable ? m_view->session().project().redoLabel() : std::nullopt;
    // Enabled, too, where asking for it says why nothing can be undone.
    m_undo->setEnabled(undo || (isWritable && m_view->session().project().undoObstacle()));
    m_undo->setText(undo ? tr("&Undo: %1").arg(onButton(toQt(*undo))) : tr("&Undo"));
    m_redo->setEnabled(redo.has_value());
    m_redo->setText(redo ? tr("&Redo: %1").arg(onButton(toQt(*redo))) : tr("&Redo"));
}

void MainWindow::shareKeys()
{
    const bool isOfPage = m_view && m_view->page(m_view->current()).printsItself();
    m_print->setShortcut(isOfPage ? QKeySequence() : QKeySequence(QKeySequence::Print));
}

void MainWindow::importFile()
{
    const QString file = QFileDialog::getOpenFileName(this, tr("Import records"), {},
                                                      tr("Records (*.json);;All files (*)"));
    if (!file.isEmpty())
        tasks::importInto(m_view->session(), file);
}

void MainWindow::exportFile()
{
    const QString records = tr("Records (*.json)");
    const QString everything = tr("The whole project with its files (*.zip)");
    const QString file =
        askForNewFile(this, tr("Export records"), tasks::exportName(m_view->session()),
                      records + QStringLiteral(";;") + everything);
    if (!file.isEmpty())
        tasks::exportTo(m_view->session(), file);
}

void MainWindow::mergeCopy()
{
    const QString database = QFileDialog::getOpenFileName(
        this, tr("Merge another copy: choose records.db in its folder"), {},
        tr("Databases of projects (*.db);;All files (*)"));
    if (!database.isEmpty())
        mergeInto(m_view->session(), database, m_view);
}

void MainWindow::verifyProject()
{
    tasks::verify(m_view->session(), m_view);
}

void MainWindow::leaveForms(const QWidget *shown)
{
    if (m_view && shown)
        m_view->putCaptureAway();
    for (ActForm *form : std::initializer_list<ActForm *>{m_printForm, m_backupForm}) {
        if (form != shown && form->isVisible())
            Q_EMIT form->left();
    }
    // Closing it would cancel a restore that is running.
    if (m_restoreForm != shown && m_restoreForm->isVisible() && !m_restoreForm->isRunning())
        Q_EMIT m_restoreForm->left();
}

void MainWindow::openRestore()
{
    leaveForms(m_restoreForm);
    m_restoreForm->open();
}

void MainWindow::openBackup()
{
    leaveForms(m_backupForm);
    m_backupForm->open(m_view->backups());
}

void MainWindow::backUpNow()
{
    const auto choice = m_view->backups().choice();
    if (!choice)
        return;
    if (choice->shelf.empty())
        openBackup();
    else
        m_view->backups().backUp(pathText(choice->shelf), backup::Reading::Originals);
}

void MainWindow::openRestored(const QString &folder, const QString &remark)
{
    if (!openFolder(folder))
        // Where the open project is held back, it can be opened from the menu afterwards.
        m_recent.add(ProjectOpening::placeOf(folder), QFileInfo(folder).completeBaseName());
    else if (!remark.isEmpty())
        complain(remark);
}

} // namespace lastrivet::ui
