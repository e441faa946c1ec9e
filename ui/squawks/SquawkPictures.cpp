// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squawks/SquawkPictures.h"

#include "core/project/acts/PhotoActs.h"
#include "ui/convert/QtText.h"
#include "ui/photos/PhotoIntake.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Flow.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/MediaModel.h"
#include "ui/widgets/PhotoDelegate.h"
#include "ui/widgets/PictureLoader.h"
#include "ui/widgets/RowMenu.h"

#include <QDragEnterEvent>
#include <QKeyEvent>
#include <QLabel>
#include <QListView>
#include <QMenu>
#include <QMimeData>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace lastrivet::ui {

namespace {

constexpr int edge = 200;

} // namespace

SquawkPictures::SquawkPictures(Session &session, PictureLoader &loader, Side side, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_side(side)
    , m_model(new MediaModel(session, loader, this))
    , m_intake(new PhotoIntake(session, this))
    , m_heading(heading({}, this))
    , m_list(new QListView(this))
    , m_nothing(new QLabel(this))
    , m_add(new QPushButton(tr("Add photos…"), this))
    , m_send(new QPushButton(this))
{
    build();
    loader.setFrame(static_cast<const PhotoDelegate *>(m_list->itemDelegate())->frame());
    connectParts();
}

SquawkPictures::~SquawkPictures()
{
    m_intake->finish();
}

Shows SquawkPictures::own() const
{
    return m_side == Side::Before ? Shows::Defect : Shows::Repair;
}

Shows SquawkPictures::other() const
{
    return m_side == Side::Before ? Shows::Repair : Shows::Defect;
}

void SquawkPictures::build()
{
    const bool isBefore = m_side == Side::Before;
    auto *delegate = new PhotoDelegate(m_session.theme(), edge, this);
    m_list->setModel(m_model);
    m_list->setItemDelegate(delegate);
    m_list->setFlow(QListView::LeftToRight);
    m_list->setUniformItemSizes(true);
    m_list->setTabKeyNavigation(false);
    m_list->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setFixedHeight(delegate->cardSize(fontMetrics()).height() + 20);
    m_list->setAccessibleName(isBefore ? tr("Photos before the repair")
                                       : tr("Photos after the repair"));
    m_nothing->setText(isBefore ? tr("No photo of the defect yet. Drop some here.")
                                : tr("No photo of the repair yet. Drop some here."));
    m_nothing->setWordWrap(true);
    m_nothing->setAlignment(Qt::AlignCenter);
    m_nothing->setMinimumHeight(72);
    m_add->setAccessibleName(isBefore ? tr("Add photos of the defect")
                                      : tr("Add photos of the repair"));
    m_add->setProperty("flat", true);
    m_send->setText(isBefore ? tr("It shows the repair") : tr("It shows the defect"));
    m_send->setProperty("flat", true);
    setAcceptDrops(!m_session.isReadOnly());
    m_list->viewport()->setAcceptDrops(false);
    // Side by side twice they are wider than the half of a small window.
    auto *acts = new QWidget(this);
    auto *flow = new Flow(acts);
    flow->addWidget(m_add);
    flow->addWidget(m_send);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(4);
    layout->addWidget(m_heading);
    layout->addWidget(m_list);
    layout->addWidget(m_nothing);
    layout->addWidget(acts);
    layout->addStretch(1);
}

void SquawkPictures::connectParts()
{
    m_list->installEventFilter(this);
    connect(m_list, &QListView::activated, this, &SquawkPictures::openPicture);
    connect(m_add, &QPushButton::clicked, this, [this] { addFiles(PictureInbox::ask(this)); });
    connect(m_send, &QPushButton::clicked, this, &SquawkPictures::sendOver);
    auto *menu = new RowMenu(*m_list);
    menu->addMore([this](QMenu &lines) {
        RowMenu::addLine(lines, tr("Look at the photo"), Qt::Key_Return, true,
                         [this] { openPicture(m_list->currentIndex()); });
    });
    menu->addButton(*m_send);
}

void SquawkPictures::openPicture(const QModelIndex &row)
{
    if (row.isValid())
        m_session.goTo(m_model->recordAt(row.row()));
}

void SquawkPictures::show(Id<Squawk> squawk)
{
    m_squawk = squawk;
    const Media::Link link{RecordType::Squawk, squawk.value()};
    const bool isAfter = m_side == Side::After;
    // A photo that says neither was most likely taken when the defect was found.
    m_model->setFilter([link, isAfter](const Records &, const Media &media) {
        return std::ranges::find(media.links, link) != media.links.end() &&
               media.shows.contains(Shows::Repair) == isAfter;
    });
    if (m_model->rowCount() > 0)
        m_list->setCurrentIndex(m_model->index(0, 0));
    updateWords();
}

void SquawkPictures::apply(const ChangeNotice &notice)
{
    const int before = count();
    m_model->apply(notice);
    if (count() != before)
        keepChosenInSight();
    updateWords();
}

/// Where a picture goes, the others move along, and the one that the button is about out of sight.
void SquawkPictures::keepChosenInSight()
{
    if (count() == 0)
        return;
    if (!m_list->currentIndex().isValid())
        m_list->setCurrentIndex(m_model->index(0, 0));
    m_list->scrollTo(m_list->currentIndex());
}

int SquawkPictures::count() const
{
    return m_model->rowCount();
}

void SquawkPictures::updateWords()
{
    const QString side = m_side == Side::Before ? tr("Before") : tr("After");
    m_heading->setText(count() > 1 ? tr("%1 (%2)").arg(side).arg(count()) : side);
    m_list->setVisible(count() > 0);
    m_nothing->setVisible(count() == 0);
    m_add->setEnabled(!m_session.isReadOnly());
    m_send->setVisible(count() > 0 && !m_session.isReadOnly());
}

void SquawkPictures::addFiles(const QStringList &files)
{
    const Squawk *squawk = m_session.records()->findLive(m_squawk);
    if (!squawk || files.isEmpty())
        return;
    std::vector<Media::Link> links{{RecordType::Squawk, m_squawk.value()}};
    if (squawk->component_id)
        links.push_back({RecordType::Component, squawk->component_id.value()});
    m_intake->takeIn(files, links, {own()});
}

void SquawkPictures::sendOver()
{
    const int row = std::max(0, m_list->currentIndex().row());
    if (row >= count())
        return;
    const Id<Media> media{m_model->recordAt(row).id};
    m_session.change(m_side == Side::Before ? tr("A photo shows the repair")
                                            : tr("A photo shows the defect"),
                     [&](Edit &edit) {
                         acts::setShown(edit, media, own(), false);
                         acts::setShown(edit, media, other(), true);
                     });
}

void SquawkPictures::paste()
{
    addFiles(m_inbox.filesOnClipboard());
}

bool SquawkPictures::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() == QEvent::KeyPress &&
        static_cast<QKeyEvent *>(event)->matches(QKeySequence::Paste)) {
        paste();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

void SquawkPictures::dragEnterEvent(QDragEnterEvent *event)
{
    if (PictureInbox::canTake(*event->mimeData()))
        event->acceptProposedAction();
    else
        // The window may.
        event->ignore();
}

void SquawkPictures::dropEvent(QDropEvent *event)
{
    event->acceptProposedAction();
    addFiles(m_inbox.filesIn(*event->mimeData()));
}

} // namespace lastrivet::ui
