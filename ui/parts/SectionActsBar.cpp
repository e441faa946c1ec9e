// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/SectionActsBar.h"

#include "ui/parts/SectionActs.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Flow.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/ProjectFiles.h"

#include <QCoreApplication>
#include <QDragEnterEvent>
#include <QFileDialog>
#include <QMimeData>
#include <QPushButton>

namespace lastrivet::ui {

SectionActsBar::SectionActsBar(Session &session, ActLine &ask, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_ask(ask)
    , m_section(&partSections().front())
{
    new Flow(this);
    setAcceptDrops(true);
}

void SectionActsBar::show(const PartSection &section, std::int64_t id)
{
    m_section = &section;
    m_id = id;
    const auto now = offered();
    // The buttons stay, with their focus, when the next record offers the same.
    if (now == m_offered)
        return;
    m_offered = now;
    fill();
}

/// What can be done with the record; null stands for attaching a file.
std::vector<const SectionAct *> SectionActsBar::offered() const
{
    std::vector<const SectionAct *> acts;
    const auto records = m_session.records();
    if (m_id == 0 || m_session.isReadOnly() || !records->find(m_section->type, m_id))
        return acts;
    if (m_section->acts) {
        for (const SectionAct &act : m_section->acts()) {
            if (act.isOffered(*records, m_id))
                acts.push_back(&act);
        }
    }
    if (m_section->attach)
        acts.push_back(nullptr);
    return acts;
}

QPushButton *SectionActsBar::addButton(const QString &words)
{
    auto *button = new QPushButton(words, this);
    layout()->addWidget(button);
    return button;
}

void SectionActsBar::fill()
{
    clearLayout(*layout());
    for (const SectionAct *act : m_offered) {
        if (!act) {
            connect(addButton(tr("Attach a file…")), &QPushButton::clicked, this,
                    &SectionActsBar::browse);
            continue;
        }
        connect(addButton(QCoreApplication::translate("SectionActs", act->title)),
                &QPushButton::clicked, this, [this, run = act->run] {
                    if (m_id != 0)
                        run(m_session, m_ask, m_id);
                });
    }
    setVisible(!m_offered.empty());
}

bool SectionActsBar::attach(const QStringList &files)
{
    return m_section->attach && m_id != 0 && !files.isEmpty() &&
           sections::attachFiles(m_session, *m_section, m_id, files);
}

void SectionActsBar::browse()
{
    attach(QFileDialog::getOpenFileNames(
        this, tr("Attach files"), {},
        tr("Documents and pictures (*.pdf *.jpg *.jpeg *.png *.heic);;All files (*)")));
}

void SectionActsBar::dragEnterEvent(QDragEnterEvent *event)
{
    if (event->mimeData()->hasUrls() && m_section->attach && m_id != 0)
        event->acceptProposedAction();
}

void SectionActsBar::dropEvent(QDropEvent *event)
{
    attach(filesIn(*event->mimeData()));
}

} // namespace lastrivet::ui
