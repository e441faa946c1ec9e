// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/rules/RulesDraft.h"
#include "ui/rules/RulesForm.h"
#include "ui/rules/RulesView.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Flow.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QTreeWidget>
#include <QVBoxLayout>

// How the page of rules is put together.
namespace lastrivet::ui {

RulesView::RulesView(Session &session, QWidget *parent)
    : CertificatePlace(parent)
    , m_session(session)
    , m_draft(new RulesDraft(session, this))
    , m_standing(new QLabel(this))
    , m_state(new QLabel(this))
    , m_toFault(new QPushButton(tr("Show it"), this))
    , m_origin(new QComboBox(this))
    , m_use(new QPushButton(tr("Use in this project"), this))
    , m_own(new QPushButton(tr("Keep for other projects"), this))
    , m_write(new QPushButton(tr("Write to a file…"), this))
    , m_tree(new QTreeWidget(this))
    , m_add(new QPushButton(tr("Add a line"), this))
    , m_remove(new QPushButton(tr("Take out"), this))
    , m_up(new QPushButton(tr("Up"), this))
    , m_down(new QPushButton(tr("Down"), this))
    , m_title(new QLabel(this))
    , m_form(new RulesForm(this))
{
    build();
    connectActs();
    outline();
    offerOrigins();
}

void RulesView::build()
{
    auto *halves = new QSplitter(this);
    halves->setChildrenCollapsible(false);
    halves->addWidget(buildTree());
    halves->addWidget(buildFields());
    halves->setStretchFactor(0, 2);
    halves->setStretchFactor(1, 3);
    halves->setSizes({400, 700});
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(buildHead());
    layout->addWidget(halves, 1);
}

QWidget *RulesView::buildHead()
{
    auto *head = new QWidget(this);
    for (QLabel *label : {m_standing, m_state})
        label->setWordWrap(true);
    m_origin->setAccessibleName(tr("Begin with other rules"));
    m_use->setProperty("primary", true);
    m_toFault->setProperty("flat", true);
    auto *acts = new QWidget(head);
    auto *flow = new Flow(acts);
    for (QWidget *act : std::initializer_list<QWidget *>{m_origin, m_use, m_own, m_write})
        flow->addWidget(act);
    auto *state = new QHBoxLayout;
    state->addWidget(m_state, 1);
    state->addWidget(m_toFault);
    auto *layout = new QVBoxLayout(head);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_standing);
    layout->addWidget(acts);
    layout->addLayout(state);
    return head;
}

QWidget *RulesView::buildTree()
{
    m_tree->setHeaderHidden(true);
    m_tree->setAccessibleName(tr("The rules, part by part"));
    m_tree->setTextElideMode(Qt::ElideRight);
    m_tree->setUniformRowHeights(true);
    auto *acts = new QWidget(this);
    auto *flow = new Flow(acts);
    for (QPushButton *button : {m_add, m_remove, m_up, m_down}) {
        button->setProperty("flat", true);
        flow->addWidget(button);
    }
    auto *left = new QWidget(this);
    auto *layout = new QVBoxLayout(left);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_tree, 1);
    layout->addWidget(acts);
    return left;
}

QWidget *RulesView::buildFields()
{
    auto *fields = new QWidget(this);
    m_title->setFont(m_session.theme().font(1));
    m_title->setWordWrap(true);
    auto *column = new QVBoxLayout(fields);
    column->setContentsMargins(16, 0, 12, 0);
    column->addWidget(m_title);
    column->addWidget(m_form);
    column->addStretch(1);
    auto *area = new QScrollArea(this);
    area->setWidgetResizable(true);
    area->setWidget(fields);
    area->setFocusPolicy(Qt::NoFocus);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    return area;
}

} // namespace lastrivet::ui
