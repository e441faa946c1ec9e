// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/SheetBox.h"

#include "core/base/Error.h"
#include "core/evidence/IntakeStore.h"
#include "ui/convert/QtText.h"
#include "ui/convert/UsualFolders.h"
#include "ui/shell/Session.h"
#include "ui/widgets/IntakeWords.h"
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
{
    auto *layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_button);
    layout->addWidget(m_name, 1);
    m_name->setWordWrap(true);
    // Where a form has less for it, the box stands below its label.
    m_name->setMinimumWidth(leastForName);
    setAcceptDrops(true);
    connect(m_button, &QPushButton::clicked, this, &SheetBox::choose);
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

std::optional<Id<Media>> SheetBox::takeIn()
{
    if (m_file.isEmpty())
        return Id<Media>{};
    evidence::IncomingFile incoming;
    incoming.path = toPath(m_file);
    incoming.shows = m_shows;
    try {
        const auto report = evidence::takeIn(m_session.project(), {incoming}, 1, {}, {},
                                             ChangeKind::Change, intakeLabel);
        if (!report.taken.empty())
            return report.taken.front();
        if (!report.already_there.empty())
            return report.already_there.front();
        if (!report.failures.empty())
            m_session.complain(inWords(report.failures.front().why));
    } catch (const Fault &fault) {
        m_session.complain(fault);
    }
    return std::nullopt;
}

void SheetBox::dragEnterEvent(QDragEnterEvent *event)
{
    if (event->mimeData()->hasUrls())
        event->acceptProposedAction();
}

void SheetBox::dropEvent(QDropEvent *event)
{
    if (const QStringList files = filesIn(*event->mimeData()); !files.isEmpty())
        setFile(files.back());
}

} // namespace lastrivet::ui
