// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/SheetBox.h"

#include "core/base/Error.h"
#include "core/evidence/IntakeStore.h"
#include "ui/convert/QtText.h"
#include "ui/convert/UsualFolders.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/PictureInbox.h"
#include "ui/widgets/ProjectFiles.h"

#include <QDragEnterEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QMimeData>
#include <QPushButton>

namespace lastrivet::ui {

namespace {

constexpr int leastForName = 128;

} // namespace

SheetBox::SheetBox(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_button(new QPushButton(tr("Choose the photo…"), this))
    , m_name(new QLabel(this))
    , m_leaveOut(flatButton(tr("Leave it out"), this))
{
    auto *layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_button);
    layout->addWidget(m_name, 1);
    layout->addWidget(m_leaveOut);
    m_name->setWordWrap(true);
    // Where a form has less for it, the box stands below its label.
    m_name->setMinimumWidth(leastForName);
    setAcceptDrops(true);
    connect(m_button, &QPushButton::clicked, this, &SheetBox::choose);
    connect(m_leaveOut, &QPushButton::clicked, this, [this] {
        // It goes with the file.
        m_button->setFocus();
        clear();
    });
    clear();
}

void SheetBox::clear()
{
    setFile({});
}

void SheetBox::setFile(const QString &file)
{
    m_file = file;
    m_name->setText(file.isEmpty() ? tr("none yet; it can be added later")
                                   : QFileInfo(file).fileName());
    m_leaveOut->setVisible(!file.isEmpty());
    Q_EMIT fileChanged(file);
}

void SheetBox::choose()
{
    const QString file = QFileDialog::getOpenFileName(
        this, tr("The photographed sheet"), picturesFolder(),
        tr("Pictures and documents (*.jpg *.jpeg *.png *.heic *.pdf);;All files (*)"));
    if (!file.isEmpty())
        setFile(file);
}

QString SheetBox::whyNot() const
{
    if (m_file.isEmpty() || QFileInfo(m_file).isReadable())
        return {};
    return tr("%1 is not there any more, or cannot be read. Choose it again, or leave it out and "
              "add it later.")
        .arg(QFileInfo(m_file).fileName());
}

bool SheetBox::change(const QString &label, const std::function<void(Edit &, Id<Media>)> &body)
{
    if (m_file.isEmpty())
        return m_session.change(label, [&](Edit &edit) { body(edit, {}); });
    evidence::IncomingFile incoming;
    incoming.path = toPath(m_file);
    incoming.shows = m_shows;
    try {
        const evidence::CopiedFiles copied(m_session.project(), {incoming});
        if (copied.isEmpty()) {
            m_session.complain(inWords(copied.failures().front().why));
            return false;
        }
        const auto outcome =
            m_session.attempt(label, [&](Edit &edit) { body(edit, copied.put(edit).front()); });
        if (outcome != Session::Outcome::Made)
            copied.discard();
        return outcome == Session::Outcome::Made;
    } catch (const Fault &fault) {
        m_session.complain(fault);
    }
    return false;
}

void SheetBox::dragEnterEvent(QDragEnterEvent *event)
{
    if (event->mimeData()->hasUrls() && PictureInbox::canTake(*event->mimeData()))
        event->acceptProposedAction();
    else
        // The window may.
        event->ignore();
}

void SheetBox::dropEvent(QDropEvent *event)
{
    const QStringList files = filesIn(*event->mimeData());
    if (files.isEmpty())
        return;
    setFile(files.back());
    if (files.size() > 1)
        m_session.complain(
            tr("There is place for one file here: %1 was chosen, the others were not.")
                .arg(QFileInfo(m_file).fileName()));
}

} // namespace lastrivet::ui
