// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/ProjectView.h"

#include "ui/backup/BackupKeeper.h"
#include "ui/backup/BackupNotice.h"
#include "ui/backup/DailyCopy.h"
#include "ui/backup/PlainPapers.h"
#include "ui/daylog/TimerBar.h"
#include "ui/journal/JournalCall.h"
#include "ui/journal/JournalPage.h"
#include "ui/photos/PhotosPage.h"
#include "ui/photos/WatchedFolder.h"
#include "ui/shell/NoticeBars.h"
#include "ui/shell/Page.h"
#include "ui/shell/Rail.h"
#include "ui/squawks/SquawkCapture.h"
#include "ui/today/TodayPage.h"
#include "ui/widgets/MessageLine.h"

#include <QHBoxLayout>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace lastrivet::ui {

namespace {

/// Below this width the rail shows icons alone.
constexpr int narrowBelow = 960;
constexpr std::size_t mostVisited = 6;

} // namespace

ProjectView::ProjectView(std::unique_ptr<Session> session, QWidget *parent)
    : QWidget(parent)
    , m_session(std::move(session))
    , m_watched(std::make_unique<WatchedFolder>(*m_session))
    , m_copies(std::make_unique<DailyCopy>(*m_session))
    , m_backups(std::make_unique<BackupKeeper>(*m_session))
    , m_papers(std::make_unique<PlainPapers>(*m_session))
    , m_rail(new Rail(m_session->theme(), this))
    , m_notices(new NoticeBars(*m_session, this))
    , m_stack(new QStackedWidget(this))
    , m_timer(new TimerBar(*m_session, this))
    , m_line(new MessageLine(this))
{
    build();
    connectSession();
    open(PageId::Today);
}

ProjectView::~ProjectView()
{
    // The focus is taken away while everything is whole: a widget that loses it while being deleted
    // still signals its owner, of which only the QWidget part is left by then.
    if (QWidget *edited = focusWidget())
        edited->clearFocus();
    // Pages look at the session until they are gone.
    for (Page *page : m_pages)
        delete page;
    delete m_capture;
}

void ProjectView::build()
{
    m_timer->setContentsMargins(16, 4, 16, 4);
    auto *right = new QVBoxLayout;
    right->setSpacing(0);
    right->addWidget(m_notices);
    right->addWidget(m_stack, 1);
    right->addWidget(m_timer);
    right->addWidget(m_line);
    auto *layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(m_rail);
    layout->addLayout(right, 1);
    connect(m_rail, &Rail::chosen, this, &ProjectView::comeBackTo);
    connect(m_rail, &Rail::passed, this, &ProjectView::showPage);
    connect(m_rail, &Rail::entered, this, [this] {
        if (!focusWhereItWas(page(m_current).focusWidget()))
            focusPage();
    });
}

void ProjectView::connectSession()
{
    Session *session = m_session.get();
    connect(session, &Session::recordWanted, this, &ProjectView::goTo);
    connect(session, &Session::said, m_line, &MessageLine::say);
    connect(session, &Session::complained, m_line, &MessageLine::complain);
    connect(session, &Session::workStarted, m_line, &MessageLine::follow);
    connect(session, &Session::workEnded, m_line, &MessageLine::forget);
    connect(m_line, &MessageLine::undoWanted, session, &Session::undo);
}

Page &ProjectView::page(PageId id)
{
    Page *&page = m_pages[std::size_t(id)];
    if (!page) {
        page = pageList()[std::size_t(id)].make(*m_session, m_stack);
        m_stack->addWidget(page);
        if (auto *photos = qobject_cast<PhotosPage *>(page))
            photos->watch(*m_watched);
        if (auto *today = qobject_cast<TodayPage *>(page))
            connect(&today->follow(*m_backups), &BackupNotice::wanted, this,
                    &ProjectView::backupWanted);
    }
    return *page;
}

void ProjectView::open(PageId id)
{
    showPage(id);
    focusPage();
}

void ProjectView::comeBackTo(PageId id)
{
    const Page *before = m_pages[std::size_t(id)];
    const QPointer<QWidget> last = before && id != m_current ? before->focusWidget() : nullptr;
    showPage(id);
    if (!focusWhereItWas(last))
        focusPage();
}

bool ProjectView::focusWhereItWas(const QPointer<QWidget> &last)
{
    if (!last || !last->isVisible() || !last->isEnabled() || last->focusPolicy() == Qt::NoFocus)
        return false;
    last->setFocus();
    return true;
}

void ProjectView::showPage(PageId id)
{
    // It must not cover the new page.
    putCaptureAway();
    if (id != m_current) {
        page(m_current).setAway(true);
        m_line->turnAway();
    }
    m_current = id;
    m_rail->choose(id);
    page(id).setAway(false);
    m_stack->setCurrentWidget(&page(id));
    // The Log page shows the clock itself.
    m_timer->setAway(id == PageId::Log);
    Q_EMIT opened(id);
}

std::vector<Page *> ProjectView::pages() const
{
    std::vector<Page *> made;
    Page *shown = m_pages[std::size_t(m_current)];
    if (shown)
        made.push_back(shown);
    for (Page *page : m_pages) {
        if (page && page != shown)
            made.push_back(page);
    }
    return made;
}

void ProjectView::openPageOf(const QWidget &widget)
{
    for (std::size_t i = 0; i < pageCount; ++i) {
        const bool isThere = m_pages[i] && m_pages[i]->isAncestorOf(&widget);
        if (isThere && PageId(i) != m_current)
            open(PageId(i));
    }
}

void ProjectView::goTo(RecordRef record)
{
    const PageId id = pageFor(record.type);
    open(id);
    page(id).showRecord(record);
    if (record.id <= 0)
        return;
    std::erase(m_visited, record);
    m_visited.insert(m_visited.begin(), record);
    m_visited.resize(std::min(m_visited.size(), mostVisited));
}

bool ProjectView::canWrite()
{
    if (m_session->isReadOnly())
        m_session->complain(tr("This project is to read only: nothing can be written down."));
    return !m_session->isReadOnly();
}

void ProjectView::startNew()
{
    if (canWrite())
        page(m_current).startNew();
}

void ProjectView::startSquawk()
{
    if (!canWrite())
        return;
    if (m_current == PageId::Squawks) {
        putCaptureAway();
        page(m_current).startNew();
        return;
    }
    makeCapture();
    showCapture();
}

void ProjectView::makeCapture()
{
    if (m_capture)
        return;
    m_capture = new SquawkCapture(*m_session, QStringLiteral("squawk_anywhere"), this);
    m_capture->setFrameShape(QFrame::StyledPanel);
    m_capture->setProperty("afloat", true);
    m_capture->hide();
    connect(m_capture, &SquawkCapture::left, this, &ProjectView::leaveCapture);
    connect(m_capture, &SquawkCapture::recorded, this, &ProjectView::leaveCapture);
    connect(m_capture, &SquawkCapture::resized, this, &ProjectView::placeCapture);
    connect(m_capture, &SquawkCapture::wanted, this, &ProjectView::showCapture);
}

void ProjectView::showCapture()
{
    if (m_capture->isHidden())
        m_focusBefore = focusWidget();
    m_capture->start(page(m_current).shownPart());
    m_capture->bringBack();
    m_capture->show();
    placeCapture();
    m_capture->raise();
}

void ProjectView::putCaptureAway()
{
    if (m_capture)
        m_capture->park();
}

Unfinished *ProjectView::overPages() const
{
    return m_capture;
}

void ProjectView::placeCapture()
{
    constexpr int widest = 760;
    m_capture->setFixedWidth(std::min(widest, width() - 32));
    m_capture->adjustSize();
    m_capture->move((width() - m_capture->width()) / 2, 48);
}

/// The keyboard goes back to where it was.
void ProjectView::leaveCapture()
{
    m_capture->park();
    if (m_focusBefore && m_focusBefore->isVisible())
        m_focusBefore->setFocus();
    else
        focusPage();
}

void ProjectView::focusPage()
{
    Page &shown = page(m_current);
    QWidget *first = shown.firstFocus();
    (first ? first : &shown)->setFocus();
}

bool ProjectView::event(QEvent *event)
{
    if (event->type() != JournalCall::eventType())
        return QWidget::event(event);
    showJournal(static_cast<const JournalCall &>(*event));
    event->accept();
    return true;
}

void ProjectView::showJournal(const JournalCall &call)
{
    open(PageId::Journal);
    auto &journal = static_cast<JournalPage &>(page(PageId::Journal));
    if (call.about())
        journal.showRecord(*call.about());
    else
        journal.showDecisions();
}

void ProjectView::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    m_rail->setNarrow(width() < narrowBelow);
    if (m_capture)
        placeCapture();
}

} // namespace lastrivet::ui
