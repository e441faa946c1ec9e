// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/PhotosPage.h"

#include "core/evidence/SessionMatcher.h"
#include "core/project/acts/PhotoActs.h"
#include "ui/convert/QtText.h"
#include "ui/parts/SectionModel.h"
#include "ui/photos/PhotoDetail.h"
#include "ui/photos/PhotoIntake.h"
#include "ui/photos/PhotoViewer.h"
#include "ui/widgets/EmptyPlace.h"
#include "ui/widgets/MediaModel.h"
#include "ui/widgets/PhotoDelegate.h"
#include "ui/widgets/PictureLoader.h"
#include "ui/widgets/RecordLine.h"
#include "ui/widgets/TallRows.h"

#include <QComboBox>
#include <QDragEnterEvent>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QListView>
#include <QListWidget>
#include <QLocale>
#include <QMimeData>
#include <QPushButton>
#include <QScrollArea>
#include <QShortcut>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace lastrivet::ui {

namespace {

constexpr int edge = 168;
enum Which { All, Unassigned, OfPart, Papers };

bool isLinkedTo(const Media &media, RecordType type)
{
    return std::ranges::any_of(media.links,
                               [&](const Media::Link &link) { return link.subject == type; });
}

/// Photos that were taken while something was being done, by the log.
std::vector<std::pair<Id<Media>, Id<WorkSession>>> spannedPhotos(const Records &records)
{
    std::vector<std::pair<Id<Media>, Id<WorkSession>>> found;
    const evidence::SessionMatcher matcher(records);
    for (const Media &media : records.media) {
        if (media.withdrawn_on || media.kind == MediaKind::Document || !media.taken_on ||
            isLinkedTo(media, RecordType::WorkSession))
            continue;
        const auto matches = matcher.matches(*media.taken_on);
        if (!matches.empty() && matches.front().fit == evidence::SessionMatch::Fit::WithinSpan)
            found.emplace_back(media.id, matches.front().session);
    }
    return found;
}

} // namespace

PhotosPage::PhotosPage(Session &session, QWidget *parent)
    : Page(session, parent)
    , m_loader(new PictureLoader(session, this))
    , m_model(new MediaModel(session, *m_loader, this))
    , m_intake(new PhotoIntake(session, this))
    , m_which(new QComboBox(this))
    , m_part(new RecordLine(session, RecordType::Component, this))
    , m_count(new QLabel(this))
    , m_matchBar(new QWidget(this))
    , m_matchWords(new QLabel(m_matchBar))
    , m_months(new QListWidget(this))
    , m_grid(new QListView(this))
    , m_empty(new EmptyPlace({}, this))
    , m_stack(new QStackedWidget(this))
    , m_detail(new PhotoDetail(session, this))
    , m_viewer(new PhotoViewer(session, *m_loader, this))
    , m_views(new QStackedWidget(this))
{
    build();
    buildKeys();
    filter();
    m_grid->setCurrentIndex(m_model->index(0, 0));
    showChosen();
    lookForMatches();
}

void PhotosPage::build()
{
    setAcceptDrops(!session().isReadOnly());
    auto *right = new QScrollArea(this);
    right->setWidgetResizable(true);
    right->setFocusPolicy(Qt::NoFocus);
    right->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    right->setWidget(m_detail);
    auto *parts = new QSplitter(this);
    parts->setChildrenCollapsible(false);
    parts->addWidget(m_months);
    parts->addWidget(buildGrid());
    parts->addWidget(right);
    parts->setStretchFactor(1, 1);
    parts->setSizes({150, 600, 340});
    auto *all = new QWidget(this);
    auto *allLayout = new QVBoxLayout(all);
    allLayout->setContentsMargins(0, 0, 0, 0);
    allLayout->addWidget(buildTop());
    allLayout->addWidget(m_matchBar);
    allLayout->addWidget(parts, 1);
    m_views->addWidget(all);
    m_views->addWidget(m_viewer);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 12, 16, 8);
    layout->addWidget(m_views);
    connect(m_viewer, &PhotoViewer::stepped, this, &PhotosPage::step);
    connect(m_viewer, &PhotoViewer::left, this, [this] {
        m_views->setCurrentIndex(0);
        m_grid->setFocus();
    });
    connect(m_detail, &PhotoDetail::finished, this, [this] { m_grid->setFocus(); });
}

QWidget *PhotosPage::buildTop()
{
    auto *take = new QPushButton(theme().icon(QStringLiteral("actions/camera")),
                                 tr("Take photos in"), this);
    take->setProperty("primary", true);
    take->setIcon(theme().icon(QStringLiteral("actions/camera"), theme().colours().accentText));
    take->setEnabled(!session().isReadOnly());
    m_which->addItems({tr("All"), tr("Belonging to no part"), tr("Of a part"), tr("Papers")});
    m_which->setAccessibleName(tr("Which photos"));
    m_part->setPlaceholderText(tr("part"));
    m_part->setAccessibleName(tr("Photos of this part and below"));
    m_part->hide();
    auto *confirm = new QPushButton(tr("Confirm them all"), m_matchBar);
    auto *match = new QHBoxLayout(m_matchBar);
    match->setContentsMargins(0, 0, 0, 0);
    match->addWidget(m_matchWords);
    match->addWidget(confirm);
    match->addStretch(1);
    m_matchBar->hide();
    auto *top = new QWidget(this);
    auto *layout = new QHBoxLayout(top);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(take);
    layout->addWidget(m_which);
    layout->addWidget(m_part);
    layout->addStretch(1);
    layout->addWidget(m_count);
    connect(take, &QPushButton::clicked, this, &PhotosPage::askForFiles);
    connect(m_which, &QComboBox::currentIndexChanged, this, &PhotosPage::filter);
    connect(m_part, &RecordLine::chosenByPerson, this, &PhotosPage::filter);
    connect(confirm, &QPushButton::clicked, this, &PhotosPage::confirmMatches);
    return top;
}

QWidget *PhotosPage::buildGrid()
{
    auto *delegate = new PhotoDelegate(theme(), edge, this);
    m_grid->setModel(m_model);
    m_grid->setItemDelegate(delegate);
    m_grid->setViewMode(QListView::IconMode);
    m_grid->setMovement(QListView::Static);
    m_grid->setResizeMode(QListView::Adjust);
    m_grid->setUniformItemSizes(true);
    m_grid->setGridSize(delegate->cardSize(fontMetrics()));
    m_grid->setSelectionMode(QAbstractItemView::ExtendedSelection);
    m_grid->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_grid->setAccessibleName(tr("Photos by date"));
    m_empty->setSentence(tr("Photographs of what will later be closed belong here: drop files on "
                            "this page, or choose them."));
    m_empty->setAction(tr("Choose files"));
    m_stack->addWidget(m_grid);
    m_stack->addWidget(m_empty);
    m_months->setItemDelegate(new TallRows(this));
    m_months->setAccessibleName(tr("Months"));
    m_months->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    connect(m_empty, &EmptyPlace::acted, this, &PhotosPage::askForFiles);
    connect(m_grid->selectionModel(), &QItemSelectionModel::selectionChanged, this,
            [this] { showChosen(); });
    connect(m_grid, &QListView::activated, this, &PhotosPage::openViewer);
    connect(m_months, &QListWidget::itemClicked, this, [this](QListWidgetItem *item) {
        m_grid->scrollTo(m_model->index(item->data(Qt::UserRole).toInt(), 0),
                         QAbstractItemView::PositionAtTop);
    });
    return m_stack;
}

void PhotosPage::buildKeys()
{
    const auto add = [this](const QKeySequence &keys, auto act) {
        auto *shortcut = new QShortcut(keys, m_grid);
        shortcut->setContext(Qt::WidgetShortcut);
        connect(shortcut, &QShortcut::activated, this, act);
    };
    add(QKeySequence(Qt::Key_A), [this] { m_detail->assign(); });
    add(QKeySequence(Qt::Key_M), [this] { m_detail->confirmMatch(); });
    add(QKeySequence(Qt::Key_Space), [this] { openViewer(); });
    add(QKeySequence::Delete, [this] { m_detail->withdrawAll(); });
}

void PhotosPage::askForFiles()
{
    takeIn(QFileDialog::getOpenFileNames(
        this, tr("Take in"), {},
        tr("Photos, videos and papers (*.jpg *.jpeg *.png *.heic *.mp4 *.mov *.mkv *.avi *.pdf);;"
           "All files (*)")));
}

void PhotosPage::takeIn(const QStringList &files)
{
    std::vector<Media::Link> links;
    if (m_which->currentIndex() == OfPart && m_part->chosen())
        links.push_back({RecordType::Component, m_part->chosen()});
    m_intake->takeIn(files, links);
}

void PhotosPage::dragEnterEvent(QDragEnterEvent *event)
{
    if (event->mimeData()->hasUrls())
        event->acceptProposedAction();
}

void PhotosPage::dropEvent(QDropEvent *event)
{
    QStringList files;
    for (const QUrl &url : event->mimeData()->urls()) {
        if (url.isLocalFile())
            files.append(url.toLocalFile());
    }
    event->acceptProposedAction();
    takeIn(files);
}

void PhotosPage::filter()
{
    const int which = m_which->currentIndex();
    m_part->setVisible(which == OfPart);
    const auto parts = which == OfPart && m_part->chosen()
                           ? partsShown(*session().records(), Id<Component>{m_part->chosen()}, true)
                           : std::unordered_set<std::int64_t>{};
    m_model->setFilter([which, parts](const Records &, const Media &media) {
        const bool isPaper = media.kind == MediaKind::Document;
        if (isPaper || which == Papers)
            return isPaper && which == Papers;
        if (which == Unassigned)
            return !isLinkedTo(media, RecordType::Component);
        if (which == OfPart && !parts.empty())
            return std::ranges::any_of(media.links, [&](const Media::Link &link) {
                return link.subject == RecordType::Component && parts.contains(link.id);
            });
        return true;
    });
    fillMonths();
    updateWords();
}

void PhotosPage::fillMonths()
{
    m_months->clear();
    QDate month;
    int count = 0;
    const auto finish = [&] {
        if (QListWidgetItem *item = m_months->item(m_months->count() - 1))
            item->setText(tr("%1 (%2)").arg(
                QLocale().toString(month, QStringLiteral("MMMM yyyy"))).arg(count));
    };
    for (int row = 0; row < m_model->rowCount(); ++row) {
        const auto day = dayOf(*m_model->mediaAt(row));
        const QDate date = day ? toDate(*day) : QDate();
        const QDate own = date.isValid() ? QDate(date.year(), date.month(), 1) : QDate(1900, 1, 1);
        if (own != month) {
            finish();
            month = own;
            count = 0;
            auto *item = new QListWidgetItem(m_months);
            item->setData(Qt::UserRole, row);
        }
        ++count;
    }
    finish();
    m_months->setVisible(m_months->count() > 1);
}

void PhotosPage::lookForMatches()
{
    const auto found = std::make_shared<Pairs>();
    session().executor().run(
        this, [records = session().records(), found] { *found = spannedPhotos(*records); },
        [this, found] { showMatches(*found); });
}

void PhotosPage::showMatches(const Pairs &matches)
{
    m_matches = matches;
    m_matchBar->setVisible(!matches.empty() && !session().isReadOnly());
    m_matchWords->setText(tr("%n photos were taken during work that is in the log.", nullptr,
                             int(matches.size())));
}

void PhotosPage::confirmMatches()
{
    const auto matches = m_matches;
    session().change(tr("%n photos belong to their log entries", nullptr, int(matches.size())),
                     [&](Edit &edit) {
                         for (const auto &[media, work] : matches) {
                             if (edit.records().findLive(media) && edit.records().findLive(work))
                                 acts::linkToSession(edit, media, work);
                         }
                     });
}

std::vector<Id<Media>> PhotosPage::chosen() const
{
    std::vector<Id<Media>> media;
    for (const QModelIndex &index : m_grid->selectionModel()->selectedIndexes())
        media.push_back(Id<Media>{m_model->recordAt(index.row()).id});
    std::ranges::sort(media);
    return media;
}

void PhotosPage::showChosen()
{
    m_detail->show(chosen());
}

void PhotosPage::openViewer()
{
    const QModelIndex index = m_grid->currentIndex();
    if (!index.isValid())
        return;
    m_viewer->show(*m_model->mediaAt(index.row()));
    m_views->setCurrentWidget(m_viewer);
    m_viewer->setFocus();
}

void PhotosPage::step(int by)
{
    const int row = m_grid->currentIndex().row() + by;
    if (row < 0 || row >= m_model->rowCount())
        return;
    m_grid->setCurrentIndex(m_model->index(row, 0));
    m_viewer->show(*m_model->mediaAt(row));
}

void PhotosPage::updateWords()
{
    const bool isAny = std::ranges::any_of(session().records()->media, [](const Media &media) {
        return !media.withdrawn_on;
    });
    m_stack->setCurrentWidget(isAny ? static_cast<QWidget *>(m_grid) : m_empty);
    m_count->setText(tr("%n shown", nullptr, m_model->rowCount()));
}

void PhotosPage::showRecord(RecordRef record)
{
    if (record.type != RecordType::Media)
        return;
    if (m_model->rowOf(record) < 0) {
        const Media *media = session().records()->findLive(Id<Media>{record.id});
        m_which->setCurrentIndex(media && media->kind == MediaKind::Document ? Papers : All);
    }
    m_views->setCurrentIndex(0);
    if (const int row = m_model->rowOf(record); row >= 0) {
        m_grid->setCurrentIndex(m_model->index(row, 0));
        m_grid->scrollTo(m_grid->currentIndex(), QAbstractItemView::PositionAtCenter);
    }
}

void PhotosPage::startNew()
{
    askForFiles();
}

QWidget *PhotosPage::firstFocus()
{
    return m_views->currentWidget() == m_viewer ? static_cast<QWidget *>(m_viewer) : m_grid;
}

void PhotosPage::recordsChanged(const ChangeNotice &notice)
{
    m_model->apply(notice);
    m_detail->apply(notice);
    fillMonths();
    updateWords();
    lookForMatches();
}

} // namespace lastrivet::ui
