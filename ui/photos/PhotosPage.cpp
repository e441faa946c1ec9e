// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/PhotosPage.h"

#include "ui/convert/FieldText.h"
#include "ui/convert/QtText.h"
#include "ui/convert/UsualFolders.h"
#include "ui/photos/MatchBar.h"
#include "ui/photos/MissingView.h"
#include "ui/photos/PhotoBar.h"
#include "ui/photos/PhotoBrowser.h"
#include "ui/photos/PhotoDetail.h"
#include "ui/photos/PhotoGrid.h"
#include "ui/photos/PhotoIntake.h"
#include "ui/photos/PhotoViewer.h"
#include "ui/photos/ShowsBar.h"
#include "ui/photos/TroubleList.h"
#include "ui/photos/WatchBar.h"
#include "ui/photos/WatchedFolder.h"
#include "ui/widgets/EmptyPlace.h"
#include "ui/widgets/PictureLoader.h"
#include "ui/widgets/RowMenu.h"

#include <QDragEnterEvent>
#include <QFileDialog>
#include <QMimeData>
#include <QScrollArea>
#include <QShortcut>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <memory>

namespace lastrivet::ui {

PhotosPage::PhotosPage(Session &session, QWidget *parent)
    : Page(session, parent)
    , m_loader(new PictureLoader(session, this))
    , m_intake(new PhotoIntake(session, this))
    , m_bar(new PhotoBar(session, this))
    , m_watch(new WatchBar(session, this))
    , m_match(new MatchBar(session, this))
    , m_troubles(new TroubleList(this))
    , m_browser(new PhotoBrowser(session, *m_loader, this))
    , m_empty(new EmptyPlace({}, this))
    , m_place(new QStackedWidget(this))
    , m_parts(new QSplitter(this))
    , m_missingView(new MissingView(session, this))
    , m_detail(new PhotoDetail(session, this))
    , m_viewer(new PhotoViewer(session, *m_loader, this))
    , m_views(new QStackedWidget(this))
{
    build();
    buildKeys();
    connectBars();
    connectViews();
    refill();
    m_browser->step(1);
    m_detail->show(m_browser->chosen());
    m_match->refresh();
    lookForMissing();
}

PhotosPage::~PhotosPage()
{
    m_viewer->settle();
    m_intake->finish();
}

void PhotosPage::build()
{
    setAcceptDrops(!session().isReadOnly());
    m_empty->setSentence(tr("Photographs of what will later be closed belong here: drop files on "
                            "this page, paste a picture, or choose files."));
    m_empty->setAction(tr("Choose files"));
    auto *all = new QWidget(this);
    auto *allLayout = new QVBoxLayout(all);
    allLayout->setContentsMargins(0, 0, 0, 0);
    m_bar->add(m_watch->beginning());
    allLayout->addWidget(m_bar);
    allLayout->addWidget(m_watch);
    allLayout->addWidget(m_match);
    allLayout->addWidget(m_troubles);
    allLayout->addWidget(buildList(), 1);
    m_views->addWidget(all);
    m_views->addWidget(m_viewer);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 12, 16, 8);
    layout->addWidget(m_views);
}

QWidget *PhotosPage::buildList()
{
    auto *right = new QScrollArea(this);
    right->setWidgetResizable(true);
    right->setFocusPolicy(Qt::NoFocus);
    right->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    right->setMinimumWidth(300);
    right->setWidget(m_detail);
    m_parts->setChildrenCollapsible(false);
    m_parts->addWidget(m_browser);
    m_parts->addWidget(right);
    m_parts->setStretchFactor(0, 1);
    m_parts->setSizes({760, 340});
    m_place->addWidget(m_parts);
    m_place->addWidget(m_empty);
    m_place->addWidget(m_missingView);
    return m_place;
}

void PhotosPage::connectBars()
{
    connect(m_bar, &PhotoBar::takeInWanted, this, [this] { askForFiles(linksHere()); });
    connect(m_bar, &PhotoBar::changed, this, &PhotosPage::refill);
    connect(m_empty, &EmptyPlace::acted, this, [this] { askForFiles(linksHere()); });
    connect(m_intake, &PhotoIntake::notTakenIn, m_troubles, &TroubleList::tell);
    connect(m_match, &MatchBar::shown, this, &PhotosPage::choose);
    connect(m_watch, &WatchBar::shown, this, &PhotosPage::choose);
    connect(m_watch, &WatchBar::unwanted, this, [this](const std::vector<qint64> &media) {
        choose(media);
        m_detail->withdrawAll();
    });
    connect(m_missingView, &MissingView::takeInWanted, this, [this](RecordRef record) {
        askForFiles({{record.type, record.id}});
    });
    connect(m_missingView, &MissingView::unassignedWanted, this,
            [this] { m_bar->choose(PhotoBar::Which::Unassigned); });
}

void PhotosPage::connectViews()
{
    connect(m_browser, &PhotoBrowser::chosenChanged, this,
            [this] { m_detail->show(m_browser->chosen()); });
    connect(m_browser, &PhotoBrowser::opened, this, &PhotosPage::openViewer);
    connect(m_viewer, &PhotoViewer::stepped, this, &PhotosPage::step);
    connect(m_viewer, &PhotoViewer::left, this, &PhotosPage::leaveViewer);
    connect(m_detail, &PhotoDetail::begunWanted, this, &PhotosPage::choose);
    connect(m_detail, &PhotoDetail::finished, this, [this] { m_browser->grid().setFocus(); });
}

void PhotosPage::buildKeys()
{
    const auto add = [this](QWidget *place, const QKeySequence &keys, const QString &words,
                            auto act) {
        auto *shortcut = new QShortcut(keys, place);
        shortcut->setContext(Qt::WidgetShortcut);
        shortcut->setWhatsThis(words);
        connect(shortcut, &QShortcut::activated, this, act);
        return shortcut;
    };
    PhotoGrid *grid = &m_browser->grid();
    auto *assign =
        add(grid, Qt::Key_A, tr("Say what the photo belongs to"), [this] { m_detail->assign(); });
    add(grid, Qt::Key_M, tr("Confirm the proposed work"), [this] { m_detail->confirmMatch(); });
    add(grid, Qt::SHIFT | Qt::Key_M, tr("Confirm all that is proposed"),
        [this] { m_match->confirm(); });
    auto *look = add(grid, Qt::Key_Space, tr("Look at the photo"), [this] { openViewer(); });
    add(grid, QKeySequence::Delete, tr("Withdraw what is chosen"),
        [this] { m_detail->withdrawAll(); });
    for (std::size_t i = 0; i < Words<Shows>::list.size(); ++i) {
        const QKeySequence key(Qt::Key_1 + int(i));
        const QString words = plainWord(Words<Shows>::list[i]);
        add(grid, key, words, [this, i] { m_detail->toggle(Shows(i)); });
        // Who looks at one photo speaks of this one, whatever else is chosen in the list.
        add(m_viewer->pictureWidget(), key, words,
            [this, i] { toggleShown(session(), {m_viewer->shown()}, Shows(i)); });
    }
    auto *pasting = new QShortcut(QKeySequence::Paste, this);
    pasting->setContext(Qt::WidgetWithChildrenShortcut);
    pasting->setWhatsThis(tr("Take in what was copied"));
    connect(pasting, &QShortcut::activated, this, &PhotosPage::paste);
    auto *menu = new RowMenu(*grid);
    menu->addKey(*look, [] { return true; });
    menu->addKey(*assign, [this] { return !session().isReadOnly(); });
    m_detail->offer(*menu);
}

void PhotosPage::watch(WatchedFolder &folder)
{
    m_watch->setFolder(folder);
    connect(&folder, &WatchedFolder::notTakenIn, m_troubles, &TroubleList::tell);
}

void PhotosPage::askForFiles(const std::vector<Media::Link> &links)
{
    const QStringList files = QFileDialog::getOpenFileNames(
        this, tr("Take in"), picturesFolder(),
        tr("Photos, videos and papers (*.jpg *.jpeg *.png *.heic *.mp4 *.mov *.mkv *.avi *.pdf);;"
           "All files (*)"));
    takeIn(files, links);
}

std::vector<Media::Link> PhotosPage::linksHere() const
{
    if (const auto part = m_bar->part())
        return {{RecordType::Component, part.value()}};
    return {};
}

void PhotosPage::takeIn(const QStringList &files)
{
    takeIn(files, linksHere());
}

void PhotosPage::takeIn(const QStringList &files, const std::vector<Media::Link> &links)
{
    m_intake->takeIn(files, links);
}

void PhotosPage::paste()
{
    const QStringList files = m_inbox.filesOnClipboard();
    if (files.isEmpty())
        session().say(tr("There is no picture and no file to paste."));
    takeIn(files);
}

void PhotosPage::dragEnterEvent(QDragEnterEvent *event)
{
    if (PictureInbox::canTake(*event->mimeData()))
        event->acceptProposedAction();
    else
        // The window may.
        event->ignore();
}

void PhotosPage::dropEvent(QDropEvent *event)
{
    event->acceptProposedAction();
    takeIn(m_inbox.filesIn(*event->mimeData()));
}

void PhotosPage::refill()
{
    m_browser->show(m_bar->order(), m_bar->filter());
    showPlace();
}

void PhotosPage::showPlace()
{
    const bool isAny = std::ranges::any_of(session().records()->media,
                                           [](const Media &media) { return !media.withdrawn_on; });
    const bool isMissing = m_bar->which() == PhotoBar::Which::Missing;
    m_place->setCurrentWidget(isMissing ? static_cast<QWidget *>(m_missingView)
                              : isAny   ? static_cast<QWidget *>(m_parts)
                                        : m_empty);
    m_browser->grid().tellEmpty(whyEmpty());
    m_bar->showCount(m_browser->fileCount());
    m_bar->showMissing(int(m_missing.closings.size() + m_missing.parts.size()));
}

QString PhotosPage::whyEmpty() const
{
    if (m_browser->fileCount() > 0)
        return {};
    if (m_bar->which() == PhotoBar::Which::Unassigned)
        return tr("Every photo belongs to a part or a closing.");
    if (m_bar->which() == PhotoBar::Which::Papers)
        return tr("No paper is on record.");
    return m_bar->part() ? tr("No photo of this part is on record.") : tr("No photo is on record.");
}

void PhotosPage::lookForMissing()
{
    const auto found = std::make_shared<readiness::MissingPictures>();
    const auto answer = session().answer();
    session().executor().run(
        this,
        [records = session().records(), answer, found] {
            *found = readiness::missingPictures(*records, *answer);
        },
        [this, answer, found] {
            // Of two that are on their way the older one may come last.
            if (answer != session().answer())
                return;
            m_missing = *found;
            m_missingView->show(m_missing);
            showPlace();
        });
}

void PhotosPage::choose(const std::vector<qint64> &media)
{
    std::vector<Id<Media>> ids;
    for (const qint64 id : media)
        ids.push_back(Id<Media>{id});
    if (!m_browser->choose(ids)) {
        m_bar->choose(PhotoBar::Which::All);
        m_browser->choose(ids);
    }
}

void PhotosPage::openViewer()
{
    const Media *media = m_browser->current();
    if (!media)
        return;
    m_views->setCurrentWidget(m_viewer);
    m_viewer->show(*media);
    m_viewer->focusPlace()->setFocus();
}

void PhotosPage::leaveViewer()
{
    m_viewer->settle();
    m_views->setCurrentIndex(0);
    m_browser->grid().setFocus();
}

void PhotosPage::step(int by)
{
    m_viewer->settle();
    if (m_browser->step(by))
        openViewer();
}

void PhotosPage::showRecord(RecordRef record)
{
    const Id<Media> media{record.id};
    const Media *known = session().records()->findLive(media);
    if (record.type != RecordType::Media || !known)
        return;
    if (m_bar->which() == PhotoBar::Which::Missing || !m_browser->isShown(media))
        m_bar->choose(known->kind == MediaKind::Document ? PhotoBar::Which::Papers
                                                         : PhotoBar::Which::All);
    m_views->setCurrentIndex(0);
    m_browser->choose({media});
}

void PhotosPage::startNew()
{
    askForFiles(linksHere());
}

QWidget *PhotosPage::firstFocus()
{
    if (m_views->currentWidget() == m_viewer)
        return m_viewer->focusPlace();
    if (m_place->currentWidget() == m_missingView)
        return m_missingView->firstFocus();
    return m_place->currentWidget() == m_empty ? static_cast<QWidget *>(m_empty)
                                               : &m_browser->grid();
}

Id<Component> PhotosPage::shownPart() const
{
    const auto photos = m_browser->chosen();
    const Media *media = photos.empty() ? nullptr : session().records()->find(photos.front());
    if (!media)
        return {};
    const auto link = std::ranges::find(media->links, RecordType::Component, &Media::Link::subject);
    return link == media->links.end() ? Id<Component>{} : Id<Component>{link->id};
}

void PhotosPage::recordsChanged(const ChangeNotice &notice)
{
    // Which parts lie below the one that is shown may be different now.
    const bool isOtherTree = std::ranges::any_of(notice.touched, [](const RecordRef &record) {
        return record.type == RecordType::Component;
    });
    if (m_bar->part() && isOtherTree)
        m_browser->show(m_bar->order(), m_bar->filter());
    m_browser->apply(notice);
    m_detail->apply(notice);
    m_viewer->apply(notice);
    showPlace();
    m_match->refresh();
}

void PhotosPage::answerChanged()
{
    lookForMissing();
}

} // namespace lastrivet::ui
