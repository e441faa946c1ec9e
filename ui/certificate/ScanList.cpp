// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/certificate/ScanList.h"

#include "ui/convert/FieldText.h"
#include "ui/convert/UsualFolders.h"
#include "ui/shell/Session.h"
#include "ui/widgets/MediaModel.h"
#include "ui/widgets/ProjectFiles.h"
#include "ui/widgets/RowListView.h"

#include <QDragEnterEvent>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QMimeData>
#include <QPushButton>
#include <QVBoxLayout>

namespace lastrivet::ui {

ScanList::ScanList(Session &session, const QString &title, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_empty(new QLabel(tr("None attached. Files can be dropped here."), this))
    , m_list(new RowListView(session.theme(), title, this))
    , m_add(new QPushButton(tr("Attach…"), this))
{
    setAcceptDrops(true);
    m_empty->setWordWrap(true);
    auto *heading = new QLabel(title, this);
    QFont bold = font();
    bold.setBold(true);
    heading->setFont(bold);
    m_add->setProperty("flat", true);
    auto *head = new QHBoxLayout;
    head->addWidget(heading, 1);
    head->addWidget(m_add);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(4);
    layout->addLayout(head);
    layout->addWidget(m_list);
    layout->addWidget(m_empty);
    connect(m_add, &QPushButton::clicked, this, &ScanList::ask);
    connect(m_list, &RowListView::chosen, this,
            [this](RecordRef file) { openFile(m_session, Id<Media>{file.id}); });
    connect(m_list, &RowListView::acted, this,
            [this](RecordRef file) { Q_EMIT takenOff(qint64(file.id)); });
}

void ScanList::show(const IdSet<Media> &files)
{
    std::vector<ListRow> rows;
    for (const Id<Media> id : files) {
        const Media *file = m_session.records()->findLive(id);
        if (!file)
            continue;
        ListRow row{{RecordType::Media, id.value()}, mediaTitle(*file)};
        row.detail = mediaFacts(*file);
        row.icon = QStringLiteral("papers/here");
        if (m_isEditable && !m_session.isReadOnly())
            row.action = tr("Take off");
        rows.push_back(std::move(row));
    }
    m_empty->setVisible(rows.empty());
    m_list->setVisible(!rows.empty());
    m_list->setRows(std::move(rows));
    m_add->setVisible(m_isEditable);
    m_add->setEnabled(!m_session.isReadOnly());
}

void ScanList::setEditable(bool isEditable)
{
    m_isEditable = isEditable;
    setAcceptDrops(isEditable);
}

void ScanList::ask()
{
    const QStringList files =
        QFileDialog::getOpenFileNames(this, tr("Attach files"), documentsFolder());
    if (!files.isEmpty())
        Q_EMIT filesOffered(files);
}

void ScanList::dragEnterEvent(QDragEnterEvent *event)
{
    if (!m_session.isReadOnly() && !filesIn(*event->mimeData()).isEmpty())
        event->acceptProposedAction();
}

void ScanList::dropEvent(QDropEvent *event)
{
    event->acceptProposedAction();
    Q_EMIT filesOffered(filesIn(*event->mimeData()));
}

} // namespace lastrivet::ui
