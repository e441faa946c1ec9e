// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/PageList.h"
#include "ui/shell/Session.h"

#include <QPointer>
#include <QWidget>

#include <array>
#include <memory>
#include <vector>

class QStackedWidget;

namespace lastrivet::ui {

class BackupKeeper;
class DailyCopy;
class JournalCall;
class MessageLine;
class NoticeBars;
class Page;
class PlainPapers;
class Rail;
class SquawkCapture;
class TimerBar;
class Unfinished;
class WatchedFolder;

/// An open project in the window: the rail, the page chosen in it, and the line at the foot.
class ProjectView final : public QWidget {
    Q_OBJECT

public:
    explicit ProjectView(std::unique_ptr<Session> session, QWidget *parent = nullptr);
    ~ProjectView() override;

    Session &session() const { return *m_session; }
    PageId current() const { return m_current; }
    /// The page, which is made when it was not shown before.
    Page &page(PageId id);
    /// Shows the page and gives it the focus.
    void open(PageId id);
    /// The same for a person who goes through the pages: the keyboard goes back to where it was on
    /// that page, if that is still there. On the page that is shown it goes to its beginning.
    void comeBackTo(PageId id);
    /// The pages that were made so far; the one that is shown comes first.
    std::vector<Page *> pages() const;
    /// The form that lies over the pages; null when none was opened yet.
    Unfinished *overPages() const;
    /// Opens the page on which the widget is.
    void openPageOf(const QWidget &widget);
    /// Opens the page of the record and shows it there.
    void goTo(RecordRef record);
    /// Records that were gone to, the last one first.
    const std::vector<RecordRef> &visited() const { return m_visited; }
    BackupKeeper &backups() const { return *m_backups; }
    PlainPapers &plainPapers() const { return *m_papers; }
    NoticeBars &notices() const { return *m_notices; }
    /// A new record of the kind of the page that is shown.
    void startNew();
    /// Opens the line for a new squawk over whatever page the person is on; Squawks has its own.
    void startSquawk();
    /// Hides that line; what is typed in it is kept for the next time.
    void putCaptureAway();
    /// Puts focus where typing does something on this page.
    void focusPage();

Q_SIGNALS:
    void opened(lastrivet::ui::PageId page);
    /// The person wants to see where backups go, and make one.
    void backupWanted();

protected:
    bool event(QEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;

private:
    void build();
    /// True where the keyboard was on the page before, and can be again.
    static bool focusWhereItWas(const QPointer<QWidget> &last);
    void connectSession();
    void showPage(PageId id);
    void showJournal(const JournalCall &call);
    /// False, which is said, where nothing can be written down.
    bool canWrite();
    void makeCapture();
    void showCapture();
    void placeCapture();
    void leaveCapture();

    std::unique_ptr<Session> m_session;
    /// Takes photos in whatever page is shown.
    std::unique_ptr<WatchedFolder> m_watched;
    std::unique_ptr<DailyCopy> m_copies;
    std::unique_ptr<BackupKeeper> m_backups;
    std::unique_ptr<PlainPapers> m_papers;
    Rail *m_rail;
    NoticeBars *m_notices;
    QStackedWidget *m_stack;
    TimerBar *m_timer;
    MessageLine *m_line;
    /// Made when it is first asked for.
    SquawkCapture *m_capture = nullptr;
    QPointer<QWidget> m_focusBefore;
    std::array<Page *, pageCount> m_pages{};
    PageId m_current = PageId::Today;
    std::vector<RecordRef> m_visited;
};

} // namespace lastrivet::ui
