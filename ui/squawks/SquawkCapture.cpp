// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squawks/SquawkCapture.h"

#include "core/project/acts/SquawkActs.h"
#include "ui/convert/QtText.h"
#include "ui/photos/PhotoIntake.h"
#include "ui/shell/Session.h"
#include "ui/squawks/SquawkLineEdit.h"
#include "ui/widgets/Marks.h"
#include "ui/widgets/RecordNames.h"

#include <QDragEnterEvent>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QMimeData>
#include <QPushButton>
#include <QVBoxLayout>

namespace lastrivet::ui {

SquawkCapture::SquawkCapture(Session &session, const QString &draft, QWidget *parent)
    : Unfinished(parent)
    , m_session(session)
    , m_intake(new PhotoIntake(session, this))
    , m_line(new SquawkLineEdit(session, this))
    , m_draft(session, toStd(draft), *m_line)
    , m_understood(new QLabel(this))
{
    build();
    connectParts();
    m_draft.takeUp();
    understand();
}

SquawkCapture::~SquawkCapture()
{
    m_intake->finish();
    m_draft.keep();
}

void SquawkCapture::build()
{
    setAutoFillBackground(true);
    setAcceptDrops(!m_session.isReadOnly());
    setAccessibleName(tr("New squawk"));
    setFocusProxy(m_line);
    m_line->setEnabled(!m_session.isReadOnly());
    m_understood->setWordWrap(true);
    auto *layout = new QVBoxLayout(this);
    layout->setSpacing(6);
    layout->addWidget(m_line);
    layout->addWidget(m_understood);
    layout->addWidget(buildBar());
}

QWidget *SquawkCapture::buildBar()
{
    auto *bar = m_bar = new QWidget(this);
    auto *photos = new QPushButton(m_session.theme().icon(QStringLiteral("actions/camera")),
                                   tr("Photos…"), bar);
    photos->setEnabled(!m_session.isReadOnly());
    photos->setToolTip(tr("Files can also be dropped here, or pasted into the line"));
    m_names = new QLabel(bar);
    m_names->setAccessibleName(tr("Photos to take in"));
    m_clear = new QPushButton(tr("Clear"), bar);
    m_clear->setProperty("flat", true);
    m_write = new QPushButton(tr("Write it down"), bar);
    m_write->setProperty("primary", true);
    m_write->setToolTip(tr("Enter; Ctrl+Enter also opens it"));
    auto *layout = new QHBoxLayout(bar);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(photos);
    layout->addWidget(m_names, 1);
    layout->addWidget(m_clear);
    layout->addWidget(m_write);
    connect(photos, &QPushButton::clicked, this, [this] {
        addPhotos(PictureInbox::ask(this));
        // Enter writes it down.
        m_line->setFocus();
    });
    return bar;
}

void SquawkCapture::connectParts()
{
    connect(m_line, &QLineEdit::textChanged, this, &SquawkCapture::understand);
    connect(m_line, &EntryEdit::entered, this, [this] { record(false); });
    connect(m_line, &SquawkLineEdit::enteredToOpen, this, [this] { record(true); });
    connect(m_line, &SquawkLineEdit::left, this, &SquawkCapture::left);
    connect(m_line, &SquawkLineEdit::picturesPasted, this, &SquawkCapture::paste);
    connect(m_write, &QPushButton::clicked, this, [this] { record(false); });
    connect(m_clear, &QPushButton::clicked, this, &SquawkCapture::clear);
}

void SquawkCapture::start(Id<Component> partShown)
{
    m_part = partShown;
    m_line->setFocus();
    m_line->selectAll();
    understand();
}

entry::SquawkReading SquawkCapture::reading() const
{
    const auto records = m_session.records();
    return entry::readSquawk(toStd(m_line->text()), m_session.partFinder(),
                             m_line->surroundings(m_part));
}

QString SquawkCapture::inWords(const entry::SquawkReading &reading) const
{
    const auto records = m_session.records();
    const Squawk &squawk = reading.squawk;
    QString part = partName(*records, squawk.component_id);
    if (part.isEmpty())
        part = tr("no part");
    else if (reading.isPartTheShownOne)
        part = tr("%1 (the part you are looking at)").arg(part);
    const QString found = squawk.found_on ? dateText(*squawk.found_on) : tr("today");
    const QString words = tr("Squawk %1: “%2” · %3 · %4 · found %5")
                              .arg(toQt(nextNumber<Squawk>(*records)), toQt(squawk.title), part,
                                   severityWord(squawk.severity), found);
    return reading.remark ? words + QLatin1Char('\n') + ui::inWords(*reading.remark) : words;
}

void SquawkCapture::understand()
{
    const bool isAny = !m_line->text().trimmed().isEmpty() || !m_photos.isEmpty();
    const auto read = reading();
    if (!isAny)
        m_understood->setText(tr("In front of the colon a part, a severity, a day, as far as you "
                                 "like; behind it what is wrong."));
    else
        m_understood->setText(read.problem ? ui::inWords(*read.problem) : inWords(read));
    m_understood->setAccessibleName(m_understood->text());
    m_understood->setVisible(isAny || !m_isQuietWhenEmpty);
    m_bar->setVisible(isAny || !m_isQuietWhenEmpty);
    m_clear->setVisible(isAny);
    m_write->setEnabled(isAny && !read.problem && !m_session.isReadOnly());
    Q_EMIT resized();
}

void SquawkCapture::setQuietWhenEmpty()
{
    m_isQuietWhenEmpty = true;
    understand();
}

QString SquawkCapture::understood() const
{
    return m_understood->text();
}

Id<Squawk> SquawkCapture::put(const Squawk &draft)
{
    Id<Squawk> added;
    m_session.change(tr("Squawk %1 written down: %2")
                         .arg(toQt(nextNumber<Squawk>(*m_session.records())), toQt(draft.title)),
                     [&](Edit &edit) { added = acts::addSquawk(edit, draft); });
    return m_session.records()->find(added) ? added : Id<Squawk>{};
}

void SquawkCapture::record(bool isToOpen)
{
    const auto read = reading();
    if (m_line->text().trimmed().isEmpty() && m_photos.isEmpty()) {
        Q_EMIT left();
        return;
    }
    if (read.problem) {
        m_session.complain(ui::inWords(*read.problem));
        return;
    }
    const auto added = put(read.squawk);
    if (!added)
        return;
    takePhotos(added, read.squawk.component_id);
    // Undo is about the squawk from here on, not about its words.
    m_line->setText({});
    clear();
    Q_EMIT recorded(added.value());
    if (isToOpen)
        m_session.goTo({RecordType::Squawk, added.value()});
}

/// The squawk is on record whatever becomes of its photos; undo takes both back.
void SquawkCapture::takePhotos(Id<Squawk> squawk, Id<Component> part)
{
    std::vector<Media::Link> links{{RecordType::Squawk, squawk.value()}};
    if (part)
        links.push_back({RecordType::Component, part.value()});
    const Project &project = m_session.project();
    m_intake->takeIn(m_photos, links, {Shows::Defect},
                     {project.undoRow(), project.undoLabel().value_or("")});
}

void SquawkCapture::addPhotos(const QStringList &files)
{
    m_photos += files;
    m_photos.removeDuplicates();
    QStringList names;
    for (const QString &file : m_photos)
        names.append(QFileInfo(file).fileName());
    m_names->setText(names.join(QStringLiteral(", ")));
    m_names->setToolTip(names.join(QLatin1Char('\n')));
    understand();
}

QString SquawkCapture::heldBackWords() const
{
    return tr("The photos that were chosen for a squawk are not taken in. Write it down, press "
              "“Clear”, or do the same once more to leave without them.");
}

void SquawkCapture::paste()
{
    addPhotos(m_inbox.filesOnClipboard());
}

void SquawkCapture::clear()
{
    m_photos.clear();
    m_line->clear();
    addPhotos({});
    m_line->setFocus();
    m_draft.keep();
}

void SquawkCapture::dragEnterEvent(QDragEnterEvent *event)
{
    if (PictureInbox::canTake(*event->mimeData()))
        event->acceptProposedAction();
    else
        // The window may.
        event->ignore();
}

void SquawkCapture::dropEvent(QDropEvent *event)
{
    event->acceptProposedAction();
    addPhotos(m_inbox.filesIn(*event->mimeData()));
}

void SquawkCapture::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape)
        Q_EMIT left();
    else
        Unfinished::keyPressEvent(event);
}

void SquawkCapture::hideEvent(QHideEvent *event)
{
    m_draft.keep();
    Unfinished::hideEvent(event);
}

} // namespace lastrivet::ui
