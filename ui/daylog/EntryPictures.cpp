// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/daylog/EntryPictures.h"

#include "ui/photos/PhotoIntake.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/PhotoStrip.h"

#include <QDragEnterEvent>
#include <QDropEvent>
#include <QKeyEvent>
#include <QLabel>
#include <QMimeData>
#include <QPushButton>
#include <QVBoxLayout>

#include <vector>

namespace lastrivet::ui {

EntryPictures::EntryPictures(Session &session, PictureLoader &loader, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_strip(new PhotoStrip(session, loader, this))
    , m_intake(new PhotoIntake(session, this))
    , m_nothing(wrappedLabel(tr("No photo of this entry yet. Drop some here."), this))
    , m_add(flatButton(tr("Add photos…"), this))
{
    build();
}

EntryPictures::~EntryPictures()
{
    // What is copied already must not wait for a page that is gone.
    m_intake->finish();
}

void EntryPictures::build()
{
    m_strip->setAccessibleName(tr("Photos of the entry"));
    m_strip->viewport()->setAcceptDrops(false);
    m_add->setAccessibleName(tr("Add photos of the entry"));
    setAcceptDrops(!m_session.isReadOnly());
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(4);
    layout->addWidget(m_strip);
    layout->addWidget(m_nothing);
    layout->addWidget(m_add, 0, Qt::AlignLeft);
    connect(m_add, &QPushButton::clicked, this, [this] { addFiles(PictureInbox::ask(this)); });
    updateWords();
}

void EntryPictures::show(Id<WorkSession> entry)
{
    m_entry = entry;
    m_strip->show({{RecordType::WorkSession, entry.value()}});
    updateWords();
}

void EntryPictures::apply(const ChangeNotice &notice)
{
    m_strip->apply(notice);
    updateWords();
}

int EntryPictures::count() const
{
    return m_strip->count();
}

void EntryPictures::updateWords()
{
    m_nothing->setVisible(count() == 0 && !m_session.isReadOnly());
    m_add->setEnabled(!m_session.isReadOnly());
}

void EntryPictures::addFiles(const QStringList &files)
{
    // While files were being chosen the entry may have been withdrawn.
    const WorkSession *entry = m_session.records()->findLive(m_entry);
    if (!entry || files.isEmpty() || !m_session.mayChange())
        return;
    std::vector<Media::Link> links{{RecordType::WorkSession, m_entry.value()}};
    if (entry->component_id)
        links.push_back({RecordType::Component, entry->component_id.value()});
    m_intake->takeIn(files, links);
}

void EntryPictures::dragEnterEvent(QDragEnterEvent *event)
{
    if (PictureInbox::canTake(*event->mimeData()))
        event->acceptProposedAction();
    else
        // The window may.
        event->ignore();
}

void EntryPictures::dropEvent(QDropEvent *event)
{
    event->acceptProposedAction();
    addFiles(m_inbox.filesIn(*event->mimeData()));
}

void EntryPictures::keyPressEvent(QKeyEvent *event)
{
    if (event->matches(QKeySequence::Paste))
        addFiles(m_inbox.filesOnClipboard());
    else
        QWidget::keyPressEvent(event);
}

} // namespace lastrivet::ui
