// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stores/StoreBoard.h"

#include "ui/parts/SectionList.h"
#include "ui/shell/Session.h"
#include "ui/widgets/ActLine.h"

#include <QScopedValueRollback>
#include <QScrollArea>
#include <QSplitter>
#include <QStackedWidget>
#include <QTreeView>
#include <QVBoxLayout>

namespace lastrivet::ui {

StoreBoard::StoreBoard(Session &session, const PartSection &section, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_ask(new ActLine(session, this))
    , m_list(new SectionList(session, *m_ask, this))
    , m_stack(new QStackedWidget(this))
    , m_middle(new QSplitter(this))
    , m_head(new QVBoxLayout)
    , m_aside(new QVBoxLayout)
{
    m_stack->addWidget(buildMiddle());
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(8);
    layout->addLayout(m_head);
    layout->addWidget(m_ask);
    layout->addWidget(m_stack, 1);
    m_list->show(section, {}, true);
    connect(m_list, &SectionList::currentChanged, this, [this] {
        if (!m_isListing)
            refresh();
    });
    // The next line can follow; in the list its letters would be keys, and a blank a tick.
    connect(m_list, &SectionList::recordAdded, this, [this](RecordRef record) {
        showRecord(record);
        m_list->startNew();
    });
    connect(m_ask, &ActLine::ended, this, [this] { m_list->view().setFocus(); });
}

QWidget *StoreBoard::buildMiddle()
{
    auto *area = new QScrollArea(this);
    area->setWidgetResizable(true);
    area->setFocusPolicy(Qt::NoFocus);
    area->setFrameShape(QFrame::NoFrame);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setMinimumWidth(392);
    auto *inside = new QWidget(area);
    auto *layout = new QVBoxLayout(inside);
    layout->setContentsMargins(8, 0, 4, 0);
    layout->setSpacing(12);
    layout->addLayout(m_aside);
    layout->addStretch(1);
    area->setWidget(inside);
    m_middle->setChildrenCollapsible(false);
    m_middle->addWidget(m_list);
    m_middle->addWidget(area);
    m_middle->setStretchFactor(0, 3);
    m_middle->setStretchFactor(1, 1);
    m_middle->setSizes({700, 400});
    return m_middle;
}

void StoreBoard::showList()
{
    m_stack->setCurrentWidget(m_middle);
    m_list->firstFocus()->setFocus();
}

void StoreBoard::showRecord(RecordRef record)
{
    showList();
    m_list->choose(record);
}

void StoreBoard::apply(const ChangeNotice &notice)
{
    {
        const QScopedValueRollback listing(m_isListing, true);
        m_list->apply(notice);
    }
    refresh();
}

void StoreBoard::applyAnswer()
{
    {
        const QScopedValueRollback listing(m_isListing, true);
        m_list->applyAnswer();
    }
    refresh();
}

} // namespace lastrivet::ui
