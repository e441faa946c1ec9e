// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/workshop/TopicView.h"

#include "ui/widgets/Layouts.h"
#include "ui/workshop/FigureView.h"
#include "ui/workshop/SumPanel.h"
#include "ui/workshop/Tables.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace lastrivet::ui {

TopicView::TopicView(const Topic &topic, UnitSystem units,
                     const std::vector<workshop::OwnLimit> &own, QWidget *parent)
    : QScrollArea(parent)
    , m_names(topic.tables)
{
    auto *content = new QWidget(this);
    m_column = new QVBoxLayout(content);
    m_column->setContentsMargins(0, 0, 12, 12);
    m_column->setSpacing(8);
    setWidget(content);
    if (topic.sums) {
        for (const Sum &sum : topic.sums())
            addSum(sum);
    }
    for (const auto name : topic.tables)
        addTable(name);
    m_column->addStretch(1);
    setWidgetResizable(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFocusPolicy(Qt::NoFocus);
    setAccessibleName(topic.title);
    show(units, own);
}

QPushButton *TopicView::ownButton()
{
    auto *button = flatButton(tr("The project's own limit…"), widget());
    return button;
}

void TopicView::addSum(const Sum &sum)
{
    auto *panel = new SumPanel(sum, widget());
    m_sums.push_back(panel);
    m_column->addWidget(panel);
    if (!sum.own_unit.isEmpty()) {
        auto *own = ownButton();
        m_column->addWidget(own, 0, Qt::AlignLeft);
        connect(panel, &SumPanel::worked, own,
                [panel, own] { own->setEnabled(!panel->subject().isEmpty()); });
        connect(own, &QPushButton::clicked, this,
                [this, panel] { Q_EMIT ownLimitWanted(panel->subject(), panel->sum().own_unit); });
    }
    m_column->addSpacing(12);
}

void TopicView::addTable(std::string_view name)
{
    m_column->addWidget(heading(tableTitle(name), widget()));
    auto *caption = new QLabel(shownTable(name, UnitSystem::Imperial, {}).caption, widget());
    caption->setWordWrap(true);
    caption->setForegroundRole(QPalette::PlaceholderText);
    caption->setVisible(!caption->text().isEmpty());
    auto *table = new FigureView(widget());
    auto *own = ownButton();
    own->setEnabled(false);
    own->setToolTip(tr("For the row that is chosen"));
    m_tables.push_back(table);
    m_column->addWidget(caption);
    m_column->addWidget(table);
    m_column->addWidget(own, 0, Qt::AlignLeft);
    m_column->addSpacing(12);
    connect(table, &FigureView::chosenChanged, own,
            [table, own] { own->setEnabled(!table->chosenSubject().isEmpty()); });
    connect(own, &QPushButton::clicked, this,
            [this, table] { Q_EMIT ownLimitWanted(table->chosenSubject(), {}); });
}

void TopicView::show(UnitSystem units, const std::vector<workshop::OwnLimit> &own)
{
    for (SumPanel *panel : m_sums) {
        panel->setUnits(units);
        panel->setOwnLimits(own);
    }
    for (std::size_t i = 0; i < m_tables.size(); ++i)
        m_tables[i]->setTable(shownTable(m_names[i], units, own));
}

} // namespace lastrivet::ui
