// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/PhotoDetail.h"

#include "ui/photos/LinksEditor.h"
#include "ui/photos/ShiftForm.h"
#include "ui/photos/ShowsBar.h"
#include "ui/photos/WorkProposal.h"
#include "ui/shell/Session.h"
#include "ui/widgets/ActLine.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/RecordForm.h"
#include "ui/widgets/RowMenu.h"
#include "ui/widgets/WithdrawAct.h"
#include "ui/widgets/WrappedText.h"

#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace lastrivet::ui {

PhotoDetail::PhotoDetail(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_heading(new QLabel(this))
    , m_ask(new ActLine(session, this))
    , m_shift(new ShiftForm(session, this))
    , m_begun(session, {m_shift})
    , m_proposal(new WorkProposal(session, this))
    , m_shows(new ShowsBar(session, this))
    , m_links(new LinksEditor(session, this))
    , m_form(new RecordForm(session, RecordType::Media,
                            {{"caption", true}, {"taken_on"}, {"note", true}}, this))
    , m_toShift(flatButton(tr("Shift times…"), this))
    , m_withdraw(flatButton(tr("Withdraw"), this))
{
    build();
}

void PhotoDetail::build()
{
    m_heading->setFont(m_session.theme().font(1));
    m_heading->setWordWrap(true);
    for (QPushButton *button : {m_toShift, m_withdraw})
        button->setVisible(!m_session.isReadOnly());
    RowMenu::tellKeys(*m_withdraw, QKeySequence::Delete);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 0, 8, 8);
    layout->setSpacing(8);
    layout->addWidget(m_heading);
    layout->addWidget(m_ask);
    layout->addWidget(m_shift);
    layout->addWidget(m_proposal);
    layout->addWidget(new QLabel(tr("It shows"), this));
    layout->addWidget(m_shows);
    layout->addWidget(new QLabel(tr("It belongs to"), this));
    layout->addWidget(m_links);
    layout->addWidget(m_form);
    layout->addWidget(m_toShift, 0, Qt::AlignLeft);
    layout->addWidget(m_withdraw, 0, Qt::AlignLeft);
    layout->addStretch(1);
    connect(m_toShift, &QPushButton::clicked, this, &PhotoDetail::shiftTimes);
    connect(m_withdraw, &QPushButton::clicked, this, &PhotoDetail::withdrawAll);
    connect(m_ask, &ActLine::ended, this, &PhotoDetail::finished);
    connect(m_ask, &ActLine::wanted, this, [this] {
        std::vector<qint64> media;
        for (const RecordRef &record : m_ask->about())
            media.push_back(record.id);
        Q_EMIT begunWanted(media);
    });
    connectShift();
}

void PhotoDetail::connectShift()
{
    connect(m_shift, &ActForm::left, this, [this] {
        m_shift->hide();
        Q_EMIT finished();
    });
    connect(m_shift, &Unfinished::wanted, this, [this] {
        std::vector<qint64> media;
        for (const Id<Media> id : m_shift->media())
            media.push_back(id.value());
        Q_EMIT begunWanted(media);
    });
}

void PhotoDetail::offer(RowMenu &menu)
{
    menu.addBar(*m_proposal);
    menu.addBar(*m_shows);
    menu.addButton(*m_toShift);
    menu.addButton(*m_withdraw);
}

void PhotoDetail::show(const std::vector<Id<Media>> &media)
{
    m_media = media;
    m_form->show(media.size() == 1 ? media.front().value() : 0);
    m_form->setVisible(media.size() == 1);
    refresh();
}

void PhotoDetail::apply(const ChangeNotice &notice)
{
    std::erase_if(m_media, [&](Id<Media> id) { return !notice.after->findLive(id); });
    m_form->apply(notice);
    m_shift->recordsChanged();
    if (m_shift->media().empty())
        m_begun.drop();
    refresh();
}

void PhotoDetail::refresh()
{
    m_ask->follow(shown());
    const bool isShifting = !m_media.empty() && m_media == m_shift->media();
    m_begun.show(isShifting ? m_begun.record() : 0);
    setVisible(!m_media.empty());
    m_heading->setText(breakable(nameOf(m_session, m_media)));
    m_shows->show(m_media);
    m_links->show(m_media);
    m_proposal->show(m_media);
}

std::vector<RecordRef> PhotoDetail::shown() const
{
    std::vector<RecordRef> records;
    for (const auto id : m_media)
        records.push_back({RecordType::Media, id.value()});
    return records;
}

void PhotoDetail::assign()
{
    if (!m_media.empty() && !m_session.isReadOnly())
        m_links->startAssigning();
}

void PhotoDetail::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape)
        Q_EMIT finished();
    else
        QWidget::keyPressEvent(event);
}

void PhotoDetail::confirmMatch()
{
    m_proposal->confirm();
}

void PhotoDetail::toggle(Shows what)
{
    m_shows->toggle(what);
}

void PhotoDetail::shiftTimes()
{
    if (m_media.empty() || m_session.isReadOnly())
        return;
    BegunForms::Purpose purpose;
    for (const Id<Media> id : m_media)
        purpose.push_back(id.value());
    if (m_begun.mayStart(purpose.front(), purpose))
        m_shift->start(m_media);
}

void PhotoDetail::withdrawAll()
{
    if (m_media.empty() || m_session.isReadOnly())
        return;
    askToWithdraw(m_session, *m_ask, shown());
}

} // namespace lastrivet::ui
